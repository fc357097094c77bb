import type { Millis } from '../geometry/units.ts';
import type { Refusal, RoomCommand } from './commands.ts';
import type { RoomFact, Seat } from './events.ts';
import { EMBLEMS, type RoomState } from './state.ts';

/** At most so many teams in a room, one an emblem, and so many entries on the stage. */
export const ROOM_LIMITS = { teams: EMBLEMS.length, onStage: 4 } as const;

export type Decision =
  | { readonly ok: true; readonly facts: readonly RoomFact[] }
  | { readonly ok: false; readonly refusal: Refusal };

export type CommandOf<K extends RoomCommand['kind']> = Extract<RoomCommand, { kind: K }>;

export interface Rule<K extends RoomCommand['kind']> {
  /** The one seat that may ask for it. */
  readonly by: Seat['role'];
  readonly decide: (state: RoomState, command: CommandOf<K>, seat: Seat, now: Millis) => Decision;
}

export const done = (...facts: RoomFact[]): Decision => ({ ok: true, facts });
export const refuse = (refusal: Refusal): Decision => ({ ok: false, refusal });
export const ALREADY = refuse({ code: 'already-so' });
export const NOT_BUILDING = refuse({ code: 'not-building' });
export const notNow = (state: RoomState) => refuse({ code: 'not-now', phase: state.phase });
