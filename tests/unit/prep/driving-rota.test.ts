import { describe, expect, it } from 'vitest';
import { drivingRota, turnsFor } from '../../../shared/prep/driving-rota.ts';

const upTo = (n: number) => Array.from({ length: n }, (_, i) => i + 1);
const times = (turns: number, robots: number[]) => Array.from({ length: turns }, () => robots);
const CLASSES = upTo(20).flatMap((teams) => upTo(12).map((robots) => [teams, robots] as const));

describe('drivingRota', () => {
  // By hand: three teams, two robots. A and B drive; then C, which comes first and takes the 7, so that the 4 is
  // left for A, which has had it; then B on the 4, which it has not had, and C on the 7 that is left.
  it('sends three teams over two robots as by hand', () => {
    expect(drivingRota(['A', 'B', 'C'], times(3, [4, 7]))).toEqual([
      [
        { team: 'A', robot: 4, time: 0 },
        { team: 'B', robot: 7, time: 0 },
      ],
      [
        { team: 'C', robot: 7, time: 0 },
        { team: 'A', robot: 4, time: 1 },
      ],
      [
        { team: 'B', robot: 4, time: 1 },
        { team: 'C', robot: 7, time: 1 },
      ],
    ]);
  });

  // By hand: the 1 rests in the second turn, so that C drives alone; then it is D's turn, and E's.
  it('leaves no team out where a robot rests for a turn', () => {
    const turns = drivingRota(['A', 'B', 'C', 'D', 'E'], [[1, 2], [2], [1, 2]]);
    expect(turns.map((drives) => drives.map(({ team, robot }) => `${team}${robot}`))).toEqual([
      ['A1', 'B2'],
      ['C2'],
      ['D1', 'E2'],
    ]);
  });

  it('is empty without teams or robots', () => {
    expect(drivingRota([], times(2, [1]))).toEqual([[], []]);
    expect(drivingRota(['A'], times(2, []))).toEqual([[], []]);
    expect(turnsFor(5, 0, 1)).toBe(0);
    expect(turnsFor(0, 5, 1)).toBe(0);
  });

  it('is fair to every team in any class', () => {
    for (const [teams, robots] of CLASSES) {
      const drives = new Map<number, number[]>(upTo(teams).map((team) => [team, []]));
      for (const turn of drivingRota(upTo(teams), times(12, upTo(robots)))) {
        expect(new Set(turn.map(({ robot }) => robot)).size).toBe(turn.length);
        expect(new Set(turn.map(({ team }) => team)).size).toBe(Math.min(teams, robots));
        for (const { team, robot, time } of turn) {
          expect(time).toBe(drives.get(team)!.length);
          drives.get(team)!.push(robot);
        }
        const counts = [...drives.values()].map((had) => had.length);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      }
      const spreads = [...drives.values()].map((had) => {
        const often = upTo(robots).map((robot) => had.filter((each) => each === robot).length);
        return Math.max(...often) - Math.min(...often);
      });
      expect(Math.max(...spreads), `${teams} teams, ${robots} robots`).toBeLessThanOrEqual(2);
    }
  });

  it('takes as many turns as let every team drive so often', () => {
    expect([turnsFor(12, 5, 1), turnsFor(12, 12, 1), turnsFor(3, 12, 2), turnsFor(7, 3, 2)]).toEqual([
      3, 1, 2, 5,
    ]);
  });
});
