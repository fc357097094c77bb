import type { Ending } from '../documents/trace.ts';
import type { Mm, MmPerSecond, PaperPoint, Seconds } from '../geometry/units.ts';
import type { Mind } from './mind.ts';
import { type Journey, placeOn, type Road } from './roads.ts';

/** A robot on the graph: where it is, how fast, and what it has in mind. Ways are of its axle along its road. */
export interface Ride extends Mind {
  road: Road;
  way: Mm;
  speed: MmPerSecond;
  /** Way of the bar from which on it has seen nothing but plain line. */
  plainFrom: Mm;
  /** How far it has come since its last junction. */
  sinceJunction: Mm;
  /** Whether arriving counts yet: only after it has left a shared berth. */
  counts: boolean;
}

/** What a ride comes to. */
export type Outcome =
  /** It stands on a junction that nothing decides. */
  | { readonly kind: 'fork'; readonly ride: Ride }
  | {
      readonly kind: 'end';
      readonly ending: Ending;
      readonly at: PaperPoint;
      readonly t: Seconds;
      readonly arrived: boolean;
    }
  /** It comes back to where it was, for ever. */
  | { readonly kind: 'endless' };

export const copyOf = (ride: Ride): Ride => ({ ...ride, queue: [...ride.queue] });

/** Times are alike within so much, ways and speeds within a mm: then a ride goes on alike. */
const ALIKE: Seconds = 0.05;

/** All that matters for how a ride goes on, as text. */
export function memoryOf(ride: Ride): string {
  const waiting = ride.queue.map(
    ({ due, action, paceEnds }) =>
      `${Math.round((due - ride.t) / ALIKE)}${paceEnds ? '!' : ''}${JSON.stringify(action)}`,
  );
  const held = Math.max(0, Math.round((ride.heldUntil - ride.t) / ALIKE));
  return `${ride.pace} ${Math.round(ride.speed)} ${ride.pending ?? ''} ${held} ${ride.counts} ${waiting.join()}`;
}

export const placeKey = (ride: Ride): string =>
  `${ride.road.parts[0]!.edge} ${Math.round(ride.way)} ${memoryOf(ride)}`;

/** The end of a ride where it is; one that has arrived ends in the berth. */
export const endAt = (
  journey: Journey,
  ride: Ride,
  ending: 'parked' | 'stopped' | 'off-paper' | 'finished',
): Outcome => ({
  kind: 'end',
  ending,
  at: ending === 'finished' && journey.to ? journey.to.at : placeOn(journey.track, ride.road, ride.way),
  t: ride.arrivedAt ?? ride.t,
  arrived: ride.arrivedAt !== undefined,
});
