import type { RoomEvent, RoomFact } from './events.ts';
import type { CheckAnswer, RoomCheck, RoomState } from './state.ts';

/** How closing checks follow from their facts. */

type Kind = 'check-started' | 'check-answered' | 'check-ended' | 'check-resumed' | 'check-shown';
type FactOf<K extends Kind> = Extract<RoomFact, { kind: K }>;

/** The answers with one more, which takes the place of an earlier one. */
export const withAnswer = (answers: readonly CheckAnswer[], answer: CheckAnswer): CheckAnswer[] => [
  ...answers.filter(({ team, question }) => team !== answer.team || question !== answer.question),
  answer,
];

const withLastCheck = (state: RoomState, change: (check: RoomCheck) => Partial<RoomCheck>): RoomState => ({
  ...state,
  checks: state.checks.map((one, i, { length }) => (i === length - 1 ? { ...one, ...change(one) } : one)),
});

export const CHECK_FOLDS: {
  readonly [K in Kind]: (state: RoomState, fact: FactOf<K>, event: RoomEvent) => RoomState;
} = {
  'check-started': (state, { check, key }) => ({
    ...state,
    checks: [...state.checks, { document: check, key, answers: [], ended: false, shown: null }],
  }),
  'check-answered': (state, { kind, ...answer }) =>
    withLastCheck(state, ({ answers }) => ({ answers: withAnswer(answers, answer) })),
  'check-ended': (state, { key }) => withLastCheck(state, () => ({ key, ended: true })),
  'check-resumed': (state, { key }) => withLastCheck(state, () => ({ key, ended: false, shown: null })),
  'check-shown': (state, { result }) => withLastCheck(state, () => ({ shown: result })),
};
