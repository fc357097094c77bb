import { type CalibrationFact, type CalibrationNote, withoutNewest } from './calibration.ts';
import type { RoomEvent } from './events.ts';
import type { RoomState } from './state.ts';

/** How the log of calibrations follows from its facts; the times are those of the server. */

type FactOf<K extends CalibrationFact['kind']> = Extract<CalibrationFact, { kind: K }>;
type Fold<K extends CalibrationFact['kind']> = (s: RoomState, fact: FactOf<K>, e: RoomEvent) => RoomState;

const withNote = (state: RoomState, note: CalibrationNote): RoomState => ({
  ...state,
  calibrations: [...state.calibrations, note],
});

const without = (state: RoomState, is: (note: CalibrationNote) => boolean): RoomState => ({
  ...state,
  calibrations: withoutNewest(state.calibrations, is),
});

export const CALIBRATION_FOLDS: { readonly [K in CalibrationFact['kind']]: Fold<K> } = {
  'robot-calibrated': (state, { robot, light }, { at }) =>
    withNote(state, { kind: 'calibrated', robot, light, at }),
  'calibration-taken-back': (state, { robot }) =>
    without(state, (note) => note.kind === 'calibrated' && note.robot === robot),
  'light-changed': (state, _, { at }) => withNote(state, { kind: 'light-changed', at }),
  'light-kept': (state) => without(state, ({ kind }) => kind === 'light-changed'),
};
