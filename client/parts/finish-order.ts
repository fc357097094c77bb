import type { Ending, Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';

/** How one of a heat came out. */
export interface Finish {
  /** From 1; equal tenths of a second share a place. null for who does not arrive. */
  readonly place: number | null;
  /** When it arrived, with the last of its robots, or else when all was over. */
  readonly at: Seconds;
  /** How the robot that decides it ended; null where none ever drove. */
  readonly ending: Ending | null;
}

/** To the tenth of a second that is shown. */
const tenths = (t: Seconds): number => Math.round(t * 10);

/**
 * Who came into the berth when, in the order of what is given (standard competition ranking). Several robots
 * of one entry have arrived when the last one has.
 */
export function finishOrder(entries: readonly (readonly Trace[])[]): Finish[] {
  const all = entries.map(outcomeOf);
  const arrived = all.flatMap(({ arrival }) => (arrival === undefined ? [] : [tenths(arrival)]));
  return all.map(({ arrival, over, ending }) => ({
    place: arrival === undefined ? null : 1 + arrived.filter((t) => t < tenths(arrival)).length,
    at: arrival ?? over,
    ending,
  }));
}

interface Outcome {
  readonly arrival: Seconds | undefined;
  readonly over: Seconds;
  readonly ending: Ending | null;
}

function outcomeOf(traces: readonly Trace[]): Outcome {
  const arrivals = traces.map(({ events }) => events.find(({ kind }) => kind === 'finish')?.t);
  const all = arrivals.length > 0 && arrivals.every((t) => t !== undefined);
  const deciding = all ? traces[0] : traces[arrivals.indexOf(undefined)];
  return {
    arrival: all ? Math.max(...arrivals) : undefined,
    over: deciding ? durationOf(deciding) : 0,
    ending: deciding?.ending ?? null,
  };
}
