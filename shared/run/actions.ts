import { type Action, PACES, type Pace } from '../documents/kit.ts';
import type { Machine } from './machine.ts';
import { MODEL, STEP } from './model.ts';
import { MODE, NEVER, type QueuedAction, type RobotState } from './robot.ts';

/** Not a reading: the end of a pace that was for a time only. */
const PACE_ENDS = -1;

/** Takes a word that was just understood: its action waits for its own time, behind no other. */
export function takeWord(r: RobotState, m: Machine, word: string): void {
  const action = m.actionOf(word);
  const reading = r.readings;
  r.readings++;
  if (!action) {
    r.notes.push({ kind: 'read', word, already: false });
    return;
  }
  r.notes.push({ kind: 'read', word, action, already: changesNothing(r, action) });
  enqueue(r, { dueStep: r.stepCount + m.actsAfterSteps, action, reading });
}

function enqueue(r: RobotState, queued: QueuedAction): void {
  r.queue.push(queued);
  if (queued.dueStep < r.dueStep) r.dueStep = queued.dueStep;
}

/** Whether a pace action will find its pace already there, when all that waits before it has acted. */
function changesNothing(r: RobotState, action: Action): boolean {
  if (action.kind !== 'pace-by' && action.kind !== 'pace-to') return false;
  const waiting = [...r.queue].sort((a, b) => a.dueStep - b.dueStep);
  const before = waiting.reduce((pace, queued) => paceAfter(pace, queued.action), r.pace);
  return paceAfter(before, action) === before;
}

function paceAfter(pace: number, action: Action): number {
  if (action.kind === 'pace-by') return Math.min(Math.max(pace + action.steps, 0), PACES.length - 1);
  if (action.kind === 'pace-to' || action.kind === 'pace-for') return PACES.indexOf(action.pace);
  return pace;
}

/** Begins every action whose time has come. A half turn waits until the robot follows a line. */
export function actDue(r: RobotState): void {
  const due = r.queue.filter((queued) => queued.dueStep <= r.stepCount && ready(r, queued.action));
  for (const queued of due) {
    const at = r.queue.indexOf(queued);
    // A new pace, begun in this very step, may have ended a pace for a time.
    if (at < 0) continue;
    r.queue.splice(at, 1);
    begin(r, queued);
  }
  r.dueStep = r.queue.reduce((least, queued) => Math.min(least, queued.dueStep), NEVER);
}

const ready = (r: RobotState, action: Action): boolean =>
  action.kind !== 'turn-back' || r.mode === MODE.follow || r.mode === MODE.gap;

function begin(r: RobotState, queued: QueuedAction): void {
  const { action, reading } = queued;
  if (reading !== PACE_ENDS) r.notes.push({ kind: 'act', action, reading });
  switch (action.kind) {
    case 'pace-by':
    case 'pace-to':
      changePace(r, paceAfter(r.pace, action));
      return;
    case 'pace-for':
      changePaceFor(r, action.pace, Math.round(action.time / STEP));
      return;
    case 'choose':
      r.pending = action.way;
      return;
    case 'turn-back':
      turnBack(r);
      return;
    case 'wait':
    case 'signal':
      holdOrCall(r, action.kind, Math.round(action.time / STEP));
      return;
    case 'park':
      r.mode = MODE.stopped;
      r.notes.push({ kind: 'parked' });
      return;
    case 'nothing':
      return;
  }
}

function changePace(r: RobotState, pace: number): void {
  const ends = r.queue.findIndex((queued) => queued.reading === PACE_ENDS);
  if (ends >= 0) r.queue.splice(ends, 1);
  if (pace === r.pace) return;
  r.notes.push({ kind: 'pace', from: PACES[r.pace]! });
  r.pace = pace;
}

function changePaceFor(r: RobotState, pace: Pace, steps: number): void {
  const back = r.queue.find((queued) => queued.reading === PACE_ENDS)?.action;
  const before: Action = back ?? { kind: 'pace-to', pace: PACES[r.pace]! };
  changePace(r, PACES.indexOf(pace));
  enqueue(r, { dueStep: r.stepCount + steps, action: before, reading: PACE_ENDS });
}

function holdOrCall(r: RobotState, kind: 'wait' | 'signal', steps: number): void {
  const untilStep = r.stepCount + steps;
  if (kind === 'wait') r.heldUntilStep = untilStep;
  r.notes.push({ kind, untilStep });
}

function turnBack(r: RobotState): void {
  r.notes.push({ kind: 'turn-back' });
  startTurn(r, sideOfMiddle(r), MODEL.leastHalfTurn);
}

/** Starts a turn on the spot that goes on until the middle sensor finds a line, past `leastTurn`. */
export function startTurn(r: RobotState, side: number, leastTurn: number): void {
  r.mode = MODE.turn;
  r.side = side;
  r.turned = 0;
  r.leastTurn = leastTurn;
  r.atCorner = false;
  r.sightings = 0;
  dropWord(r);
}

/** Forgets what the band reader is at. */
export function dropWord(r: RobotState): void {
  r.runClass = -1;
  r.inWord = false;
}

/** 1 where the sheet's middle lies to the left of the robot's heading, else −1. */
export function sideOfMiddle(r: RobotState): number {
  const leftward = (r.sheetMiddle.x - r.x) * r.sin - (r.sheetMiddle.y - r.y) * r.cos;
  return leftward >= 0 ? 1 : -1;
}
