import { isOfKit, type Phase, type RoomState } from '../../shared/room/state.ts';
import type { Step } from '../../shared/wording/en/desk.ts';

/** The lesson as the desk walks it: the room's phases, with preparing before them. */
export const STEPS: readonly Step[] = ['prepare', 'gather', 'brief', 'build', 'show', 'drive', 'close'];

/** How a step stands: behind the class, where the class is, or before it. */
export function standOf(step: Step, phase: Phase): 'done' | 'here' | 'ahead' {
  const difference = STEPS.indexOf(step) - STEPS.indexOf(phase);
  return difference < 0 ? 'done' : difference === 0 ? 'here' : 'ahead';
}

/** Why a step can't be looked at yet, or null when it can. */
export function reachable(step: Step, room: RoomState): boolean {
  if (step === 'build') return room.building !== null;
  if (step === 'show' || step === 'drive') return room.rounds.length > 0 && room.building !== null;
  return true;
}

/** The most useful thing that the desk can do next, given where the class is and what the desk looks at. */
export type NextStep =
  | { readonly kind: 'look-at'; readonly step: Step }
  | { readonly kind: 'take-challenge' }
  | { readonly kind: 'take-queued'; readonly key: string }
  | { readonly kind: 'start-building' }
  | { readonly kind: 'end-building' }
  | { readonly kind: 'go-to-show' }
  | { readonly kind: 'show-next'; readonly entry: string }
  | { readonly kind: 'go-to-drive' }
  | { readonly kind: 'next-turn'; readonly turn: number }
  | { readonly kind: 'go-to-close' }
  | { readonly kind: 'another-challenge' };

export interface DeskView {
  readonly step: Step;
  /** Key of the challenge that the desk has marked in the list, if it may be taken. */
  readonly marked: string | null;
  /** Key of the first challenge of the queue that can be taken; null where none waits. */
  readonly queued: string | null;
  /** The best entry of the next team that has not been on the board, in order of berths. */
  readonly unshown: string | null;
  /** How many turns it takes until every team has driven a robot. */
  readonly turns: number;
}

const isBuilding = (room: RoomState) => room.building !== null && !room.building.ended;

/** One sensible action for every place of the lesson; the blue button and the key N carry it out. */
export function nextStep(room: RoomState, view: DeskView): NextStep {
  switch (view.step) {
    case 'prepare':
      return { kind: 'look-at', step: room.phase };
    case 'gather':
      return nextQueued(view) ?? { kind: 'look-at', step: 'brief' };
    case 'brief':
      return nextOfBrief(room, view);
    case 'build':
      return isBuilding(room) ? { kind: 'end-building' } : { kind: 'go-to-show' };
    case 'show':
      if (room.phase !== 'show') return { kind: 'go-to-show' };
      if (view.unshown !== null) return { kind: 'show-next', entry: view.unshown };
      return nextQueued(view) ?? { kind: anyEntry(room) ? 'go-to-drive' : 'go-to-close' };
    case 'drive':
      if (room.phase !== 'drive') return { kind: 'go-to-drive' };
      return room.driving.turn + 1 < view.turns
        ? { kind: 'next-turn', turn: room.driving.turn + 1 }
        : (nextQueued(view) ?? { kind: 'go-to-close' });
    case 'close':
      if (room.phase === 'close') return nextQueued(view) ?? { kind: 'another-challenge' };
      return isBuilding(room) ? { kind: 'look-at', step: 'build' } : { kind: 'go-to-close' };
  }
}

const nextQueued = ({ queued }: DeskView): NextStep | undefined =>
  queued === null ? undefined : { kind: 'take-queued', key: queued };

/**
 * The challenge that is marked before the desk has marked one: what was just chosen, else the first of the
 * queue that can be taken (`queued`), else what was played here or what comes after the last one of the lesson before.
 * `keys` is the course.
 */
export function suggestedKey(room: RoomState, keys: readonly string[], queued: string | null): string | null {
  const { rounds, building, plan } = room;
  const chosen = rounds.at(-1);
  const current = chosen?.key;
  // One that was chosen with another kit and that nobody has built is to be chosen again.
  if (chosen && building === null && isOfKit(room, chosen)) return chosen.key;
  const last = plan.from?.last ?? null;
  const after = last === null ? undefined : keys[keys.indexOf(last) + 1];
  return queued ?? current ?? after ?? keys[0] ?? null;
}

function nextOfBrief(room: RoomState, view: DeskView): NextStep {
  if (isBuilding(room)) return { kind: 'look-at', step: 'build' };
  const last = room.rounds.at(-1);
  const fresh = last !== undefined && room.building === null && isOfKit(room, last);
  if (view.marked !== null && !(fresh && view.marked === last.key)) return { kind: 'take-challenge' };
  return fresh ? { kind: 'start-building' } : { kind: 'take-challenge' };
}

/** Something has been handed in that a robot could drive on. */
const anyEntry = ({ entries, rounds }: RoomState): boolean =>
  entries.some(({ round }) => round === rounds.length - 1);
