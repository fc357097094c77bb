import { describe, expect, it } from 'vitest';
import { drawn, line, mark, mended, of, PIER, withRobot } from './setting.ts';

/** A pier with a line across it 160 mm along. */
const ACROSS = line('across', [200, 40], [200, 160]);
/** Room of `room` mm between the last of two bands and the crossing. */
const roomFor = (room: number, word: string, id = 'm') => mark(id, 'pier', 160 - 11 - room, word);

describe('R-after-mark', () => {
  it('R-after-mark is silent with 30 mm from a choice at pace steady to its junction', () => {
    expect(of('R-after-mark', drawn([PIER, ACROSS], [roomFor(30, 'AV')]))).toEqual([]);
  });

  it('R-after-mark finds 28 mm, and slides the mark back by two', () => {
    const found = of('R-after-mark', drawn([PIER, ACROSS], [roomFor(28, 'AV')]));
    expect(found).toMatchObject([
      { variant: 'junction', measured: 28, allowed: 30, unit: 'mm', severity: 'may-stop' },
    ]);
    expect(mended(found[0]).marks[0]?.at).toBeCloseTo(119, 1);
  });

  it('R-after-mark asks for the fastest pace possible there: 60 mm at pace fast', () => {
    const two = [mark('f', 'pier', 30, 'CA'), mark('g', 'pier', 68, 'CA')];
    const long = line('pier', [40, 100], [270, 100]);
    const across = line('across', [245, 40], [245, 160]);
    // Bands end at 115 + 11 = 126: 79 mm before the crossing at 205; at 135 + 11 it is 59 mm.
    expect(of('R-after-mark', drawn([long, across], [...two, mark('m', 'pier', 115, 'AV')]))).toEqual([]);
    expect(of('R-after-mark', drawn([long, across], [...two, mark('m', 'pier', 135, 'AV')]))).toMatchObject([
      { measured: 59, allowed: 60, remedy: { code: 'slide-or-slow-down' }, place: { mark: 'm' } },
    ]);
  });

  it('R-after-mark is content with 15 mm after a slowing down to creep', () => {
    const slow = mark('s', 'pier', 40, 'AC');
    expect(of('R-after-mark', drawn([PIER, ACROSS], [slow, roomFor(15, 'AV')]))).toEqual([]);
    expect(of('R-after-mark', drawn([PIER, ACROSS], [slow, roomFor(14, 'AV')]))).toMatchObject([
      { measured: 14, allowed: 15 },
    ]);
  });

  it('R-after-mark doesn’t count on a slower pace before its mark can have acted', () => {
    // "Slower" ends at 91, the choice begins at 116: 25 mm later, but at steady it wants 30 to act.
    const slow = mark('s', 'pier', 80, 'AC');
    expect(of('R-after-mark', drawn([PIER, ACROSS], [slow, mark('m', 'pier', 123, 'AV')]))).toEqual([]);
    expect(of('R-after-mark', drawn([PIER, ACROSS], [slow, mark('m', 'pier', 120, 'AV')]))).toMatchObject([
      { measured: 29, allowed: 30 },
    ]);
  });

  it('R-after-mark asks for 25 mm of plain line where nothing must be ready', () => {
    const elbow = line('elbow', [40, 100], [150, 100], [150, 180]);
    const faster = (room: number) => drawn([elbow], [mark('m', 'elbow', 110 - 11 - room, 'CA')]);
    expect(of('R-after-mark', faster(25))).toEqual([]);
    expect(of('R-after-mark', faster(24))).toMatchObject([
      { variant: 'corner', measured: 24, allowed: 25, severity: 'untidy' },
    ]);
  });

  it('R-after-mark wants parking ready before the line’s end', () => {
    const park = (room: number) => drawn([PIER], [mark('m', 'pier', 220 - 16.5 - room, 'VAV')]);
    expect(of('R-after-mark', park(30))).toEqual([]);
    expect(of('R-after-mark', park(27))).toMatchObject([{ variant: 'end', measured: 27, allowed: 30 }]);
  });

  it('R-after-mark finds a choice short of its junction through a corner', () => {
    // The corner is 110 mm along, the crossing 4 mm behind it.
    const elbow = line('elbow', [40, 100], [150, 100], [150, 180]);
    const across = line('across', [90, 104], [260, 104]);
    const choice = (at: number) => drawn([elbow, across], [mark('m', 'elbow', at, 'AV')]);
    expect(of('R-after-mark', choice(84))).toMatchObject([
      { variant: 'junction', measured: 19, allowed: 30 },
    ]);
    expect(of('R-after-mark', choice(74))).toMatchObject([
      { variant: 'junction', measured: 29, allowed: 30 },
    ]);
    expect(of('R-after-mark', choice(73))).toEqual([]);
  });

  it('R-after-mark looks at the way back only where robots come back', () => {
    const start = line('pier', [40, 100], [260, 100]);
    const wall = line('wall', [70, 40], [70, 160]);
    // On the way back from the end a crossing follows 20 mm behind the mark.
    const drawing = drawn([start, wall], [mark('m', 'pier', 50, 'CVC')]);
    expect(of('R-after-mark', drawing)).toEqual([]);
    expect(of('R-after-mark', drawing, { kit: withRobot({ looseEnd: 'turn-back' }) })).toMatchObject([
      { variant: 'junction', measured: 20, allowed: 25 },
    ]);
  });
});
