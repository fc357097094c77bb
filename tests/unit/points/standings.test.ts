import { describe, expect, test } from 'vitest';
import { growth, scoredOf, standings } from '../../../shared/points/standings.ts';

const entry = (team: string, round: number, points: number) => ({ team, round, points });

describe('scoredOf', () => {
  test('entries count that are taken, judged and not given back', () => {
    const sent = (points: number | null, taken: boolean, returned = false) => ({
      team: 'bell',
      round: 2,
      taken,
      returned,
      verdict: points === null ? null : { points, level: 'entry' },
    });
    const entries = [
      sent(40, true),
      sent(90, false),
      sent(null, true),
      sent(null, false),
      sent(0, true),
      sent(80, true, true),
    ];
    expect(scoredOf(entries)).toEqual([entry('bell', 2, 40), entry('bell', 2, 0)]);
    expect(scoredOf([])).toEqual([]);
  });
});

describe('standings', () => {
  test("a team's best entry of a round counts, and rounds add up", () => {
    const table = standings(
      ['bell', 'kite'],
      [
        entry('bell', 0, 50),
        entry('bell', 0, 100),
        entry('bell', 0, 75),
        entry('kite', 0, 80),
        entry('kite', 1, 40),
      ],
    );
    expect(table).toEqual([
      { team: 'kite', points: 120, rank: 1 },
      { team: 'bell', points: 100, rank: 2 },
    ]);
  });
  test('equal teams share a rank, the next one leaves a gap, a team without entries is last', () => {
    const table = standings(
      ['bell', 'kite', 'shell', 'leaf'],
      [entry('kite', 0, 60), entry('shell', 0, 60), entry('leaf', 0, 30)],
    );
    expect(table.map((row) => [row.team, row.points, row.rank])).toEqual([
      ['kite', 60, 1],
      ['shell', 60, 1],
      ['leaf', 30, 3],
      ['bell', 0, 4],
    ]);
  });
});

describe('growth', () => {
  test('a team against its own first entry of each round, in the order of the teams', () => {
    const table = growth(
      ['bell', 'kite', 'shell'],
      [
        entry('bell', 0, 50),
        entry('kite', 0, 90),
        entry('bell', 0, 80),
        entry('kite', 0, 70),
        entry('bell', 1, 40),
        entry('bell', 0, 60),
        entry('bell', 1, 45),
      ],
    );
    expect(table).toEqual([
      { team: 'bell', first: 90, best: 125, grown: 35 },
      { team: 'kite', first: 90, best: 90, grown: 0 },
      { team: 'shell', first: 0, best: 0, grown: 0 },
    ]);
  });
});
