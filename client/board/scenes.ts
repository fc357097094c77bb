import type { RoomState } from '../../shared/room/state.ts';

/** What the board shows: one scene at a time, chosen by the room alone. */
export type Scene =
  | { readonly kind: 'no-room' }
  | { readonly kind: 'paused' }
  | { readonly kind: 'look-here' }
  | { readonly kind: 'wall' }
  | { readonly kind: 'brief' }
  | { readonly kind: 'building' }
  | { readonly kind: 'stage' }
  | { readonly kind: 'standings' }
  | { readonly kind: 'before-stage' }
  | { readonly kind: 'together' };

/**
 * A pause takes the whole board. "Look here" takes the whole board while there is nothing else to look at; a brief or a drawing on
 * the stage stays, with a sign.
 */
export function sceneOf(room: RoomState | null): Scene {
  if (room === null) return { kind: 'no-room' };
  if (room.paused !== null) return { kind: 'paused' };
  const shown = phaseScene(room);
  const stays = shown.kind === 'brief' || shown.kind === 'stage';
  return room.lookHere && !stays ? { kind: 'look-here' } : shown;
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
    case 'close':
      return { kind: room.standingsShown ? 'standings' : 'together' };
  }
}
