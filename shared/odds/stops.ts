import type { Mm } from '../geometry/units.ts';
import { RUN_RULES } from '../run/model.ts';
import { readingsOn } from './readings.ts';
import type { Ride } from './ride.ts';
import { comesNear, firstWay, isIn, type Journey } from './roads.ts';

/** A way of the axle along a road at which something changes. */
export interface Stop {
  readonly way: Mm;
  readonly kind: 'bend' | 'reading' | 'enter' | 'away' | 'off' | 'end';
  readonly word?: string;
}

/** All stops that are still ahead on the present road, in order. */
export function stopsOn(journey: Journey, ride: Ride): Stop[] {
  const { road } = ride;
  const { barAhead } = journey.kit.robot;
  const stops: Stop[] = [
    ...road.bends.map((bend): Stop => ({ way: bend.to - barAhead / 2, kind: 'bend' })),
    ...readingsOn(journey, road, ride.plainFrom).map(
      ({ at, word }): Stop => ({ way: at - barAhead, kind: 'reading', word }),
    ),
    ...arrivals(journey, ride),
    ...leavings(journey, ride),
    { way: road.reach, kind: 'end' },
  ];
  return stops.sort((a, b) => a.way - b.way);
}

function arrivals(journey: Journey, ride: Ride): Stop[] {
  const { track, to } = journey;
  const { road } = ride;
  if (!to || ride.arrivedAt !== undefined) return [];
  const nearby = ride.counts ? to.r : to.r + RUN_RULES.leaveStart;
  if (!comesNear(track, road, to.at, nearby)) {
    ride.counts = true;
    return [];
  }
  let from = ride.way;
  const stops: Stop[] = [];
  if (!ride.counts) {
    const inside = isIn(to, RUN_RULES.leaveStart);
    const away = firstWay(track, road, from, (p) => !inside(p));
    if (away === undefined) return [];
    stops.push({ way: away, kind: 'away' });
    from = away;
  }
  const enter = firstWay(track, road, from, isIn(to));
  return enter === undefined ? stops : [...stops, { way: enter, kind: 'enter' }];
}

function leavings({ track, sheet }: Journey, ride: Ride): Stop[] {
  const off = firstWay(
    track,
    ride.road,
    ride.way,
    (p) => p.x < 0 || p.y < 0 || p.x > sheet.w || p.y > sheet.h,
  );
  return off === undefined ? [] : [{ way: off, kind: 'off' }];
}
