import type { Coaching, CoachingFact, Note } from './coaching.ts';
import type { RoomEvent } from './events.ts';
import type { EntryId } from './ids.ts';
import type { RoomState } from './state.ts';

type Kind = CoachingFact['kind'];
type FactOf<K extends Kind> = Extract<CoachingFact, { kind: K }>;

const withCoaching = (state: RoomState, change: Partial<Coaching>): RoomState => ({
  ...state,
  coaching: { ...state.coaching, ...change },
});

const withNotes = (state: RoomState, change: (notes: readonly Note[]) => readonly Note[]): RoomState =>
  withCoaching(state, { notes: change(state.coaching.notes) });

const withReturned = (state: RoomState, id: EntryId, returned: boolean): RoomState => ({
  ...state,
  entries: state.entries.map((entry) => (entry.id === id ? { ...entry, returned } : entry)),
});

/** What follows from the facts about helping single teams. */
export const COACHING_FOLDS: {
  readonly [K in Kind]: (state: RoomState, fact: FactOf<K>, event: RoomEvent) => RoomState;
} = {
  'note-sent': (state, { note, team, words }, { at }) =>
    withNotes(state, (notes) => [
      ...notes,
      { number: note, team, round: state.rounds.length - 1, at, words, away: false },
    ]),
  'note-put-away': (state, { note }) =>
    withNotes(state, (notes) => notes.map((one) => (one.number === note ? { ...one, away: true } : one))),
  'note-taken-back': (state, { note }) =>
    withNotes(state, (notes) => notes.filter(({ number }) => number !== note)),
  'gentler-set': (state, { team, on }) => {
    const others = state.coaching.gentler.filter((id) => id !== team);
    return withCoaching(state, { gentler: on ? [...others, team] : others });
  },
  'entry-returned': (state, { entry }) => withReturned(state, entry, true),
  'entry-accepted': (state, { entry }) => withReturned(state, entry, false),
};
