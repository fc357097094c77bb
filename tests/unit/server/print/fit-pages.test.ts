import { describe, expect, it } from 'vitest';
import { limitPages } from '../../../../server/print/limits.ts';
import { COLORS, type Item, type Page } from '../../../../server/print/page.ts';
import { timedCirclePage, timedLinePages } from '../../../../server/print/timed.ts';
import { printTools } from '../../../../server/print/tools.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../../shared/kit/second-kit.ts';
import { bandsTried, CORNERS_TRIED } from '../../../../shared/prep/fit-limits.ts';
import { PAPERS } from '../../../../shared/wire/print.ts';
import { placed, textsOf } from './items.ts';

const tools = await printTools();

/** Dark strokes of 0.5 mm that stand across, by where they are along the joined sheet. */
function ticksOf(pages: readonly Page[]): number[] {
  const found = pages.flatMap(({ items }) =>
    items.flatMap((item) => {
      if (item.kind !== 'group') return [];
      return placed(item.items).flatMap(({ item: each, points }) =>
        each.kind === 'path' && each.stroke?.width === 0.5 && each.stroke.color === COLORS.ink
          ? [points[0]!.x]
          : [],
      );
    }),
  );
  return [...new Set(found)].sort((a, b) => a - b);
}

const paths = (items: readonly Item[], color: string) =>
  placed(items).filter(({ item }) => item.kind === 'path' && (item.stroke?.color ?? item.fill) === color);

describe('the timed line', () => {
  it.each(PAPERS)('has ticks 500 mm apart on %s, the same for each pace', (paper) => {
    for (const kit of [DEMO_KIT, SECOND_KIT]) {
      const ticks = ticksOf(timedLinePages(kit, paper, tools));
      expect(ticks).toHaveLength(2);
      expect(ticks[1]! - ticks[0]!).toBeCloseTo(500, 9);
    }
  });

  it('has marks that bring a robot from its starting pace to each of the four', () => {
    const [first] = timedLinePages(DEMO_KIT, 'A3', tools);
    const letters = textsOf(first!.items).filter((text) => /^[CAV]$/.test(text));
    // Tiptoe has a mark of its own, CAC; brisk is one faster, CA, and fast is two.
    expect(letters.join('')).toBe('CACCACACA');
  });

  it('says which pace the chart has no mark for', () => {
    const chart = DEMO_KIT.chart.filter(({ word }) => word !== 'CAC' && word !== 'AC');
    const [first] = timedLinePages({ ...DEMO_KIT, chart }, 'A3', tools);
    expect(textsOf(first!.items).join(' ')).toContain('no mark for tiptoe');
  });
});

describe('the timed circle', () => {
  it('has the radius that it states', () => {
    for (const [paper, radius] of [
      ['A4', 80],
      ['A3', 120],
    ] as const) {
      const page = timedCirclePage(DEMO_KIT, paper, tools);
      expect(textsOf(page.items)).toContain(radius === 80 ? 'radius 80 mm' : 'radius 12 cm');
      const [ring] = paths(page.items, DEMO_KIT.line.color);
      const xs = ring!.points.map(({ x }) => x);
      expect((Math.max(...xs) - Math.min(...xs)) / 2).toBeCloseTo(radius, 9);
      expect(Math.max(...xs) + 14).toBeLessThan(page.w);
    }
  });
});

describe('the pages of limits', () => {
  const [corners, bands] = limitPages(DEMO_KIT, 'A4', tools);

  it('have corners of the angles that they state', () => {
    const lines = placed(corners!.items)
      .filter(({ item }) => item.kind === 'path' && item.stroke?.width === DEMO_KIT.rules.lineWidth.nominal)
      .map(({ points }) => points);
    const angles = lines.map(([a, b, c]) => {
      const [p, q] = [Math.atan2(a!.y - b!.y, a!.x - b!.x), Math.atan2(c!.y - b!.y, c!.x - b!.x)];
      return Math.round((Math.abs(p - q) * 180) / Math.PI) % 360;
    });
    const small = angles.map((angle) => (angle > 180 ? 360 - angle : angle));
    expect(small).toEqual([...CORNERS_TRIED]);
    expect(textsOf(corners!.items).filter((text) => text.endsWith('°'))).toEqual(
      CORNERS_TRIED.map((degrees) => `${degrees}°`),
    );
  });

  it('have bands of the lengths that they state, plain and three a line', () => {
    const inks = DEMO_KIT.inks.flatMap(({ color }) => paths(bands!.items, color));
    const lengths = inks.map(({ points }) => {
      const xs = points.map(({ x }) => x);
      return Math.round((Math.max(...xs) - Math.min(...xs)) * 1000) / 1000;
    });
    for (const length of bandsTried(DEMO_KIT))
      expect(lengths.filter((each) => each === length)).toHaveLength(3);
    expect(inks.every(({ item }) => item.kind === 'path' && item.stroke === undefined)).toBe(true);
  });
});
