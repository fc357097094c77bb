import { describe, expect, it } from 'vitest';
import { berth, drawn, line, mark, mended, of, PIER, type Setting, withRobot } from './setting.ts';

/** Stretches, gaps and ways that a rule measures: expected by hand from the demo kit's numbers. */

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
