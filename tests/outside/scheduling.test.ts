import { describe, expect, test } from 'vitest';
import {
  listSchedule,
  longestFirstSchedule,
  lowerBound,
  makespanOf,
  shortestSchedule,
} from '../../shared/prep/makespan.ts';

const inOrder = (times: readonly number[]) => times.map((_, i) => i);
const listed = (times: readonly number[], machines: number) =>
  makespanOf(times, listSchedule(times, machines, inOrder(times)));
const longestFirst = (times: readonly number[], machines: number) =>
  makespanOf(times, longestFirstSchedule(times, machines));

// Source: Graham, SIAM J. Appl. Math. 17 (1969) 416-429: longest first takes at most 4/3 - 1/(3m) of the
// least time. The family that reaches it (two jobs each of 2m-1 ... m+1, three of m) is from memory.
describe('longest first on the family that is worst for it', () => {
  const family = (m: number) => [
    ...Array.from({ length: m - 1 }, (_, i) => 2 * m - 1 - i).flatMap((time) => [time, time]),
    m,
    m,
    m,
  ];
  test.each([2, 3, 4, 5])('%i machines: 4m - 1 where 3m is the least', (m) => {
    expect(longestFirst(family(m), m)).toBe(4 * m - 1);
    expect(shortestSchedule(family(m), m)).toMatchObject({ makespan: 3 * m, bound: 3 * m, optimal: true });
  });
});

// Source: Graham, Bell System Technical Journal 45 (1966), the bound 2 - 1/m (from memory): m(m-1) jobs of 1,
// then one of m.
test.each([2, 3, 4])(
  'list scheduling in the worst order on %i machines: 2m - 1 where m is the least',
  (m) => {
    const times = [...new Array<number>(m * (m - 1)).fill(1), m];
    expect(listed(times, m)).toBe(2 * m - 1);
    expect(shortestSchedule(times, m)).toMatchObject({ makespan: m, optimal: true });
  },
);

// Source: an encyclopedia's article on list scheduling, the jobs 4, 5, 6, 7, 8 in that order.
describe('the jobs 4, 5, 6, 7, 8', () => {
  const times = [4, 5, 6, 7, 8];
  const assigned = (m: number) =>
    listSchedule(times, m, inOrder(times)).map((jobs) => jobs.map((job) => times[job]));

  test('in that order: 18 on two machines, 13 on three', () => {
    expect(assigned(2)).toEqual([
      [4, 6, 8],
      [5, 7],
    ]);
    expect(assigned(3)).toEqual([[4, 7], [5, 8], [6]]);
  });

  test('longest first 17 and 11; the least, by hand, 15 and 11', () => {
    expect([longestFirst(times, 2), longestFirst(times, 3)]).toEqual([17, 11]);
    expect([2, 3].map((m) => shortestSchedule(times, m).makespan)).toEqual([15, 11]);
  });
});

// Source: Sahni, Data Structures, Algorithms, and Applications, ch. 12, exercise 31: times 9 to 1.
test('the times 9 to 1: longest first 23 and 16, the least 23 and 15', () => {
  const times = [9, 8, 7, 6, 5, 4, 3, 2, 1];
  expect([longestFirst(times, 2), longestFirst(times, 3)]).toEqual([23, 16]);
  expect([2, 3].map((m) => shortestSchedule(times, m).makespan)).toEqual([23, 15]);
});

// By hand: of three jobs two share one of two machines.
test('two jobs that must share a machine are a bound', () => {
  expect(lowerBound([5, 5, 5], 2)).toBe(10);
  expect(shortestSchedule([5, 5, 5], 2)).toMatchObject({ makespan: 10, optimal: true });
});
