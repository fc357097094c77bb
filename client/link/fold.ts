import { apply, openedState } from '../../shared/room/apply.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import { type Hello, type LatestDown, PROTOCOL_VERSION, type Welcome } from '../../shared/wire/protocol.ts';
import type { LinkState } from './state.ts';

/** What a page says of the room that it has. */
export const helloOf = ({ room, lastAt }: LinkState): Hello => ({
  version: PROTOCOL_VERSION,
  room: room?.id ?? null,
  seq: room?.seq ?? 0,
  ...(room && lastAt !== null && { at: lastAt }),
});

export type Folded = { readonly state: LinkState } | { readonly gap: true };

/**
 * Applies events in order. Those already applied are skipped; a number that is missing is a gap, and
 * nothing is applied: the page asks for the difference instead of guessing.
 */
export function foldEvents(state: LinkState, events: readonly RoomEvent[]): Folded {
  let { room, lastAt } = state;
  for (const event of events) {
    const have = room?.seq ?? 0;
    if (event.seq <= have) continue;
    if (event.seq !== have + 1) return { gap: true };
    if (room) room = apply(room, event);
    else if (event.fact?.kind === 'opened') room = openedState(event.fact, event);
    else return { gap: true };
    lastAt = event.at;
  }
  if (room === state.room) return { state };
  return { state: { ...state, room, lastAt, ...forgotten(state, room) } };
}

/** Lossy values that events have made old: drafts of an earlier round, the clock of another stage. */
function forgotten(state: LinkState, room: LinkState['room']): Partial<LinkState> {
  const before = state.room?.rounds.length ?? 0;
  const newRound = before > 0 && (room?.rounds.length ?? 0) > before;
  const newStage = state.room !== null && room?.stage.join() !== state.room.stage.join();
  return { ...(newRound ? { drafts: {}, doings: {} } : {}), ...(newStage ? { stageClock: null } : {}) };
}

/** Takes a welcome: a snapshot replaces the room, events bring it up to date. */
export function foldWelcome(
  state: LinkState,
  welcome: Extract<Welcome, { ok: true }>,
  clockOffset: number,
): Folded {
  const otherRoom = state.room !== null && state.room.id !== welcome.room;
  const missing = Math.max(0, (state.room?.seq ?? 0) - (welcome.snapshot?.seq ?? Number.POSITIVE_INFINITY));
  const base: LinkState = {
    ...state,
    lost: otherRoom ? 0 : state.lost + missing,
    status: { kind: 'live' },
    room: welcome.snapshot ?? (otherRoom ? null : state.room),
    lastAt: welcome.at,
    you: welcome.you,
    clockOffset,
    ...(otherRoom ? { drafts: {}, doings: {}, stageClock: null } : {}),
  };
  const folded = foldEvents(base, welcome.events);
  if ('gap' in folded) return folded;
  return { state: welcome.latest.reduce(foldLatest, folded.state) };
}

/** Takes one lossy value. A draft of another round than the current one is old news. */
export function foldLatest(state: LinkState, value: LatestDown): LinkState {
  switch (value.kind) {
    case 'draft': {
      const round = (state.room?.rounds.length ?? 0) - 1;
      if (value.round !== round) return state;
      const { kind: _, team, ...draft } = value;
      return { ...state, drafts: { ...state.drafts, [team]: draft } };
    }
    case 'doing':
      return { ...state, doings: { ...state.doings, [value.team]: value.doing } };
    case 'stage-clock':
      return { ...state, stageClock: value.clock };
  }
}
