import type { RoomState } from '../../shared/room/state.ts';
import { isCheckOnBoard } from '../parts/figures.ts';

/** What the board shows: one scene at a time, chosen by the room alone. */
export type Scene =
  | { readonly kind: 'no-room' }
  | { readonly kind: 'paused' }
  | { readonly kind: 'look-here' }
  | { readonly kind: 'wall' }
  | { readonly kind: 'brief' }
  | { readonly kind: 'building' }
  | { readonly kind: 'stage' }
  | { readonly kind: 'gallery' }
  | { readonly kind: 'fleet' }
  | { readonly kind: 'forecast' }
  | { readonly kind: 'standings' }
  | { readonly kind: 'before-stage' }
  | { readonly kind: 'check' }
  | { readonly kind: 'driving' }
  | { readonly kind: 'together' };

/**
 * What the desk has chosen, or else what belongs to the step of the lesson. A pause takes the whole board. "Look
 * here" takes it while there is nothing else to look at; a brief and drawings stay, with a sign.
 */
export function sceneOf(room: RoomState | null): Scene {
  if (room === null) return { kind: 'no-room' };
  if (room.paused !== null) return { kind: 'paused' };
  const shown = chosenScene(room) ?? phaseScene(room);
  return room.lookHere && !STAYS.includes(shown.kind) ? { kind: 'look-here' } : shown;
}

const STAYS: readonly Scene['kind'][] = ['brief', 'stage', 'gallery', 'fleet', 'forecast'];

function chosenScene({ board, stage }: RoomState): Scene | null {
  switch (board.scene) {
    case 'stage':
      return { kind: stage.length > 0 ? 'stage' : 'before-stage' };
    case 'closing':
      return { kind: 'together' };
    case null:
      return null;
    default:
      return { kind: board.scene };
  }
}

function phaseScene(room: RoomState): Scene {
  switch (room.phase) {
    case 'gather':
      return { kind: 'wall' };
    case 'brief':
      return { kind: 'brief' };
    case 'build':
      return { kind: 'building' };
    case 'show':
      if (room.stage.length > 0) return { kind: 'stage' };
      return { kind: room.standingsShown ? 'standings' : 'before-stage' };
    case 'drive':
      return { kind: 'driving' };
    case 'close':
      if (isCheckOnBoard(room)) return { kind: 'check' };
      return { kind: room.standingsShown ? 'standings' : 'together' };
  }
}
