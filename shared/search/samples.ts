import { TRACE_RATE, type Trace } from '../documents/trace.ts';
import { norm } from '../geometry/exact-math.ts';
import type { Mm, Seconds } from '../geometry/units.ts';
import { pointOn, type Rail } from './rails.ts';

/** An unbroken part of a ride on one rail, at one pace. */
export interface Leg {
  readonly rail: Rail;
  readonly from: Mm;
  readonly to: Mm;
  readonly begin: Seconds;
  readonly end: Seconds;
  readonly pace: number;
}

/** Samples of a ride for goals that look at moments; none where no legs were kept. */
export function samplesOf(legs: readonly Leg[]): Trace['samples'] {
  const samples: Trace['samples'] = { x: [], y: [], cos: [], sin: [], way: [], pace: [] };
  let way = 0;
  for (const leg of legs) {
    const span = leg.end - leg.begin;
    for (let t = samples.x.length / TRACE_RATE; t < leg.end; t = samples.x.length / TRACE_RATE) {
      const share = span > 0 ? Math.max(0, (t - leg.begin) / span) : 0;
      const at = leg.from + share * (leg.to - leg.from);
      addPose(samples, leg, at);
      samples.way.push(way + at - leg.from);
      samples.pace.push(leg.pace);
    }
    way += leg.to - leg.from;
  }
  return samples;
}

function addPose(samples: Trace['samples'], { rail }: Leg, at: Mm): void {
  const { x, y } = pointOn(rail, at);
  const back = pointOn(rail, at - 1);
  const on = pointOn(rail, at + 1);
  const length = norm(on.x - back.x, on.y - back.y) || 1;
  samples.x.push(x);
  samples.y.push(y);
  samples.cos.push((on.x - back.x) / length);
  samples.sin.push((on.y - back.y) / length);
}
