import { describe, expect, test } from 'vitest';
import { standings } from '../../../shared/points/standings.ts';

const entry = (team: string, round: number, points: number) => ({ team, round, points });

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
