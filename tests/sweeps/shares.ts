import type { Kit } from '../../shared/documents/kit.ts';
import { type Seen, type SetUp, SWEEP_KIT, SWEEP_PACES } from './trial.ts';

/**
 * Sweeps of one quantity, 200 robots a pace. A sweep gives for every value the shares, in percent, at
 * creep, steady and fast.
 */
export type Shares = readonly [creep: number, steady: number, fast: number];

export type Pace = SetUp['pace'];

export const RUNS = 200;
export const SEED = 1000;
export const OTHER_SEED = 5000;

/** Share of robots, in percent, for each pace. */
export function atEachPace(share: (pace: Pace) => number): Shares {
  const [creep, steady, fast] = SWEEP_PACES.map(share);
  return [creep!, steady!, fast!];
}

export const percentOf = (found: ReadonlyMap<string, number>, ...outcome: string[]): number => {
  const all = [...found.values()].reduce((sum, n) => sum + n, 0);
  return (100 * outcome.reduce((sum, name) => sum + (found.get(name) ?? 0), 0)) / all;
};

export const merged = (maps: readonly ReadonlyMap<string, number>[]): Map<string, number> => {
  const sum = new Map<string, number>();
  for (const map of maps) for (const [name, n] of map) sum.set(name, (sum.get(name) ?? 0) + n);
  return sum;
};

/** The same robot, going straight on at junctions that no mark decides. */
export const STRAIGHT_ON: Kit = {
  ...SWEEP_KIT,
  robot: { ...SWEEP_KIT.robot, unmarkedJunction: 'straight' },
};

export const speedOf = (pace: Pace): number => SWEEP_KIT.robot.paces[pace];
export const passedOrMistaken = (seen: Seen): string => (seen.junctions > 0 ? 'junction' : 'clean');

/** Shares of robots with one of these outcomes, from what was found at each pace. */
export function sharesOf(found: readonly ReadonlyMap<string, number>[], ...names: string[]): Shares {
  const [creep, steady, fast] = found.map((map) => percentOf(map, ...names));
  return [creep!, steady!, fast!];
}
