import type { Way } from '../documents/kit.ts';
import type { Ending } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Direction } from '../geometry/piece.ts';
import type { PaperPoint, Seconds } from '../geometry/units.ts';
import { journeyOf } from '../run/launch.ts';
import { MODEL } from '../run/model.ts';
import { startOn } from '../track/start.ts';
import { twin } from '../track/track.ts';
import type { Chain, Step } from './chain.ts';
import { newMind } from './mind.ts';
import { take, waysAhead } from './pass-node.ts';
import { copyOf, memoryOf, type Outcome, type Ride } from './ride.ts';
import { rideOn } from './ride-on.ts';
import type { Journey, RoadMap } from './roads.ts';

/** A robot on a junction that nothing decides. */
export interface Fork {
  readonly at: PaperPoint;
  /** The direction in which it comes. */
  readonly heading: Direction;
  readonly branches: readonly Branch[];
}

/** One of its ways, all equally likely, and what that leads to. */
export interface Branch {
  readonly way: Way;
  readonly leads: Lead;
}

/** To a fork or to an ending, by index, after a time; or nowhere, for ever. */
export type Lead =
  | { readonly to: 'fork' | 'ending'; readonly index: number; readonly time: Seconds }
  | { readonly to: 'endless' };

export interface TrackEnding {
  readonly ending: Ending;
  readonly at: PaperPoint;
  /** Whether the berth at the other end was reached. */
  readonly arrived: boolean;
}

/** The track as robots from one berth meet it: what they do first, and all forks that they may come to. */
export interface TrackChain {
  readonly first: Lead;
  readonly forks: readonly Fork[];
  readonly endings: readonly TrackEnding[];
}

/** A drawing with more states than this is beyond being worked out. */
const MOST_FORKS = 240;

/**
 * Explores the track from one berth; undefined where there is more to it than can be worked out. Refuses the
 * finish berth of a sheet that has none.
 */
export function trackChain(map: RoadMap, start: 'start' | 'finish'): TrackChain | undefined {
  const { sheet, kit, track } = map;
  const { from, to } = journeyOf(sheet, start);
  const journey: Journey = { ...map, to };
  const found = startOn(track, from, kit);
  if (found.kind !== 'on') {
    const ending = { ending: 'never-started' as const, at: from.at, arrived: false };
    return { first: { to: 'ending', index: 0, time: 0 }, forks: [], endings: [ending] };
  }
  const ride: Ride = {
    road: map.from(found.edge),
    way: found.axle,
    // The motors lag as it sets off.
    ...newMind(kit, MODEL.motorLag),
    speed: 0,
    plainFrom: found.bar,
    sinceJunction: Number.POSITIVE_INFINITY,
    counts: !to || distance(to.at, from.at) > to.r,
  };
  return explored(journey, ride);
}

interface Exploring {
  readonly journey: Journey;
  readonly forks: Map<string, number>;
  readonly open: Ride[];
  readonly endings: TrackEnding[];
}

function explored(journey: Journey, ride: Ride): TrackChain | undefined {
  const exploring: Exploring = { journey, forks: new Map(), open: [], endings: [] };
  const first = leadOf(exploring, rideOn(journey, ride), 0);
  const forks: Fork[] = [];
  for (let next = exploring.open.shift(); next; next = exploring.open.shift()) {
    if (exploring.forks.size > MOST_FORKS) return undefined;
    const fork = next;
    const branches = waysAhead(journey, fork).map((way): Branch => {
      const onward = copyOf(fork);
      take(journey, onward, way);
      return { way, leads: leadOf(exploring, rideOn(journey, onward), fork.t) };
    });
    forks.push({ ...comingTo(journey, fork), branches });
  }
  return { first, forks, endings: exploring.endings };
}

function comingTo({ track }: Journey, ride: Ride): Pick<Fork, 'at' | 'heading'> {
  const { at, arms } = track.nodes[ride.road.node]!;
  const back = arms.find((arm) => arm.edge === twin(ride.road.parts.at(-1)!.edge))!.heading;
  // Never minus zero, which a file does not keep.
  return { at, heading: { x: 0 - back.x, y: 0 - back.y } };
}

function leadOf(exploring: Exploring, outcome: Outcome, since: Seconds): Lead {
  if (outcome.kind === 'endless') return { to: 'endless' };
  if (outcome.kind === 'fork') {
    const index = forkIndex(exploring, outcome.ride);
    return { to: 'fork', index, time: outcome.ride.t - since };
  }
  return { to: 'ending', index: endingIndex(exploring.endings, outcome), time: outcome.t - since };
}

function forkIndex({ forks, open }: Exploring, ride: Ride): number {
  const key = `${ride.road.parts.at(-1)!.edge} ${memoryOf(ride)}`;
  const known = forks.get(key);
  if (known !== undefined) return known;
  const index = forks.size;
  forks.set(key, index);
  open.push(ride);
  return index;
}

/** Endings of one kind this near to one another are one. */
const SAME_PLACE = 5;

export function endingIndex(endings: TrackEnding[], { ending, at, arrived }: TrackEnding): number {
  const known = endings.findIndex(
    (e) => e.ending === ending && e.arrived === arrived && distance(e.at, at) <= SAME_PLACE,
  );
  return known < 0 ? endings.push({ ending, at, arrived }) - 1 : known;
}

/** The chain to solve: state 0 is the start, fork i is state i + 1, endings absorb, the endless one is shut in. */
export function chainOf({ first, forks, endings }: TrackChain): Chain {
  const shutIn = forks.length + 1;
  const transient = forks.length + 2;
  const step = (lead: Lead, probability: number): Step => {
    if (lead.to === 'endless') return { to: shutIn, probability };
    return { to: lead.to === 'fork' ? lead.index + 1 : transient + lead.index, probability };
  };
  return {
    transient,
    absorbing: endings.length,
    steps: [
      [step(first, 1)],
      ...forks.map(({ branches }) => branches.map(({ leads }) => step(leads, 1 / branches.length))),
      [{ to: shutIn, probability: 1 }],
    ],
  };
}
