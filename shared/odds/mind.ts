import { type Action, type Kit, PACES, type Way } from '../documents/kit.ts';
import type { RunEventOf } from '../documents/trace.ts';
import type { Seconds } from '../geometry/units.ts';
import { RUN_RULES } from '../run/model.ts';

/** An action that waits for its time. */
export interface Waiting {
  readonly due: Seconds;
  readonly action: Action;
  /** Not of a mark: the end of a pace that was for a time only. */
  readonly paceEnds?: boolean;
  /** Which event of a run asked for it, where events are kept. */
  readonly read?: number;
}

/** What a robot on the graph has in mind, whoever works out where it is. */
export interface Mind {
  t: Seconds;
  /** Index into PACES. */
  pace: number;
  /** The way that a mark chose for the next junction. */
  pending: Way | undefined;
  /** In the order in which they are due. */
  queue: Waiting[];
  heldUntil: Seconds;
  arrivedAt: Seconds | undefined;
}

export const newMind = (kit: Kit, t: Seconds): Mind => ({
  t,
  pace: PACES.indexOf(kit.robot.startPace),
  pending: undefined,
  queue: [],
  heldUntil: 0,
  arrivedAt: undefined,
});

const FASTEST = PACES.length - 1;

/** Takes an action that a mark asks for into the queue. */
export function enqueue(mind: Mind, waiting: Waiting): void {
  mind.queue.push(waiting);
  mind.queue.sort((a, b) => a.due - b.due);
}

/** Carries out what changes the robot's mind only: paces, choices and waiting. */
export function changeMind(mind: Mind, action: Action): void {
  switch (action.kind) {
    case 'pace-by':
      changePace(mind, Math.min(Math.max(mind.pace + action.steps, 0), FASTEST));
      return;
    case 'pace-to':
      changePace(mind, PACES.indexOf(action.pace));
      return;
    case 'pace-for': {
      const back = mind.queue.find((waiting) => waiting.paceEnds)?.action;
      const before: Action = back ?? { kind: 'pace-to', pace: PACES[mind.pace]! };
      changePace(mind, PACES.indexOf(action.pace));
      enqueue(mind, { due: mind.t + action.time, action: before, paceEnds: true });
      return;
    }
    case 'choose':
      mind.pending = action.way;
      return;
    case 'wait':
      mind.heldUntil = mind.t + action.time;
      return;
    default:
      return;
  }
}

function changePace(mind: Mind, pace: number): void {
  mind.queue = mind.queue.filter((waiting) => !waiting.paceEnds);
  mind.pace = pace;
}

const always = (): boolean => true;

/** When something happens next: an action that may begin, the end of waiting, or the end of a run that has arrived. */
export function nextMoment(mind: Mind, mayBegin: (action: Action) => boolean = always): Seconds {
  let due = mind.queue.find(({ action }) => mayBegin(action))?.due ?? Number.POSITIVE_INFINITY;
  if (mind.heldUntil > mind.t) due = Math.min(due, mind.heldUntil);
  if (mind.arrivedAt !== undefined) due = Math.min(due, mind.arrivedAt + RUN_RULES.afterFinish);
  return due;
}

/** Whether a run that has arrived is over. */
export const isOver = ({ t, arrivedAt }: Mind): boolean =>
  arrivedAt !== undefined && t >= arrivedAt + RUN_RULES.afterFinish;

/** Takes the first action whose time has come out of the queue. */
export function takeDue(mind: Mind, mayBegin: (action: Action) => boolean = always): Waiting | undefined {
  const at = mind.queue.findIndex(({ due, action }) => due <= mind.t && mayBegin(action));
  return at < 0 ? undefined : mind.queue.splice(at, 1)[0];
}

export interface WayTaken {
  readonly way: Way;
  readonly by: Exclude<RunEventOf<'junction'>['by'], 'chance'>;
}

/**
 * What a robot does at a junction with these ways ahead; undefined where nothing decides. A waiting choice
 * is used up, also one for an arm that is not there.
 */
export function wayTaken(mind: Mind, { robot }: Kit, ways: readonly Way[]): WayTaken | undefined {
  const chosen = mind.pending;
  mind.pending = undefined;
  if (chosen && ways.includes(chosen)) return { way: chosen, by: 'mark' };
  if (robot.unmarkedJunction === 'straight' && ways.includes('straight')) {
    return { way: 'straight', by: 'straight' };
  }
  return ways.length === 1 ? { way: ways[0]!, by: 'only' } : undefined;
}
