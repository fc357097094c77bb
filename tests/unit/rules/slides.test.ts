import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { RuleId } from '../../../shared/documents/verdict.ts';
import { berth, drawn, findings, line, mark, mended, of, PIER, type Setting, withRobot } from './setting.ts';

/** Where a mark slides to: expected by hand from the demo kit's 25 mm, two bands being 11 mm long. */

const slid = (rule: RuleId, drawing: Drawing, setting: Setting = {}): number[] =>
  mended(of(rule, drawing, setting)[0]).marks.map(({ at }) => Math.round(at * 10) / 10);

describe('a mark that slides', () => {
  it('is the one that the finding is about, not the first on its line', () => {
    // The corner is 180 mm along: the second mark has to end at 155.
    const elbow = line('elbow', [40, 100], [220, 100], [220, 180]);
    const marks = [mark('a', 'elbow', 60, 'CA'), mark('b', 'elbow', 150, 'CA')];
    expect(slid('R-after-mark', drawn([elbow], marks))).toEqual([60, 144]);
  });

  it('keeps away from its neighbours on both sides', () => {
    const three = (b: number, c: number) =>
      drawn([PIER], [mark('a', 'pier', 30, 'CA'), mark('b', 'pier', b, 'AC'), mark('c', 'pier', c, 'CA')]);
    // After the first, which ends at 41; before the third, which begins at 120.
    expect(slid('R-before-mark', three(60, 140))).toEqual([30, 66, 140]);
    // Room for it is 66 to 84: 90 slides back, and the third mark stays.
    const between = findings(three(90, 120)).find((f) => f.rule === 'R-before-mark' && f.measured! < 25);
    expect(between?.place).toMatchObject({ mark: 'c' });
    expect(mended(between).marks.map(({ at }) => Math.round(at))).toEqual([30, 90, 126]);
  });

  it('goes to the nearer side of a curve', () => {
    // The curve of radius 20 begins 80 mm along and is 31.4 mm long.
    const bent = line('bent', [40, 60], [120, 60], [140, 80, Math.SQRT2 - 1], [140, 190]);
    const sheet = { start: berth(40, 60) };
    const on = (at: number, setting: Setting) =>
      slid('R-mark-on-curve', drawn([bent], [mark('m', 'bent', at, 'CA')]), setting);
    expect(on(78, { sheet })).toEqual([80 - 11]);
    expect(on(104, { sheet })).toEqual([Math.round((80 + 10 * Math.PI + 25) * 10) / 10]);
    // Robots that come back want plain line on the other side too.
    expect(on(78, { sheet, kit: withRobot({ looseEnd: 'turn-back' }) })).toEqual([80 - 25 - 11]);
  });

  it('keeps its room from the axle of a robot that starts beside it, on its own side of it', () => {
    const at = (x: number, heading = 0) => ({ sheet: { start: berth(x, 100, heading) } });
    const pier = (way: number) => drawn([PIER], [mark('m', 'pier', way, 'CA')]);
    // The axle stands 60 mm along.
    expect(slid('R-before-mark', pier(75), at(100))).toEqual([85]);
    // 160 mm along, facing back: the mark has to end 25 mm before that.
    expect(slid('R-before-mark', pier(140), at(200, Math.PI))).toEqual([124]);
  });

  it('stays behind a robot that starts ahead of it, or has no place to go', () => {
    // Robots come back from the far end: the mark needs 25 mm to the near one, and 25 to the axle.
    const kit = withRobot({ looseEnd: 'turn-back' });
    const startAt = (x: number) => ({ kit, sheet: { start: berth(x, 100) } });
    const drawing = drawn([PIER], [mark('m', 'pier', 10, 'CVC')]);
    const room = (x: number) =>
      of('R-before-mark', drawing, startAt(x)).concat(of('R-after-mark', drawing, startAt(x)))[0];
    // Three bands are 16.5 mm long: 25 + 16.5 + 25 fit before 80, not before 60.
    expect(mended(room(120)).marks[0]!.at).toBeCloseTo(25, 1);
    expect(room(100)?.remedy?.design).toBeUndefined();
  });

  it('off a junction it says how, and slides to the nearer side', () => {
    const across = line('across', [150, 40], [150, 160]);
    const over = (at: number) => drawn([PIER, across], [mark('m', 'pier', at, 'CA')]);
    expect(of('R-mark-on-junction', over(105))[0]?.remedy?.code).toBe('slide-mark');
    // The crossing is 110 mm along; whose middle is behind it slides on, with 25 mm of room.
    expect(slid('R-mark-on-junction', over(107))).toEqual([135]);
    expect(slid('R-mark-on-junction', over(102))).toEqual([74]);
  });
});

describe('bands that are evened', () => {
  const banded = (at: number, ...bands: [ink: string, length: number, gap: number][]) =>
    drawn(
      [PIER],
      [
        mark(
          'm',
          'pier',
          at,
          bands.map(([ink, length, gap]) => ({ ink, length, gap })),
        ),
      ],
    );
  const better = (rule: RuleId, drawing: Drawing) => {
    const { at, bands } = mended(of(rule, drawing)[0]).marks[0]!;
    return [at, ...bands.map(({ length, gap }) => [length, gap])];
  };

  it('lose white and overlap only, and keep their lengths and their middle', () => {
    // 13 mm become 11: the mark begins 1 mm later.
    expect(better('R-band-gap', banded(60, ['C', 5.2, 0], ['A', 5.8, 2]))).toEqual([61, [5.2, 0], [5.8, 0]]);
    expect(better('R-band-gap', banded(60, ['C', 5, 0], ['A', 6, -2], ['C', 5.5, 0.4]))).toEqual([
      59,
      [5, 0],
      [6, 0],
      [5.5, 0.4],
    ]);
  });

  it('change where they are too long or too short only', () => {
    expect(better('R-band-length', banded(60, ['C', 5.2, 0], ['A', 6.5, 0.2]))).toEqual([
      60.5,
      [5.2, 0],
      [5.5, 0.2],
    ]);
    expect(better('R-band-length', banded(60, ['C', 4.5, 0], ['A', 5.9, 0]))).toEqual([
      59.5,
      [5.5, 0],
      [5.9, 0],
    ]);
  });

  it('change where they are unlike the others only, or else all', () => {
    // Of 5, 5 and 8.6 the mean is 6.2: 8.6 is 39 % off it, 5 is 19 %.
    const odd = banded(60, ['C', 5, 0], ['A', 5, 0], ['C', 8.6, 0]);
    expect(better('R-band-equality', odd)).toEqual([61.55, [5, 0], [5, 0], [5.5, 0]]);
  });
});
