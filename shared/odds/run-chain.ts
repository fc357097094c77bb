import type { RunEvent, RunEventOf } from '../documents/trace.ts';
import type { Seconds } from '../geometry/units.ts';
import { branched, type Driving, goOn, setOff } from '../run/driving.ts';
import { STEP } from '../run/model.ts';
import { MODE } from '../run/robot.ts';
import { type Ambient, type StartBerth, UNDISTURBED, type World } from '../run/world.ts';
import { areAlike, isRound, newRound } from './run-alike.ts';
import {
  type Branch,
  endingIndex,
  type Fork,
  type Lead,
  type TrackChain,
  type TrackEnding,
} from './track-chain.ts';

/**
 * The same chain as `trackChain`, from runs of the undisturbed robot: every stretch between two junctions
 * that it leaves to chance is driven once. Slow beside the graph, but a corner that loses the robot, a mark
 * that it overlooks and a crossing that it takes for two are in it.
 */
export function runChain(world: World, start: StartBerth, ambient: Ambient): TrackChain | undefined {
  const driving = setOff(world, { ...UNDISTURBED, start, ambient, limit: LONGEST });
  const exploring: Exploring = { seen: [], endings: [], stepsLeft: MOST_STEPS };
  const first = stretch(exploring, driving, 0);
  const forks: Fork[] = [];
  for (let i = 0; i < exploring.seen.length; i++) {
    if (exploring.stepsLeft <= 0 || exploring.seen.length > MOST_FORKS) return undefined;
    forks.push(forkOf(exploring, exploring.seen[i]!));
  }
  return exploring.stepsLeft > 0 ? { first, forks, endings: exploring.endings } : undefined;
}

/** s of one run: far beyond any time limit. */
const LONGEST: Seconds = 3600;
/** Driving more than 15 minutes in all is beyond being worked out. */
const MOST_STEPS = 900 / STEP;
const MOST_FORKS = 120;

interface Exploring {
  readonly seen: Seen[];
  readonly endings: TrackEnding[];
  stepsLeft: number;
}

/** A junction left to chance: the run as it was when the robot saw it, and what it saw. */
interface Seen {
  readonly before: Driving;
  readonly junction: RunEventOf<'junction'>;
}

function forkOf(exploring: Exploring, { before, junction }: Seen): Fork {
  const branches = junction.arms.map((way, i): Branch => {
    const run = branched(before, [i]);
    const known = run.recorder.events.length;
    while (!run.recorder.events.slice(known).some(isChance) && goOn(run)) exploring.stepsLeft--;
    return { way, leads: stretch(exploring, run, junction.t) };
  });
  const { cos, sin } = before.robot;
  return { at: { x: junction.x, y: junction.y }, heading: { x: cos, y: sin }, branches };
}

const isChance = (event: RunEvent): event is RunEventOf<'junction'> =>
  event.kind === 'junction' && event.by === 'chance';

/** Drives on to the next junction that is left to chance, to the end, or until it goes round for ever. */
function stretch(exploring: Exploring, run: Driving, since: Seconds): Lead {
  const { robot, recorder } = run;
  const round = newRound(robot);
  let before: Driving | undefined;
  let known = recorder.events.length;
  while (exploring.stepsLeft-- > 0) {
    const mode = robot.mode;
    if (!goOn(run)) return ended(exploring, run, since);
    if (robot.mode === MODE.creep && mode !== MODE.creep) before = branched(run, []);
    for (; known < recorder.events.length; known++) {
      const event = recorder.events[known]!;
      if (isChance(event) && before) {
        return { to: 'fork', index: indexOf(exploring, { before, junction: event }), time: event.t - since };
      }
    }
    if (isRound(round, robot)) return { to: 'endless' };
  }
  return { to: 'endless' };
}

function ended({ endings }: Exploring, { robot, recorder }: Driving, since: Seconds): Lead {
  const ending = recorder.ending?.kind ?? 'time-up';
  const arrival = recorder.events.find((event) => event.kind === 'finish');
  const { to } = recorder.journey;
  const at = ending === 'finished' && to ? to.at : { x: robot.x, y: robot.y };
  const index = endingIndex(endings, { ending, at, arrived: arrival !== undefined });
  return { to: 'ending', index, time: (arrival?.t ?? robot.stepCount * STEP) - since };
}

/** The index of a situation that was seen before, or a new one. */
function indexOf({ seen }: Exploring, now: Seen): number {
  const known = seen.findIndex((one) => areAlike(one.before, now.before));
  return known < 0 ? seen.push(now) - 1 : known;
}
