import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { resultsCsv } from '../../../server/http/results.ts';
import { readyChallenge } from '../../../server/rooms/ready.ts';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Verdict } from '../../../shared/documents/verdict.ts';
import { record, verdictWith } from '../evidence/lesson.ts';
import { DESK, SERVER, team } from '../room/arbitraries.ts';

const challenge: Challenge = readyChallenge('first-line')!;

const lost: Verdict = {
  ...verdictWith(['R-corner', 'stops'], ['R-margin', 'untidy']),
  odds: [
    {
      start: 'start',
      basis: 'track',
      endings: [
        { ending: 'lost', at: { x: 100.4, y: 49.6 }, probability: 0.5 },
        { ending: 'finished', at: { x: 200, y: 50 }, probability: 0.5 },
      ],
      finish: 0.5,
      endless: 0,
      inTime: { limit: 60, finish: 0.5 },
      open: [],
    },
  ],
};

describe('results as CSV', () => {
  const S = 1000;
  const lesson = record(
    [
      [SERVER, { kind: 'join', team: 'a' }, 10 * S],
      [SERVER, { kind: 'join', team: 'b' }, 10 * S],
      [SERVER, { kind: 'join', team: 'c' }, 10 * S],
      [DESK, { kind: 'choose-challenge', challenge: 'c', key: 'first-line' }, 20 * S],
      [DESK, { kind: 'start-building', seconds: null }, 100 * S],
      [team('a'), { kind: 'try', round: 0, guess: 'fails', at: null, made: false }, 120 * S],
      [team('a'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' }, 130 * S],
      [DESK, { kind: 'set-weather', team: 'b', weather: 'stormy' }, 131 * S],
      [team('b'), { kind: 'hand-in', round: 0, entry: 'e2', design: 'd2' }, 132 * S],
      [DESK, { kind: 'set-weather', team: 'b', weather: 'calm' }, 133 * S],
      [team('b'), { kind: 'hand-in', round: 0, entry: 'e3', design: 'd3' }, 134 * S],
      [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 40, met: false }, 140 * S],
      [DESK, { kind: 'go-to', phase: 'show' }, 400 * S],
      [DESK, { kind: 'go-to', phase: 'drive' }, 460 * S],
    ],
    { verdicts: new Map([['v1', lost]]), challenges: new Map([['c', challenge]]) },
  );
  const rows: Record<string, string>[] = parse(resultsCsv(lesson, 1060 * S), { bom: true, columns: true });

  it('say what the picture of the class does: rules, places, tries and times', () => {
    // Handed in after 30 s of 300 s of building; the robots have driven for 600 s.
    expect(rows[0]).toMatchObject({
      team: 'sailboat',
      points: '40',
      'drawing rules': 'R-corner',
      'runs failed at (mm)': 'lost 100 50',
      'tries in round': '1',
      'minutes on task': '0.5',
      'minutes at screen': '5',
      'minutes on paper': '10',
    });
  });

  it('name the weather of an entry where its challenge says another', () => {
    expect(rows.map(({ entry, weather }) => [entry, weather])).toEqual([
      ['1', ''],
      ['1', 'stormy'],
      ['2', ''],
      ['', ''],
    ]);
  });

  it('have empty cells for a team without an entry', () => {
    const empty = { entry: '', 'drawing rules': '', 'minutes on paper': '', weather: '' };
    expect(rows.at(-1)).toMatchObject({ team: 'key', ...empty });
  });
});
