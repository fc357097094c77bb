import { describe, expect, it } from 'vitest';
import {
  type Convention,
  differences,
  labDifference,
  leastOf,
  type Sight,
  seen,
  srgbOf,
} from '../../shared/kit/colour.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { CIEDE2000_PAIRS, MACHADO } from './published-colours.ts';

describe('CIEDE2000', () => {
  it('gives all 34 published differences, in both orders', () => {
    expect(CIEDE2000_PAIRS).toHaveLength(34);
    for (const [i, [l1, a1, b1, l2, a2, b2, published]] of CIEDE2000_PAIRS.entries()) {
      const one = { l: l1, a: a1, b: b1 };
      const two = { l: l2, a: a2, b: b2 };
      // Pair 14 lies on the edge of a half turn of hue; 4.7461 is what the other side of it gives.
      const allowed = i + 1 === 14 ? [4.8045, 4.7461] : [published];
      for (const found of [labDifference(one, two), labDifference(two, one)]) {
        const misses = allowed.map((value) => Math.abs(found - value));
        expect(Math.min(...misses), `pair ${i + 1}`).toBeLessThan(0.0001);
      }
    }
  });
});

describe('colour-deficient sight', () => {
  it('is the published matrix at each of the eleven severities', () => {
    const grey = { r: 0.5, g: 0.45, b: 0.4 };
    for (const sight of ['protan', 'deutan', 'tritan'] as const) {
      expect(MACHADO[sight]).toHaveLength(11);
      MACHADO[sight].forEach((m, step) => {
        const found = seen(grey, sight, 'gamma', step / 10);
        const rows = [0, 3, 6].map((i) => m[i]! * grey.r + m[i + 1]! * grey.g + m[i + 2]! * grey.b);
        expect(found.r).toBeCloseTo(rows[0]!, 6);
        expect(found.g).toBeCloseTo(rows[1]!, 6);
        expect(found.b).toBeCloseTo(rows[2]!, 6);
      });
    }
  });

  it('has rows that sum to 1, so that greys stay grey', () => {
    for (const m of Object.values(MACHADO).flat()) {
      for (const i of [0, 3, 6]) expect(Math.abs(m[i]! + m[i + 1]! + m[i + 2]! - 1)).toBeLessThan(1.1e-6);
    }
  });

  const hex = (color: string, sight: Sight, convention: Convention): string => {
    const { r, g, b } = seen(srgbOf(color), sight, convention);
    return `#${[r, g, b]
      .map((v) =>
        Math.round(v * 255)
          .toString(16)
          .padStart(2, '0'),
      )
      .join('')}`;
  };

  it('of #008000 on encoded values', () => {
    // Source: the tests of the culori library, test/deficiency.
    expect(['protan', 'deutan', 'tritan'].map((s) => hex('#008000', s as Sight, 'gamma'))).toEqual([
      '#876500',
      '#6e5605',
      '#007758',
    ]);
  });

  it('of #008000 on light', () => {
    // Source: the same matrices multiplied out by an independent calculation.
    expect(['protan', 'deutan', 'tritan'].map((s) => hex('#008000', s as Sight, 'linear'))).toEqual([
      '#837200',
      '#776a18',
      '#007c6c',
    ]);
  });

  // Source: the tests of the colorspacious library, gold_values.py, which apply the matrices to light; 0.95
  // lies between two published severities.
  it.each([
    ['deutan', 0.5, [0.1, 0.2, 0.3], [0.12440528, 0.19103024, 0.29911687]],
    ['deutan', 0.5, [0.9, 0.5, 0.3], [0.76726301, 0.59528358, 0.29263454]],
    ['protan', 0.95, [0.1, 0.2, 0.3], [0.15588987, 0.2038791, 0.30416046]],
    ['protan', 0.95, [0.9, 0.5, 0.3], [0.62151883, 0.55237436, 0.27997229]],
  ] as const)('%s at severity %f on light', (sight, severity, [r, g, b], published) => {
    const found = seen({ r, g, b }, sight, 'linear', severity);
    [found.r, found.g, found.b].forEach((part, i) => {
      expect(part).toBeCloseTo(published[i]!, 6);
    });
  });

  it('leaves greys grey', () => {
    // The rows of every published matrix sum to 1.
    for (const sight of ['protan', 'deutan', 'tritan'] as const) {
      expect(hex('#808080', sight, 'gamma')).toBe('#808080');
      expect(hex('#808080', sight, 'linear')).toBe('#808080');
    }
  });
});

describe('the demo kit', () => {
  it('keeps inks, line and paper more than 21 apart for every kind of sight', () => {
    const colors = ['#FFFFFF', DEMO_KIT.line.color, ...DEMO_KIT.inks.map((ink) => ink.color)];
    const least = colors.flatMap((two, k) =>
      colors.slice(0, k).map((one) => leastOf(differences(one, two)).difference),
    );
    expect(least).toHaveLength(10);
    expect(Math.min(...least)).toBeGreaterThan(21);
  });
});
