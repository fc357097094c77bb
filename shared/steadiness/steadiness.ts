import { ROBOTS, type Steadiness, type Stray, type Weather } from '../documents/outlook.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Seconds } from '../geometry/units.ts';
import { driveLightly, type LightTrace } from '../run/driving.ts';
import { type Ambient, type DriveOptions, type StartBerth, UNDISTURBED, type World } from '../run/world.ts';
import { type Parting, partingOf } from './compare.ts';
import { wilsonInterval } from './statistics.ts';
import { chancesOf, type Story, storyOf } from './story.ts';

/** What the kit's tolerances are multiplied by. */
export const DISTURBANCE: Readonly<Record<Weather, number>> = { calm: 1, breezy: 1.5, stormy: 3 };

/** The same robots for every entry of a challenge, so that equal designs get equal results. */
export const FIRST_SEED = 1;
/** Driven later, for the picture of where robots leave the line. */
export const LATER_ROBOTS = 180;

export interface SteadinessQuestion {
  readonly world: World;
  readonly starts: readonly StartBerth[];
  readonly limit: Seconds;
  readonly ambient: Ambient;
  readonly weather: Weather;
  /** Undisturbed runs from these berths, as far as they were followed. */
  readonly runs: readonly LightTrace[];
}

/**
 * Drives disturbed robots with the seeds `from`, `from` + 1, … and compares each with the undisturbed run
 * that it follows; a robot makes it when it does so from every berth. Yields after each robot, so that
 * whoever waits may stop: nothing is lost by not asking on.
 */
export function* disturbedRobots(
  question: SteadinessQuestion,
  from = FIRST_SEED,
  count = ROBOTS,
): Generator<Stray | undefined, void> {
  const ideals = question.runs.map(storyOf);
  for (let seed = from; seed < from + count; seed++) yield strayOf(question, ideals, seed);
}

/** What all robots say together. */
export function steadinessFrom(robots: readonly (Stray | undefined)[], weather: Weather): Steadiness {
  const strays = robots.filter((stray) => stray !== undefined);
  const of = robots.length;
  const same = of - strays.length;
  return { weather, same, of, interval: wilsonInterval(same, of), strays };
}

/** How the robot of this seed is driven from a berth. */
export function disturbedBy(
  { limit, ambient, weather }: Pick<SteadinessQuestion, 'limit' | 'ambient' | 'weather'>,
  start: StartBerth,
  seed: number,
): DriveOptions {
  const size = DISTURBANCE[weather];
  return { ...UNDISTURBED, start, limit, ambient, seed, disturbance: size, ink: size };
}

/** The first berth from which the robot does not do as the undisturbed one. */
function strayOf(question: SteadinessQuestion, ideals: Story[], seed: number): Stray | undefined {
  for (const start of question.starts) {
    const story = storyOf(driveLightly(question.world, disturbedBy(question, start, seed)));
    const parting = partingFrom(question, ideals, story);
    if (parting) {
      const { cause, at, mark } = parting;
      return { seed, start, cause, at: { x: at.x, y: at.y }, ...(mark === undefined ? {} : { mark }) };
    }
  }
  return undefined;
}

/** mm within which two decisions are at one junction. */
const SAME_JUNCTION = 20;

interface Likeness {
  /** Decisions of the undisturbed run that the other one takes too. */
  readonly common: number;
  /** Whether it then decides otherwise. */
  readonly parts: boolean;
}

/** A disturbed robot may see junctions where there are none: they are passed over. */
function likeness(ideal: Story, story: Story): Likeness {
  const theirs = chancesOf(story);
  let next = 0;
  let common = 0;
  for (const decision of chancesOf(ideal)) {
    const found = theirs.findIndex((other, i) => i >= next && distance(other, decision) <= SAME_JUNCTION);
    if (found < 0) break;
    if (theirs[found]!.took !== decision.took) return { common, parts: true };
    next = found + 1;
    common++;
  }
  return { common, parts: false };
}

/**
 * Where a robot parts from the undisturbed run that decides as it does, which is driven now if it was not
 * followed before. A robot that overlooked a junction may be like several of them: one of them is enough.
 */
function partingFrom(question: SteadinessQuestion, ideals: Story[], story: Story): Parting | undefined {
  const own = ideals.filter((ideal) => ideal.start === story.start);
  let alike = own.filter((ideal) => !likeness(ideal, story).parts);
  if (alike.length === 0) {
    const driven = drivenLike(question, story);
    ideals.push(driven);
    own.push(driven);
    alike = likeness(driven, story).parts ? own : [driven];
  }
  const ranked = alike.sort((a, b) => likeness(b, story).common - likeness(a, story).common);
  if (ranked.some((ideal) => partingOf(ideal, story) === undefined)) return undefined;
  return partingOf(ranked[0]!, story);
}

function drivenLike({ world, limit, ambient }: SteadinessQuestion, story: Story): Story {
  const choices = chancesOf(story).map(({ arms, took }) => arms.indexOf(took));
  return storyOf(driveLightly(world, { ...UNDISTURBED, start: story.start, limit, ambient, choices }));
}
