import { type ConditionsCommand, ownOf } from './conditions.ts';
import { strangerTo } from './decide-teams.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import type { RoomState } from './state.ts';

/** The weather of a round. What has been handed in keeps its own. */

function setWeather(state: RoomState, { team, weather }: CommandOf<'set-weather'>): Decision {
  const { rounds, teams, conditions } = state;
  if (rounds.length === 0) return refuse({ code: 'no-challenge' });
  if (team !== null && !teams.some(({ id }) => id === team)) return strangerTo(state, team);
  const before = team === null ? conditions.weather : ownOf(conditions, team).weather;
  return before === weather ? ALREADY : done({ kind: 'weather-set', team, weather });
}

export const CONDITIONS_RULES: { readonly [K in ConditionsCommand['kind']]: Rule<K> } = {
  'set-weather': { by: 'desk', decide: setWeather },
};
