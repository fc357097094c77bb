import { describe, expect, it } from 'vitest';
import { berth, drawn, line, mark, mended, of, PIER, type Setting, withRobot } from './setting.ts';

/** Stretches, gaps and ways that a rule measures: expected by hand from the demo kit's numbers. */

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

  it('closes a gap between given lines straight or nearly so, not by a detour', () => {
    const gap = { given: drawn([line('a', [40, 100], [140, 100]), line('b', [150, 100], [260, 100])]) };
    const closed = (...stops: [number, number][]) =>
      of('R-given-lines', drawn([over(...stops)]), { sheet: gap });
    expect(closed([140, 100], [150, 100])).toMatchObject([{ variant: 'gap', measured: 10, allowed: 0 }]);
    expect(closed([140, 100], [145, 94], [150, 100])).toMatchObject([{ variant: 'gap', measured: 15.62 }]);
    expect(closed([140, 100], [145, 60], [150, 100])).toEqual([]);
    // Within the 3 mm in which ends are one, and beyond.
    expect(closed([140, 102.9], [150, 102.9])).toHaveLength(1);
    expect(closed([140, 103.1], [150, 103.1])).toEqual([]);
  });
});

describe('R-curve-radius of several curves', () => {
  const QUARTER = Math.SQRT2 - 1;
  const said = (...stops: [number, number, number?][]) =>
    of('R-curve-radius', drawn([line('bent', [40, 60], ...stops)]));

  it('apart: each has its own radius, place and finding, in the order of the line', () => {
    // Radius 10 to the right, 40 mm down, radius 12 to the left.
    const found = said([100, 60], [110, 70, QUARTER], [110, 110], [122, 122, -QUARTER], [200, 122]);
    expect(found.map(({ measured, allowed }) => [measured, allowed])).toEqual([
      [10, 15],
      [12, 15],
    ]);
    expect(found[0]).toMatchObject({ severity: 'untidy', remedy: { code: 'widen-curve' } });
    const [first] = found.map(({ place }) => (place.kind === 'stretch' ? place : undefined));
    expect([first!.from, first!.to]).toEqual([expect.closeTo(60, 6), expect.closeTo(60 + 5 * Math.PI, 6)]);
    // The middle of the arc: 10 mm from (100, 70) towards the upper right.
    expect([first!.at.x, first!.at.y]).toEqual([
      expect.closeTo(100 + 10 * Math.SQRT1_2, 6),
      expect.closeTo(70 - 10 * Math.SQRT1_2, 6),
    ]);
  });

  it('touching: one curve, as tight as the tightest, with all that both turn', () => {
    const [both, ...others] = said([100, 60], [110, 70, QUARTER], [122, 82, -QUARTER], [200, 82]);
    expect(others).toEqual([]);
    expect(both).toMatchObject({ measured: 10, severity: 'may-stop' });
    const { place } = both!;
    const long = 60 + 5 * Math.PI + 6 * Math.PI;
    expect(place.kind === 'stretch' && place.to).toBeCloseTo(long, 6);
  });
});

describe('R-loose-end at gaps', () => {
  const gaps = (...lines: ReturnType<typeof line>[]) =>
    of('R-loose-end', drawn(lines)).filter(({ variant }) => variant === 'gap');

  it('of two gaps at one end the narrower counts', () => {
    const a = line('a', [40, 100], [150, 100]);
    const b = line('b', [158, 100], [260, 100]);
    // 6 across and 4 down: 7.21 mm.
    const c = line('c', [156, 104], [240, 160]);
    expect(gaps(a, b).map(({ measured }) => measured)).toEqual([8]);
    expect(gaps(a, b, c).map(({ measured }) => measured)).toEqual([7.21]);
    expect(gaps(c, b, a).map(({ measured }) => measured)).toEqual([7.21]);
  });

  it('of two gaps at one end the narrower counts, in whichever order they lie', () => {
    // The facing ends stand 12 mm ahead and 7.21 mm aside of it, above or below, to the left or to the right.
    for (const [sx, sy] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const at = (x: number, y: number): [number, number] => [150 + sx * x, 100 + sy * y];
      const lines = [
        line('a', at(0, 0), at(-90, 0)),
        line('b', at(12, 0), at(100, 0)),
        line('c', at(6, 4), at(90, 60)),
      ];
      for (const order of [lines, [...lines].reverse()]) {
        expect(gaps(...order).map(({ measured }) => measured)).toEqual([7.21]);
      }
    }
  });

  it('are between ends alone, and only where both face one another', () => {
    const a = line('a', [150, 100], [60, 100]);
    // It faces the end of a line that leads down from there, a corner, and the middle of another.
    for (const aside of [
      line('down', [160, 100], [160, 180]),
      line('corner', [160, 180], [160, 100], [250, 100]),
      line('through', [160, 40], [160, 180]),
    ]) {
      expect(gaps(a, aside)).toEqual([]);
    }
    const back = line('back', [150, 100], [240, 100]);
    expect(gaps(back, line('down', [140, 100], [140, 180]))).toEqual([]);
    expect(gaps(back, line('down', [140, 100], [140, 20]))).toEqual([]);
  });

  it('ends have to face one another, and stand nearer than a clearance in every direction', () => {
    expect(gaps(line('a', [40, 100], [150, 100]), line('b', [152, 110], [260, 110]))).toEqual([]);
    expect(gaps(line('a', [40, 100], [150, 100]), line('b', [152, 110], [152, 180]))).toEqual([]);
    const slant = (by: number) =>
      gaps(line('a', [40, 40], [100, 100]), line('b', [100 + by, 100 + by], [160, 160]));
    expect(slant(10).map(({ measured }) => measured)).toEqual([14.14]);
    expect(slant(12)).toEqual([]);
  });
});

