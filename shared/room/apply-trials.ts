import type { Driving, DrivingFact } from './driving.ts';
import type { RoomEvent } from './events.ts';
import type { RoomState } from './state.ts';

type FactOf<K extends DrivingFact['kind']> = Extract<DrivingFact, { kind: K }>;
type Folds = {
  readonly [K in DrivingFact['kind']]: (state: RoomState, fact: FactOf<K>, event: RoomEvent) => RoomState;
};

/** The part about real robots after one more of its facts. */
export const DRIVING_FOLDS: Folds = {
  'robots-set': (state, { robots }) => withDriving(state, { robots }),
  'turn-called': (state, { turn }) => withDriving(state, { turn, over: turnsBefore(state.driving, turn) }),
  'trial-noted': (state, { kind, ...trial }, { at }) => {
    const trials = [...state.driving.trials, { ...trial, at, withdrawn: false }];
    return withDriving(state, { trials });
  },
  'trial-withdrawn': (state, { trial }) => {
    const trials = state.driving.trials.map((one, i) => (i === trial ? { ...one, withdrawn: true } : one));
    return withDriving(state, { trials });
  },
};

function turnsBefore({ robots, over }: Driving, turn: number): Driving['over'] {
  const known = over.slice(0, turn);
  return [...known, ...Array.from({ length: turn - known.length }, () => robots)];
}

export const withDriving = (state: RoomState, change: Partial<Driving>): RoomState => ({
  ...state,
  driving: { ...state.driving, ...change },
});
