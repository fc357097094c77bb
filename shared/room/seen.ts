import type { RoomEvent, RoomFact, Seat } from './events.ts';
import type { DocumentId, Entry, RoomState, TeamId } from './state.ts';

/**
 * What a seat may know. Desk and server know everything. A team knows its own designs and verdicts,
 * and a design of others from the moment it is staged. A board knows a design once it is staged, and
 * all verdicts as numbers, for standings that the desk may ask it to show.
 */

const knowsAll = (seat: Seat) => seat.role === 'desk' || seat.role === 'server';
const owns = (seat: Seat, team: TeamId | undefined) => seat.role === 'team' && seat.team === team;
const knowsVerdict = (seat: Seat, team: TeamId | undefined) =>
  knowsAll(seat) || seat.role === 'board' || owns(seat, team);

function seenFact(seat: Seat, fact: RoomFact, state: RoomState): RoomFact | null {
  if (fact.kind === 'handed-in') {
    return knowsAll(seat) || owns(seat, fact.team) ? fact : { ...fact, design: null };
  }
  if (fact.kind === 'judged') {
    const team = state.entries.find((e) => e.id === fact.entry)?.team;
    return knowsVerdict(seat, team) ? fact : null;
  }
  return fact;
}

/** The event as `seat` receives it. `state` is any state of the room at or after the event. */
export function seen(seat: Seat, event: RoomEvent, state: RoomState): RoomEvent {
  if (event.fact === null) return event;
  return { ...event, fact: seenFact(seat, event.fact, state) };
}

const seenEntry = (seat: Seat, entry: Entry): Entry => ({
  ...entry,
  design: knowsAll(seat) || owns(seat, entry.team) || entry.shown ? entry.design : null,
  verdict: knowsVerdict(seat, entry.team) ? entry.verdict : null,
});

/** The whole state as `seat` may know it: the same as the fold of all events that it has seen. */
export function view(state: RoomState, seat: Seat): RoomState {
  return knowsAll(seat) ? state : { ...state, entries: state.entries.map((e) => seenEntry(seat, e)) };
}

/**
 * Whether `seat` may read a document of the room. A verdict tells of the drawing (places, mended
 * copies), so a board reads it only of an entry that has been staged.
 */
export function mayRead(state: RoomState, seat: Seat, id: DocumentId): boolean {
  const own = view(state, seat);
  if (own.rounds.some((round) => round.challenge === id)) return true;
  return own.entries.some(
    (e) => e.design === id || (e.verdict?.document === id && (seat.role !== 'board' || e.shown)),
  );
}