describe('R-finish-reachable on the start’s own stretch', () => {
  const said = (
    drawing: Parameters<typeof of>[1],
    start: number,
    heading: number,
    finish: number,
    more: Setting = {},
  ) =>
    of('R-finish-reachable', drawing, {
      ...more,
      sheet: { start: berth(start, 100, heading), finish: berth(finish, 100) },
    });

  it('nobody comes to what lies behind a robot, whichever way it faces', () => {
    expect(said(drawn([PIER]), 150, 0, 60)).toMatchObject([
      { measured: 90, allowed: 15, remedy: { code: 'draw-to-berth' } },
    ]);
    expect(said(drawn([PIER]), 150, Math.PI, 240)).toMatchObject([{ measured: 90 }]);
    expect(said(drawn([PIER]), 150, 0, 240)).toEqual([]);
    expect(said(drawn([PIER]), 150, Math.PI, 60)).toEqual([]);
  });

  it('but for robots that turn back at a loose end, or a line that leads round', () => {
    expect(said(drawn([PIER]), 150, 0, 60, { kit: withRobot({ looseEnd: 'turn-back' }) })).toEqual([]);
    const ring = line('ring', [60, 100], [260, 100], [260, 170], [60, 170], [60, 100]);
    const tail = line('tail', [30, 100], [60, 100]);
    expect(said(drawn([ring, tail]), 150, 0, 100)).toEqual([]);
    const open = line('ring', [60, 100], [260, 100], [260, 170], [60, 170]);
    expect(said(drawn([open, tail]), 150, 0, 100)).toHaveLength(1);
  });
});

describe('R-after-mark says what to do', () => {
  const across = line('across', [200, 40], [200, 160]);
  /** The crossing is 160 mm along the pier; two bands are 11 mm long. */
  const shortOf = (word: string, room: number, ...others: ReturnType<typeof mark>[]) =>
    of(
      'R-after-mark',
      drawn([PIER, across], [...others, mark('m', 'pier', 160 - room - 5.5 * word.length, word)]),
    );

  it('slide, or slow down where the action would be ready in time at a slower pace', () => {
    expect(shortOf('AV', 29)).toMatchObject([
      { severity: 'may-stop', remedy: { code: 'slide-or-slow-down' }, allowed: 30 },
    ]);
    expect(shortOf('CVC', 24)).toMatchObject([
      { severity: 'untidy', remedy: { code: 'slide-mark' }, allowed: 25 },
    ]);
    // On tiptoe there is no slower pace, and 15 mm would be enough for the choice.
    const tiptoe = mark('slow', 'pier', 30, 'CAC');
    expect(shortOf('AV', 15, tiptoe)).toEqual([]);
    expect(shortOf('AV', 14, tiptoe)).toMatchObject([{ allowed: 15, remedy: { code: 'slide-mark' } }]);
  });

  it('of two sides that lack room the worse', () => {
    // Robots come back: 10 mm to the near end lack 15, or 20 more for a wait; 24 to the crossing lack 6.
    const kit = withRobot({ looseEnd: 'turn-back' });
    const short = (end: number) =>
      of(
        'R-after-mark',
        drawn(
          [line('pier', [200 - 24 - 16.5 - end, 100], [260, 100]), across],
          [mark('m', 'pier', end, 'VCV')],
        ),
        { kit, sheet: { start: berth(240, 100, Math.PI, 10) } },
      );
    expect(short(10)).toMatchObject([{ variant: 'end', measured: 10, allowed: 30 }]);
    expect(short(27)).toMatchObject([{ variant: 'junction', measured: 24, allowed: 30 }]);
  });

  it('nothing of given marks', () => {
    const given = drawn([PIER, across], [mark('m', 'pier', 140, 'AV')]);
    expect(of('R-after-mark', drawn([]), { sheet: { given } })).toEqual([]);
  });
});

describe('a slide on a line that was drawn otherwise', () => {
  it('goes the other way on one drawn backwards', () => {
    const back = line('back', [260, 100], [40, 100]);
    // 15 mm from the axle at (100, 100); it slides on to 25, that is to 124 mm from the far end.
    const sheet = { start: berth(100, 100) };
    const found = of('R-before-mark', drawn([back], [mark('m', 'back', 220 - 75 - 11, 'CA')]), { sheet });
    expect(mended(found[0]).marks[0]!.at).toBeCloseTo(124, 1);
  });

  it('ends where the drawn line ends, although another goes on there', () => {
    // The corner is 30 or 40 mm along the second line; the mark has to end 25 mm before it.
    const slide = (long: number) => {
      const a = line('a', [40, 100], [190 - long, 100]);
      const b = line('b', [190 - long, 100], [190, 100], [190, 180]);
      return of('R-after-mark', drawn([a, b], [mark('m', 'b', long - 28, 'CA')]))[0]?.remedy?.design?.drawing;
    };
    expect(slide(40)?.marks[0]?.at).toBeCloseTo(4, 1);
    expect(slide(30)).toBeUndefined();
  });

  it('leaves marks before a changed corner and on other lines where they are', () => {
    const angle = Math.PI / 3;
    const bent = line(
      'bent',
      [40, 100],
      [150, 100],
      [
        Math.round((150 - 80 * Math.cos(angle)) * 100) / 100,
        Math.round((100 - 80 * Math.sin(angle)) * 100) / 100,
      ],
    );
    const other = line('other', [40, 160], [260, 160]);
    const marks = [mark('early', 'bent', 40, 'CA'), mark('other', 'other', 150, 'CA')];
    const mend = mended(of('R-corner', drawn([bent, other], marks))[0]);
    expect(mend.marks).toEqual(marks);
  });
});
