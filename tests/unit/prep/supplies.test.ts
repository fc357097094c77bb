import { expect, it } from 'vitest';
import { SUPPLIES, suppliesFor } from '../../../shared/prep/supplies.ts';
import { ROOM_LIMITS } from '../../../shared/room/decision.ts';

const counts = (teams: number) => Object.fromEntries(suppliesFor(teams).map((s) => [s.supply, s.count]));

// By hand: eight teams get two spares; 8 × 3 + 2 sheets; 8 × 1.2 m of tape are one roll of 10 m.
it('suppliesFor eight teams counts one in each hand and a spare for every five', () => {
  expect(counts(8)).toEqual({
    robots: 10,
    tablets: 8,
    'line-markers': 10,
    'band-markers': 10,
    sheets: 26,
    'paper-under': 10,
    tape: 1,
    'gauge-cards': 10,
    slips: 24,
    patches: 2,
    chart: 1,
    cloths: 8,
    box: 1,
  });
});

// By hand: 25 × 1.2 m are exactly three rolls, one team more needs a fourth.
it('suppliesFor rounds rolls of tape up, and not an exact number of them', () => {
  expect([counts(25).tape, counts(26).tape]).toEqual([3, 4]);
});

it('suppliesFor names everything for any class, never less for more teams', () => {
  for (let teams = 2; teams <= ROOM_LIMITS.teams; teams++) {
    const [less, more] = [suppliesFor(teams - 1), suppliesFor(teams)];
    expect(more.map(({ supply }) => supply)).toEqual(SUPPLIES);
    for (const [i, { count }] of more.entries()) expect(count).toBeGreaterThanOrEqual(less[i]!.count);
  }
});
