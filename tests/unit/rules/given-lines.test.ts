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
