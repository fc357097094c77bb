import { type ConditionsFact, type OwnConditions, ownOf } from './conditions.ts';
import type { TeamId } from './ids.ts';
import type { RoomState } from './state.ts';

type Kind = ConditionsFact['kind'];
type FactOf<K extends Kind> = Extract<ConditionsFact, { kind: K }>;

function withOwn(state: RoomState, team: TeamId, change: Partial<OwnConditions>): RoomState {
  const { conditions } = state;
  const others = conditions.own.filter((one) => one.team !== team);
  const own = [...others, { ...ownOf(conditions, team), ...change }];
  return { ...state, conditions: { ...conditions, own } };
}

/** What follows from the facts about weather and sheets of a round. */
export const CONDITIONS_FOLDS: {
  readonly [K in Kind]: (state: RoomState, fact: FactOf<K>) => RoomState;
} = {
  'weather-set': (state, { team, weather }) =>
    team === null
      ? { ...state, conditions: { ...state.conditions, weather } }
      : withOwn(state, team, { weather }),
  'sheet-set': (state, { team, sheet }) => {
    const own = ownOf(state.conditions, team);
    return withOwn(state, team, { sheet, earlier: [...new Set([...own.earlier, own.sheet])] });
  },
};
