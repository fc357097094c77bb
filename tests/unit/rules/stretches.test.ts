import { describe, expect, it } from 'vitest';
import { Pen } from '../../sweeps/pen.ts';
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

describe('R-curve-radius of kinks and arcs', () => {
  const said = (pen: Pen) => of('R-curve-radius', drawn([{ ...pen.lines[0]!, id: 'bent' }]));
  /** Ten kinks of 10 degrees on a circle of radius 10. */
  const kinked = (pen: Pen) => {
    for (let i = 0; i < 10; i++) pen.turn(10).straight(20 * Math.sin(Math.PI / 36));
    return pen;
  };

  it('far from one another are two findings, whichever comes first', () => {
    const first = said(kinked(new Pen().to(40, 60).straight(60)).straight(40).arc(10, -60).straight(30));
    expect(first.map(({ measured }) => Math.round(measured!))).toEqual([10, 10]);
    const last = said(kinked(new Pen().to(40, 60).straight(60).arc(10, 60).straight(40)));
    expect(last.map(({ measured }) => Math.round(measured!))).toEqual([10, 10]);
  });

  it('that share a stretch are one, which turns as far as the one that turns further', () => {
    // An arc of 80 degrees between two kinks of 10: 100 degrees in all.
    const pen = new Pen().to(40, 60).straight(60).turn(10).straight(2).arc(8, 80).turn(10).straight(40);
    expect(said(pen)).toMatchObject([{ measured: 8, severity: 'may-stop' }]);
    expect(said(new Pen().to(40, 60).straight(60).arc(8, 80).straight(40))).toMatchObject([
      { severity: 'untidy' },
    ]);
  });

  it('allows for the rounding of an arc’s ends, which weighs more on a short one', () => {
    // Ends moved by 0.01 mm each make a radius of 14.98 on a chord of 5 mm one of 15.04, on 29 mm of 14.99.
    const arc = (chord: number) => {
      const bulge = Math.tan(Math.asin(chord / 2 / 14.98) / 2);
      return of('R-curve-radius', drawn([line('bent', [100, 60], [100 + chord, 60, bulge])]));
    };
    expect(arc(5)).toEqual([]);
    expect(arc(29)).toMatchObject([{ measured: 14.98 }]);
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

  it('from the start, also where robots set out from the finish as well', () => {
    for (const starts of [
      ['start', 'finish'],
      ['finish', 'start'],
    ] as const) {
      expect(said(drawn([PIER]), 150, 0, 60, { starts })).toMatchObject([{ measured: 90 }]);
    }
    expect(said(drawn([PIER]), 150, 0, 60, { starts: ['finish'] })).toEqual([]);
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
