import { describe, expect, it } from 'vitest';
import type { Drawing, Line } from '../../../shared/documents/design.ts';
import { berth, drawn, findings, line, mended, of, PIER } from './setting.ts';

/** How corners and junctions are mended: expected by hand from the demo kit's numbers. */

const onStep = (mm: number): number => Math.round(mm * 100) / 100;
const backwards = ({ from, pieces, ...rest }: Line): Line => {
  const ends = [from, ...pieces.map(({ to }) => to)].reverse();
  return { ...rest, from: ends[0]!, pieces: ends.slice(1).map((to) => ({ to, bulge: 0 })) };
};
const ends = (drawing: Drawing) =>
  drawing.lines.flatMap(({ from, pieces }) => [from, pieces.at(-1)!.to]).map(({ x, y }) => `${x} ${y}`);

describe('a corner that is cut across', () => {
  /** 60 degrees between two lines: legs lose 18 mm each, and the cut is 18 mm long. */
  const ROOT = Math.sqrt(3);
  const one = line('one', [40, 100], [150, 100]);
  const two = (leg: number) =>
    line('two', [150, 100], [onStep(150 - leg / 2), onStep(100 - (leg * ROOT) / 2)]);
  const cut = ['132 100', `141 ${onStep(100 - 9 * ROOT)}`];

  it.each([
    ['one to the other', one, two(80)],
    ['both from the corner', backwards(one), two(80)],
    ['both to the corner', one, backwards(two(80))],
    ['the other to the one', backwards(one), backwards(two(80))],
  ])('lines that lead from %s still meet, and keep their far ends', (_, a, b) => {
    const mend = mended(of('R-corner', drawn([a, b]))[0]);
    expect(of('R-corner', mend)).toEqual([]);
    expect(mend.lines.map(({ id }) => id)).toEqual(['one', 'two']);
    const found = ends(mend).sort();
    // Two far ends, and one point that is an end of both.
    expect(new Set(found).size).toBe(3);
    expect(found).toContain('40 100');
    expect(cut.some((point) => found.filter((p) => p === point).length === 2)).toBe(true);
  });

  it('of a closed line is cut where its ends meet', () => {
    const ring = line('ring', [60, 160], [220, 160], [140, onStep(160 - 80 * ROOT)], [60, 160]);
    const corners = of('R-corner', drawn([ring]));
    expect(corners).toHaveLength(3);
    for (const corner of corners) expect(of('R-corner', mended(corner))).toHaveLength(2);
  });

  it('needs legs that outlast the cut by a millimetre', () => {
    // The shorter cut is 16.5 mm long.
    const remedy = (leg: number) => {
      const sheet = { start: berth(40, 100) };
      return of('R-corner', drawn([one, two(leg)]), { sheet })[0]?.remedy;
    };
    expect(remedy(40)?.design).toBeDefined();
    expect(remedy(17.3)).toEqual({ code: 'blunt-corner' });
    const short = line('one', [133, 100], [150, 100]);
    expect(of('R-corner', drawn([short, two(80)]))[0]?.remedy).toEqual({ code: 'blunt-corner' });
  });

  it('is left to the team where one of its legs is bent', () => {
    // The arc leaves the corner back over the first leg's side, at 90 − 2 · atan(0.3) degrees or less.
    const bent = line('bent', [40, 100], [150, 100], [120, 40, 0.3]);
    const [finding] = of('R-corner', drawn([bent]));
    expect(finding?.remedy).toEqual({ code: 'blunt-corner' });
  });
});

