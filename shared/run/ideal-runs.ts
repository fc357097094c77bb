import type { RunEventOf, Trace } from '../documents/trace.ts';
import type { Seconds } from '../geometry/units.ts';
import { drive } from './drive.ts';
import { RUN_RULES } from './model.ts';
import { type Ambient, type DriveOptions, type StartBerth, UNDISTURBED, type World } from './world.ts';

export interface IdealRuns {
  /** In the order of the starts, then of the arms taken; each with its probability within its start. */
  readonly traces: readonly Trace[];
  /** A start has more than 16 runs: the rest is left out, and too much is left to luck. */
  readonly tooMany: boolean;
  /** Then: where the first junction of such a start is left to chance, which all of its runs come to. */
  readonly firstOpen?: RunEventOf<'junction'>;
}

/** Every run of the undisturbed robot: it forks where a junction leaves the way to chance, arms from the left. */
export function idealRuns(
  world: World,
  options: {
    readonly starts: readonly StartBerth[];
    readonly limit: Seconds;
    readonly ambient?: Ambient | undefined;
  },
): IdealRuns {
  const { starts, limit, ambient = UNDISTURBED.ambient } = options;
  const forks = starts.map((start) => runsFrom(world, { ...UNDISTURBED, start, limit, ambient }));
  const traces = forks.flatMap((fork) => fork.traces);
  const lucky = forks.find((fork) => fork.tooMany);
  if (!lucky) return { traces, tooMany: false };
  return { traces, tooMany: true, firstOpen: leftToChance(lucky.traces[0]!)[0]! };
}

/**
 * A run takes the first arm wherever its list of choices has ended, so one run shows all junctions that
 * it leaves open; the others follow from its last junction back to its first.
 */
function runsFrom(world: World, options: DriveOptions): IdealRuns {
  const traces: Trace[] = [];
  const open: number[][] = [[]];
  for (let choices = open.pop(); choices; choices = open.pop()) {
    if (traces.length === RUN_RULES.mostIdealRuns) return { traces, tooMany: true };
    const trace = drive(world, { ...options, choices });
    traces.push(trace);
    const junctions = leftToChance(trace);
    for (let i = choices.length; i < junctions.length; i++) {
      const before = [...choices, ...new Array<number>(i - choices.length).fill(0)];
      for (let arm = junctions[i]!.arms.length - 1; arm > 0; arm--) open.push([...before, arm]);
    }
  }
  return { traces, tooMany: false };
}

const leftToChance = (trace: Trace): RunEventOf<'junction'>[] =>
  trace.events.filter(
    (event): event is RunEventOf<'junction'> => event.kind === 'junction' && event.by === 'chance',
  );
