import { describe, expect, it } from 'vitest';
import { drawn, line, mark, mended, of, PIER } from './setting.ts';

const given = { sheet: { given: drawn([{ ...PIER, id: 'given' }]) } };

describe('R-given-lines', () => {
  it('R-given-lines is silent for lines that join, cross or go on from a given one', () => {
    const lines = [
      line('branch', [150, 100], [150, 40]),
      line('across', [200, 40], [200, 160]),
      line('on', [260, 100], [280, 100]),
      line('late', [255, 100], [285, 100]),
    ];
    for (const one of lines) expect(of('R-given-lines', drawn([one]), given)).toEqual([]);
  });

  it('R-given-lines finds a line drawn along a given one for more than two clearances', () => {
    const along = (mm: number) => drawn([line('along', [150, 101], [150 + mm, 101], [150 + mm, 160])]);
    expect(of('R-given-lines', along(29), given)).toEqual([]);
    const [finding, ...others] = of('R-given-lines', along(60), given);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ variant: 'over', measured: 60, allowed: 30, severity: 'stops' });
    expect(finding?.place).toMatchObject({ kind: 'stretch', line: 'along', from: 0, to: 60 });
  });

  it('R-given-lines leaves lines beside the given ink to R-clearance', () => {
    expect(of('R-given-lines', drawn([line('beside', [120, 103], [220, 103])]), given)).toEqual([]);
  });

  it('R-given-lines lets a curve run out into the given line', () => {
    // A quarter of radius 80: on the ink for √(2 · 80 · 2.5) = 20 mm.
    const rail = line('rail', [150, 100], [230, 20, 1 - Math.SQRT2]);
    expect(of('R-given-lines', drawn([rail]), given)).toEqual([]);
  });

  it('R-given-lines is mended by taking away what only lies on the given line', () => {
    const rest = line('rest', [150, 100], [150, 40]);
    const over = line('over', [160, 101], [240, 101]);
    expect(mended(of('R-given-lines', drawn([rest, over]), given)[0]).lines).toEqual([rest]);
    const marked = drawn([over], [mark('m', 'over', 30, 'CA')]);
    expect(of('R-given-lines', marked, given)[0]?.remedy).toEqual({ code: 'leave-given' });
  });

  it('R-given-lines finds a gap between given lines that was closed, and takes the line away', () => {
    const parts = drawn([line('a', [40, 100], [150, 100]), line('b', [158, 100], [260, 100])]);
    const [finding] = of('R-given-lines', drawn([line('bridge', [150, 100], [158, 100])]), {
      sheet: { given: parts },
    });
    expect(finding).toMatchObject({ variant: 'gap', measured: 8, severity: 'stops' });
    expect(mended(finding).lines).toEqual([]);
    // A line from elsewhere that ends at one of the ends closes nothing.
    const aside = drawn([line('aside', [150, 100], [150, 40])]);
    expect(of('R-given-lines', aside, { sheet: { given: parts } })).toEqual([]);
  });

  it('R-given-lines lets a team join given lines that are further apart than separate lines are', () => {
    const parts = drawn([line('a', [40, 100], [150, 100]), line('b', [165, 100], [260, 100])]);
    const bridge = drawn([line('bridge', [150, 100], [165, 100])]);
    expect(of('R-given-lines', bridge, { sheet: { given: parts } })).toEqual([]);
  });
});

