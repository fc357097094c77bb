import type { NoteWords } from './coaching.ts';
import { ownTeam, strangerTo } from './decide-teams.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import type { RoomFact, Seat } from './events.ts';
import type { EntryId, TeamId } from './ids.ts';
import type { Entry, RoomState } from './state.ts';

/** What the desk says to single teams, the gentler form, and entries that are given back. */

/** A decision about a team that plays. */
function about(state: RoomState, team: TeamId, decide: () => Decision): Decision {
  return state.teams.some(({ id }) => id === team) ? decide() : strangerTo(state, team);
}

/** A note is known by the number that its event will have. */
const noteSent = (state: RoomState, team: TeamId, words: NoteWords): RoomFact => ({
  kind: 'note-sent',
  note: state.seq + 1,
  team,
  words,
});

function putAway(state: RoomState, { note }: CommandOf<'put-note-away'>, seat: Seat): Decision {
  return ownTeam(state, seat, ({ id }) => {
    const there = state.coaching.notes.find(({ number, team }) => number === note && team === id);
    return !there || there.away ? ALREADY : done({ kind: 'note-put-away', note, team: id });
  });
}

function takeBack(state: RoomState, { note }: CommandOf<'take-note-back'>): Decision {
  const there = state.coaching.notes.find(({ number }) => number === note);
  return there ? done({ kind: 'note-taken-back', note, team: there.team }) : ALREADY;
}

function setGentler(state: RoomState, { team, on }: CommandOf<'set-gentler'>): Decision {
  const set = done({ kind: 'gentler-set', team, on });
  return about(state, team, () => (state.coaching.gentler.includes(team) === on ? ALREADY : set));
}

function aboutEntry(state: RoomState, id: EntryId, decide: (entry: Entry) => Decision): Decision {
  const entry = state.entries.find((one) => one.id === id);
  if (!entry) return refuse({ code: 'unknown-entry', entry: id });
  return about(state, entry.team, () => decide(entry));
}

/** The team learns why by a note, which it can put away like any other. */
function returnEntry(state: RoomState, { entry: id, reason }: CommandOf<'return-entry'>): Decision {
  return aboutEntry(state, id, ({ team, returned }) => {
    if (returned) return ALREADY;
    const words = { kind: 'returned', entry: id, reason } as const;
    return done(
      { kind: 'note-sent', note: state.seq + 1, team, words },
      { kind: 'entry-returned', entry: id },
    );
  });
}

/** Takes back, with the entry's return, the notes that said why. */
function acceptEntry(state: RoomState, { entry: id }: CommandOf<'accept-entry'>): Decision {
  return aboutEntry(state, id, ({ team, returned }) => {
    if (!returned) return ALREADY;
    const said = state.coaching.notes.filter(({ words }) => words.kind === 'returned' && words.entry === id);
    const back = said.map(({ number }): RoomFact => ({ kind: 'note-taken-back', note: number, team }));
    return done({ kind: 'entry-accepted', entry: id }, ...back);
  });
}

type CoachingKind =
  | 'send-note'
  | 'put-note-away'
  | 'take-note-back'
  | 'set-gentler'
  | 'return-entry'
  | 'accept-entry';

export const COACHING_RULES: { readonly [K in CoachingKind]: Rule<K> } = {
  'send-note': {
    by: 'desk',
    decide: (state, { team, words }) => about(state, team, () => done(noteSent(state, team, words))),
  },
  'put-note-away': { by: 'team', decide: putAway },
  'take-note-back': { by: 'desk', decide: takeBack },
  'set-gentler': { by: 'desk', decide: setGentler },
  'return-entry': { by: 'desk', decide: returnEntry },
  'accept-entry': { by: 'desk', decide: acceptEntry },
};
