import { TRACE_RATE, type Trace } from '../../documents/trace.ts';
import type { Margin } from '../margin.ts';
import type { Signal } from '../temporal.ts';

/** Where the robot is in one sample: the axle's middle and the unit vector of its heading. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly cos: number;
  readonly sin: number;
}

/**
 * One sample's time after the run's last event, so that what comes true in the very end still holds
 * for a moment.
 */
export const signalEnd = (run: Trace): number => run.events.at(-1)!.t + 1 / TRACE_RATE;

/** A margin in every sample of a run; it holds until the next. */
export function sampled(run: Trace, marginIn: (pose: Pose, index: number) => Margin): Signal<Margin> {
  const { x, y, cos, sin } = run.samples;
  const values = x.map((_, i) => marginIn({ x: x[i]!, y: y[i]!, cos: cos[i]!, sin: sin[i]! }, i));
  return { times: values.map((_, i) => i / TRACE_RATE), values, end: signalEnd(run) };
}
