import { describe, expect, it } from 'vitest';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import { berth, drawn, line, mark, of, PIER, withRobot } from './setting.ts';

/** Room beside marks: from where it is counted, and for which actions. Expected from the demo kit by hand. */

const TURNING = withRobot({ looseEnd: 'turn-back' });
/** A pier that begins 30 mm before the berth's middle. */
const LONG = line('long', [10, 100], [260, 100]);

const roomBefore = (at: number, setting: Parameters<typeof of>[2] = {}, from = LONG) =>
  of('R-before-mark', drawn([from], [mark('m', from.id, at, 'CA')]), setting);

describe('room before a mark', () => {
  it('counts from the robot’s own axle where that is nearer than the end of the line', () => {
    // The axle stands 30 mm along the line: the mark at 54 has 24.
    expect(roomBefore(55, { kit: TURNING })).toEqual([]);
    expect(roomBefore(54, { kit: TURNING })).toMatchObject([{ variant: 'start', measured: 24, allowed: 25 }]);
  });

  it('says nothing of a mark that the bar stands on or has left behind', () => {
    // The berth at x = 100 has its axle 60 mm along the pier, its bar at 71; the mark is 11 mm long.
    const sheet = { start: berth(100, 100) };
    expect(roomBefore(40, { sheet }, PIER)).toEqual([]);
    expect(roomBefore(60, { sheet }, PIER)).toEqual([]);
    expect(roomBefore(62, { sheet }, PIER)).toMatchObject([{ variant: 'start', measured: 2 }]);
    expect(roomBefore(84, { sheet }, PIER)).toMatchObject([{ variant: 'start', measured: 24 }]);
  });

  it('takes no berth on one line for a start on another', () => {
    const sheet = { start: berth(100, 100) };
    const up = line('up', [150, 100], [150, 10]);
    const lines = drawn([PIER, up], [mark('m', 'up', 30, 'CA')]);
    expect(of('R-before-mark', lines, { sheet })).toEqual([]);
    // The axle stands 40 mm along the pier, 10 mm less than the mark along its own line.
    const along = drawn([PIER, up], [mark('m', 'up', 50, 'CA')]);
    expect(of('R-before-mark', along, { sheet: { start: berth(80, 100) } })).toEqual([]);
  });

  it('takes no berth in which a robot can’t start for a start', () => {
    const starts = ['start', 'finish'] as const;
    const sheet = { finish: berth(105, 140) };
    expect(roomBefore(60, { sheet, starts }, PIER)).toEqual([]);
    // One that stands across the line has line under its bar, and still can't set out.
    const across = { finish: berth(100, 100, Math.PI / 2) };
    expect(roomBefore(62, { sheet: across, starts }, PIER)).toEqual([]);
  });

  it('counts from the nearest of two berths', () => {
    const sheet = { finish: berth(100, 100) };
    const both = { sheet, starts: ['start', 'finish'] as const };
    expect(roomBefore(84, { sheet }, PIER)).toEqual([]);
    expect(roomBefore(84, both, PIER)).toMatchObject([{ variant: 'start', measured: 24 }]);
  });

  it('between two marks is the larger of the two rooms that a kit wants', () => {
    // The second kit wants 28 mm before a mark and 30 after one; its bands are 7 mm long.
    const word = (id: string, at: number) =>
      mark(id, 'pier', at, [
        { ink: 'H', length: 7, gap: 0 },
        { ink: 'L', length: 7, gap: 0 },
      ]);
    const apart = (room: number) =>
      of('R-before-mark', drawn([{ ...PIER, width: 6 }], [word('a', 60), word('b', 74 + room)]), {
        kit: SECOND_KIT,
      });
    expect(apart(30)).toEqual([]);
    expect(apart(29)).toMatchObject([{ variant: 'mark', measured: 29, allowed: 30, place: { mark: 'b' } }]);
  });
});

describe('room after a mark', () => {
  /** A corner 110 mm along; the mark ends so far before it. */
  const ELBOW = line('elbow', [40, 100], [150, 100], [150, 180]);
  const roomAfter = (word: string, room: number) =>
    of('R-after-mark', drawn([ELBOW], [mark('m', 'elbow', 110 - room - 5.5 * word.length, word)]));

  it.each(['VC', 'VCV', 'VAV'])('%s acts at a place of its own, and has to be ready at a corner', (word) => {
    expect(roomAfter(word, 30)).toEqual([]);
    expect(roomAfter(word, 29)).toMatchObject([{ variant: 'corner', measured: 29, allowed: 30 }]);
  });

  it.each(['CVC', 'CA', 'CAC', 'AV', 'CV'])('%s needs no more before a corner than the reading', (word) => {
    expect(roomAfter(word, 25)).toEqual([]);
    expect(roomAfter(word, 24)).toMatchObject([{ variant: 'corner', measured: 24, allowed: 25 }]);
  });

  it('a choice has to be ready at its junction, also where a corner comes before that', () => {
    // The mark ends at 83.5, the corner is at 110 and the junction so far behind it.
    const chosen = (word: string, behind: number) => {
      const street = line('street', [120, 100 + behind], [180, 100 + behind]);
      const marks = [mark('m', 'elbow', 110 - 26 - 5.5 * word.length, word)];
      return of('R-after-mark', drawn([ELBOW, street], marks));
    };
    expect(chosen('AV', 3.5).map(({ measured, allowed }) => [measured, allowed])).toEqual([[29.5, 30]]);
    expect(chosen('AV', 4.5)).toEqual([]);
    expect(chosen('CA', 3.5)).toEqual([]);
  });

  it('a choice before a loose end has no junction to be ready at', () => {
    const ends = (room: number) =>
      of('R-after-mark', drawn([PIER], [mark('m', 'pier', 220 - room - 11, 'AV')]));
    expect(ends(28)).toEqual([]);
    expect(ends(24)).toMatchObject([{ variant: 'end', measured: 24, allowed: 25 }]);
  });

  it('up to another mark is that mark’s business, and a coloured stretch is no mark', () => {
    const marks = [mark('a', 'pier', 60, 'CA'), mark('b', 'pier', 81, 'AC')];
    expect(of('R-after-mark', drawn([PIER], marks))).toEqual([]);
    const stretch = mark('m', 'elbow', 85, [{ ink: 'C', length: 22, gap: 0 }]);
    expect(of('R-after-mark', drawn([ELBOW], [stretch]))).toEqual([]);
  });
});