describe('a branch that is squared up', () => {
  /** 76 degrees are kept, one more than needed: 69.28 mm off the pier that is 17.27 mm from square. */
  const near = 17.27;

  it('drawn from the pier or to it, on either side', () => {
    for (const side of [-1, 1]) {
      const branch = line('branch', [190, 100 + side * 69.28], [150, 100]);
      const wanted = { x: onStep(190 - near), y: 100 };
      const to = mended(of('R-junction-angle', drawn([PIER, branch]))[0]).lines[1]!;
      expect(to.pieces[0]!.to.x).toBeCloseTo(wanted.x, 1);
      expect(to.pieces[0]!.to.y).toBe(wanted.y);
      expect(to.from).toEqual(branch.from);
      const from = mended(of('R-junction-angle', drawn([PIER, backwards(branch)]))[0]).lines[1]!;
      expect(from.from.x).toBeCloseTo(wanted.x, 1);
      expect(from.from.y).toBe(wanted.y);
      expect(from.pieces[0]!.to).toEqual(branch.from);
    }
  });

  it('on a pier that runs down the sheet', () => {
    const down = line('down', [150, 20], [150, 180]);
    const branch = line('branch', [80.72, 140], [150, 100]);
    const { to } = mended(of('R-junction-angle', drawn([PIER, down, branch]))[0] ?? undefined).lines.at(-1)!
      .pieces[0]!;
    expect([to.x, to.y]).not.toEqual([150, 100]);
  });

  it('keeps a branch that leaves in an arc as it is', () => {
    const bent = line('bent', [150, 100], [200, 40, -0.3]);
    for (const branch of [bent, line('bent', [200, 40], [150, 100, 0.3])]) {
      const [finding] = of('R-junction-angle', drawn([PIER, branch]));
      expect(finding?.remedy).toEqual({ code: 'square-junction' });
    }
  });
});

describe('a short arm', () => {
  const across = (...stops: [number, number][]) => line('across', [150, 40], ...stops);

  it('is ended at the junction also where that is a vertex of its line', () => {
    const [finding] = of('R-junction-arms', drawn([PIER, across([150, 100], [150, 112])]));
    expect(mended(finding).lines[1]).toEqual(across([150, 100]));
    const other = of('R-junction-arms', drawn([PIER, backwards(across([150, 100], [150, 112]))]));
    expect(mended(other[0]).lines[1]).toEqual(backwards(across([150, 100])));
  });

  it('says what to do: longer to a loose end, else more room, which is the team’s to make', () => {
    expect(of('R-junction-arms', drawn([PIER, across([150, 120])]))[0]?.remedy?.code).toBe('lengthen-arm');
    const second = line('second', [170, 40], [170, 160]);
    expect(of('R-junction-arms', drawn([PIER, across([150, 160]), second]))[0]?.remedy).toEqual({
      code: 'make-room',
    });
    const bent = line('bent', [150, 100], [150, 118], [220, 118]);
    expect(of('R-junction-arms', drawn([PIER, bent]))[0]?.remedy).toEqual({ code: 'make-room' });
  });
});

describe('other remedies', () => {
  it('at the start: draw from the berth, or lead out of it', () => {
    const beside = line('beside', [40, 120], [260, 120]);
    expect(of('R-start-on-line', drawn([beside]))[0]?.remedy?.code).toBe('draw-from-berth');
    const through = line('through', [41, 60], [61, 140]);
    expect(of('R-start-on-line', drawn([through]))[0]).toMatchObject({
      variant: 'across',
      remedy: { code: 'lead-out' },
    });
  });

  it('an area with a bay is crossed as often as its edge is, and each stretch counts', () => {
    // A U, open at the top between x = 140 and 160 down to y = 120: the pier crosses both its arms.
    const at = ([x, y]: readonly [number, number]) => ({ x, y });
    const polygon = (
      [
        [100, 80],
        [140, 80],
        [140, 120],
        [160, 120],
        [160, 80],
        [200, 80],
        [200, 140],
        [100, 140],
      ] as const
    ).map(at);
    const bank = { id: 'bank', name: { en: 'bank' }, polygon };
    const said = findings(drawn([PIER]), { sheet: { keepOut: [bank] } }).filter(
      (f) => f.rule === 'R-keep-out',
    );
    expect(said).toMatchObject([{ variant: 'through', measured: 80, allowed: 0 }]);
  });
});
