import type { Odds, OpenJunction } from '../documents/outlook.ts';
import type { Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Seconds } from '../geometry/units.ts';
import type { Ambient, StartBerth, World } from '../run/world.ts';
import type { Track } from '../track/track.ts';
import { agrees } from './agreement.ts';
import { arrivalsWithin } from './arrivals.ts';
import { type Absorption, absorptionOf, type Chain, hittingChances } from './chain.ts';
import { roadMap } from './roads.ts';
import { runChain } from './run-chain.ts';
import { chainOf, type Fork, type Lead, type TrackChain, trackChain } from './track-chain.ts';

export interface OddsQuestion {
  readonly start: StartBerth;
  readonly limit: Seconds;
  readonly ambient: Ambient;
  /** Undisturbed runs from this berth, as far as they were followed. */
  readonly runs: readonly Trace[];
}

/**
 * The odds of a drawing from one berth: the track as an absorbing Markov chain; where the undisturbed runs
 * do otherwise, the chain of runs that are driven for it. Undefined where there is more to a drawing than
 * can be worked out.
 */
export function oddsOf(world: World, track: Track, question: OddsQuestion): Odds | undefined {
  const { start, limit, ambient, runs } = question;
  const chain = trackChain(roadMap(track, world.sheet, world.kit), start);
  if (chain && agrees(chain, track, runs, limit)) return oddsFrom(chain, 'track', start, limit);
  const driven = runChain(world, start, ambient);
  if (driven) return oddsFrom(driven, 'runs', start, limit);
  return chain && oddsFrom(chain, 'doubtful', start, limit);
}

/** State 0 is the start. */
const START = 0;

export function oddsFrom(track: TrackChain, basis: Odds['basis'], start: StartBerth, limit: Seconds): Odds {
  const chain = chainOf(track);
  const solved = absorptionOf(chain);
  const chances = solved.absorbed[START]!;
  const { share, meanTime } = arrivalsWithin(track, limit);
  const endings = track.endings.map(({ ending, at: { x, y } }, i) => ({
    ending,
    at: { x, y },
    probability: chances[i]!,
  }));
  return {
    start,
    basis,
    endings: endings
      .filter(({ probability }) => probability > 0)
      .sort((a, b) => b.probability - a.probability),
    finish: finishChance(track, chances),
    endless: solved.endless[START]!,
    inTime: { limit, finish: share, ...(meanTime === undefined ? {} : { meanTime }) },
    open: openJunctions(track, chain, solved),
  };
}

const finishChance = (track: TrackChain, absorbed: readonly number[]): number =>
  absorbed.reduce((sum, chance, i) => (track.endings[i]!.arrived ? sum + chance : sum), 0);

/** mm within which forks stand on one junction. */
const ONE_JUNCTION = 8;

const isSame = (a: Fork, b: Fork): boolean =>
  distance(a.at, b.at) <= ONE_JUNCTION &&
  a.heading.x * b.heading.x + a.heading.y * b.heading.y > 0.9 &&
  a.branches.length === b.branches.length &&
  a.branches.every(({ way }, i) => way === b.branches[i]!.way);

/** Forks that differ only in what the robot has in mind are one junction to people. */
function openJunctions(track: TrackChain, chain: Chain, solved: Absorption): OpenJunction[] {
  const groups: number[][] = [];
  track.forks.forEach((fork, i) => {
    const group = groups.find(([first]) => isSame(track.forks[first!]!, fork));
    if (group) group.push(i);
    else groups.push([i]);
  });
  return groups.map((group) => openJunction(track, chain, solved, group));
}

function openJunction(
  track: TrackChain,
  chain: Chain,
  solved: Absorption,
  group: readonly number[],
): OpenJunction {
  const { at, heading, branches } = track.forks[group[0]!]!;
  const met = hittingChances(chain, new Set(group.map((i) => i + 1)))[START]!;
  const weights = weightsOf(group, solved);
  return {
    at: { x: at.x, y: at.y },
    heading: { x: heading.x, y: heading.y },
    met,
    arms: branches.map(({ way }, arm) => ({
      way,
      chance: 1 / branches.length,
      finish: group.reduce(
        (sum, i, k) => sum + weights[k]! * finishAfter(track, solved, track.forks[i]!.branches[arm]!.leads),
        0,
      ),
    })),
  };
}

/** How often each of the forks is met, beside the others; equally where they are met only by going round. */
function weightsOf(group: readonly number[], solved: Absorption): number[] {
  const visits = group.map((i) => solved.visits[START]![i + 1]!);
  const sum = visits.reduce((a, b) => a + b, 0);
  return visits.map((n) => (sum > 0 ? n / sum : 1 / visits.length));
}

function finishAfter(track: TrackChain, solved: Absorption, lead: Lead): number {
  if (lead.to === 'endless') return 0;
  if (lead.to === 'ending') return track.endings[lead.index]!.arrived ? 1 : 0;
  return finishChance(track, solved.absorbed[lead.index + 1]!);
}
