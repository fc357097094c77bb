import type { Ending, RunEvent, Trace } from '../../../../shared/documents/trace.ts';

export interface MadeRun {
  readonly start?: Trace['start'];
  readonly probability?: number;
  readonly ending?: Ending;
  /** When marks are read, when it comes into the berth, and when it ends, s. */
  readonly reads?: readonly number[];
  readonly finish?: number;
  readonly end?: number;
}

/** A made-up run that only has its events. */
export function runWith({ start = 'start', probability = 1, ending = 'finished', ...when }: MadeRun): Trace {
  const where = (t: number) => ({ t, x: 0, y: 0, way: 0, pace: 'steady' as const });
  const events: RunEvent[] = (when.reads ?? []).map((t) => ({
    kind: 'read',
    ...where(t),
    word: 'CA',
    along: true,
    already: false,
  }));
  if (when.finish !== undefined) events.push({ kind: 'finish', ...where(when.finish) });
  if (when.end !== undefined) events.push({ kind: 'end', ...where(when.end), ending });
  const samples = { x: [0], y: [0], cos: [1], sin: [0], way: [0], pace: [0] };
  return {
    version: 1,
    ...{ start, probability, ending, samples, events },
    seed: 0,
    keepOut: {},
    edge: 0,
    hash: '00000000',
  };
}
