import { describe, expect, it } from 'vitest';
import { roundFigures } from '../../../shared/evidence/figures.ts';
import { DESK } from '../room/arbitraries.ts';
import { handsIn, joined, record, round, verdictWith } from './lesson.ts';

const MINUTE = 60_000;

describe('roundFigures', () => {
  it('says what trips how many, the most first, and whose newest entry it still trips', () => {
    const moves = [
      ...joined('a', 'b', 'c'),
      ...round('c'),
      ...handsIn('a', 0, false, 'corner'),
      ...handsIn('a', 0, false, 'both'),
      ...handsIn('b', 0, false, 'both'),
      ...handsIn('b', 0, true, 'sound'),
      ...handsIn('c', 0, false, 'untidy'),
    ];
    const verdicts = new Map([
      ['corner', verdictWith(['R-corner', 'stops'])],
      ['both', verdictWith(['R-before-mark', 'may-stop'], ['R-margin', 'stops'])],
      ['untidy', verdictWith(['R-corner', 'untidy'])],
      ['sound', verdictWith()],
    ]);
    const [figures] = roundFigures(record(moves, { verdicts }));
    expect(figures!.trips).toEqual([
      { rule: 'R-before-mark', teams: ['a', 'b'], left: ['a'] },
      { rule: 'R-margin', teams: ['a', 'b'], left: ['a'] },
      { rule: 'R-corner', teams: ['a'], left: [] },
    ]);
  });

  it('counts building time until the first entry, the one that met it, and the last, without pauses', () => {
    const from = 10_000;
    const at = (minutes: number) => from + minutes * MINUTE;
    const moves = [
      ...joined('a', 'b'),
      ...round('c', from),
      ...handsIn('a', 0, false, 'v', at(2)),
      [DESK, { kind: 'pause', on: true }, at(3)] as const,
      [DESK, { kind: 'pause', on: false }, at(8)] as const,
      ...handsIn('a', 0, true, 'v', at(9)),
      ...handsIn('a', 0, true, 'v', at(10)),
    ];
    const [figures] = roundFigures(record(moves));
    expect(figures).toMatchObject({ round: 0, key: 'key-c' });
    expect(figures!.teams).toEqual([
      {
        team: 'a',
        entries: 3,
        met: true,
        untilFirst: 2 * MINUTE,
        untilMet: 4 * MINUTE,
        untilLast: 5 * MINUTE,
      },
      { team: 'b', entries: 0, met: false, untilFirst: null, untilMet: null, untilLast: null },
    ]);
  });
});