describe('R-given-lines over a given line', () => {
  const street = line('street', [40, 100], [260, 100]);
  const sheet = { given: drawn([street]) };
  const over = (...stops: [number, number][]) => line('over', stops[0]!, ...stops.slice(1));
  const said = (...args: Parameters<typeof over>) => of('R-given-lines', drawn([over(...args)]), { sheet });

  it('measures where and how long, within half a millimetre, and allows two clearances', () => {
    const [finding] = said([150, 100], [230, 100]);
    expect(finding).toMatchObject({ variant: 'over', severity: 'stops', allowed: 30 });
    expect(Math.abs(finding!.measured! - 80)).toBeLessThanOrEqual(0.5);
    expect(finding!.place).toMatchObject({ kind: 'stretch', line: 'over' });
    expect(Math.abs(finding!.place.at.x - 190)).toBeLessThanOrEqual(0.5);
    expect(said([150, 100], [180, 100])).toEqual([]);
    expect(said([150, 100], [181, 100])).toHaveLength(1);
  });

  it('is on it up to the edge of its ink, along it in either direction, also on a slant', () => {
    expect(said([230, 102.4], [150, 102.4])).toHaveLength(1);
    expect(said([230, 102.6], [150, 102.6])).toEqual([]);
    const slant = { given: drawn([line('slant', [60, 20], [200, 160])]) };
    const along = drawn([line('over', [180, 140], [100, 60])]);
    expect(of('R-given-lines', along, { sheet: slant })).toHaveLength(1);
    const across = drawn([line('over', [180, 20], [40, 160])]);
    expect(of('R-given-lines', across, { sheet: slant })).toEqual([]);
  });

  it('tells of the longest of two stretches, whichever comes first', () => {
    const twice = (first: number, second: number) =>
      said(
        [60, 100],
        [60 + first, 100],
        [60 + first, 40],
        [90 + first, 40],
        [90 + first, 100],
        [90 + first + second, 100],
      );
    for (const [finding, ...others] of [twice(40, 60), twice(60, 40)]) {
      expect(others).toEqual([]);
      expect(Math.abs(finding!.measured! - 60)).toBeLessThanOrEqual(1);
    }
  });

  it('leaves out that line alone, where it leads no further and carries no mark', () => {
    const elsewhere = line('elsewhere', [60, 30], [140, 30]);
    const both = drawn([over([150, 100], [230, 100]), elsewhere]);
    expect(mended(of('R-given-lines', both, { sheet })[0]).lines).toEqual([elsewhere]);
    const leads = drawn([over([150, 100], [230, 100], [230, 40])]);
    expect(of('R-given-lines', leads, { sheet })[0]?.remedy).toEqual({ code: 'leave-given' });
    const marked = { ...both, marks: [mark('m', 'over', 30, 'CA')] };
    expect(of('R-given-lines', marked, { sheet })[0]?.remedy).toEqual({ code: 'leave-given' });
  });

  it('counts each stretch for itself, wherever on the line it lies', () => {
    // 25 mm along the street, 40 mm after the line's beginning.
    expect(said([150, 60], [150, 100], [175, 100], [175, 60])).toEqual([]);
    // 40 mm along it behind 60 mm of lead, then 60 mm.
    const [longer] = said([60, 40], [60, 100], [100, 100], [100, 40], [130, 40], [130, 100], [190, 100]);
    expect(Math.abs(longer!.measured! - 60)).toBeLessThanOrEqual(1);
  });

  it('is one stretch over two pieces of a street that bends by little, drawn back along them', () => {
    const bent = { given: drawn([line('street', [40, 100], [150, 100], [260, 104])]) };
    // At most 1.4 mm beside the middle of the ink.
    const [finding, ...others] = of('R-given-lines', drawn([line('over', [230, 102.4], [80, 100.4])]), {
      sheet: bent,
    });
    expect(others).toEqual([]);
    expect(Math.abs(finding!.measured! - 150)).toBeLessThanOrEqual(1);
  });

  it('leaves out a line with a short end beyond the stretch, but none that leads there from elsewhere', () => {
    const mend = (...stops: [number, number][]) => said(...stops)[0]?.remedy?.design?.drawing.lines;
    // 80 mm along the street and 3 mm up: the ink is left after 2.5 mm; up to 6 mm are no more than an end.
    expect(mend([150, 100], [230, 100], [230, 97])).toEqual([]);
    expect(mend([150, 60], [150, 100], [230, 100])).toBeUndefined();
  });

  it('leaves out the line over it, not one that goes on from it', () => {
    const short = { given: drawn([line('street', [40, 100], [230, 100])]) };
    const on = line('on', [230, 100], [250, 100]);
    const [finding] = of('R-given-lines', drawn([over([150, 100], [230, 100]), on]), { sheet: short });
    expect(mended(finding).lines).toEqual([on]);
  });

  it('leaves marks on other lines alone', () => {
    const elsewhere = line('elsewhere', [60, 30], [140, 30]);
    const both = drawn([over([150, 100], [230, 100]), elsewhere], [mark('m', 'elsewhere', 30, 'CA')]);
    expect(mended(of('R-given-lines', both, { sheet })[0])).toEqual({ ...both, lines: [elsewhere] });
  });

  it('closes a gap between given lines straight or nearly so, not by a detour', () => {
    const gap = { given: drawn([line('a', [40, 100], [140, 100]), line('b', [150, 100], [260, 100])]) };
    const closed = (...stops: [number, number][]) =>
      of('R-given-lines', drawn([over(...stops)]), { sheet: gap });
    expect(closed([140, 100], [150, 100])).toMatchObject([{ variant: 'gap', measured: 10, allowed: 0 }]);
    expect(closed([140, 100], [145, 94], [150, 100])).toMatchObject([{ variant: 'gap', measured: 15.62 }]);
    expect(closed([140, 100], [145, 60], [150, 100])).toEqual([]);
    expect(closed([140, 60], [140, 100], [150, 100])).toMatchObject([{ variant: 'gap', measured: 10 }]);
    // Within the 3 mm in which ends are one, and beyond.
    expect(closed([140, 102.9], [150, 102.9])).toHaveLength(1);
    expect(closed([140, 103.1], [150, 103.1])).toEqual([]);
  });
});
