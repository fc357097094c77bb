import { type ConditionsCommand, ownOf } from './conditions.ts';
import { strangerTo } from './decide-teams.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import { conditionsFor, variantOn } from './drawn-in.ts';
import type { RoomFact } from './events.ts';
import type { RoomState } from './state.ts';

/** Weather and sheets of a round. What has been handed in keeps its own. */

function setWeather(state: RoomState, { team, weather }: CommandOf<'set-weather'>): Decision {
  const { rounds, teams, conditions } = state;
  if (rounds.length === 0) return refuse({ code: 'no-challenge' });
  if (team !== null && !teams.some(({ id }) => id === team)) return strangerTo(state, team);
  const before = team === null ? conditions.weather : ownOf(conditions, team).weather;
  return before === weather ? ALREADY : done({ kind: 'weather-set', team, weather });
}

/** A team that may be drawing is told by a note, which takes the place of one that said so before. */
function setSheet(state: RoomState, { team: id, sheet }: CommandOf<'set-sheet'>): Decision {
  const { rounds, teams, conditions, coaching } = state;
  if (rounds.length === 0) return refuse({ code: 'no-challenge' });
  const team = teams.find((one) => one.id === id);
  if (!team) return strangerTo(state, id);
  if (ownOf(conditions, id).sheet === sheet) return ALREADY;
  const set: RoomFact = { kind: 'sheet-set', team: id, sheet };
  const variant = variantOn(sheet, rounds.at(-1), team);
  if (state.building === null || conditionsFor(state, team).variant === variant) return done(set);
  const said = coaching.notes.filter((note) => note.team === id && note.words.kind === 'sheet' && !note.away);
  const words = { kind: 'sheet', variant } as const;
  return done(
    { kind: 'note-sent', note: state.seq + 1, team: id, words },
    set,
    ...said.map(({ number }): RoomFact => ({ kind: 'note-taken-back', note: number, team: id })),
  );
}

export const CONDITIONS_RULES: { readonly [K in ConditionsCommand['kind']]: Rule<K> } = {
  'set-weather': { by: 'desk', decide: setWeather },
  'set-sheet': { by: 'desk', decide: setSheet },
};
