import { lazy } from 'react';
import { untilHere } from './until-here.ts';

const building = () => untilHere(() => import('./build/build-screen.tsx'));
const telling = () => untilHere(() => import('./playing/how-to-play.tsx'));
const closing = () => untilHere(() => import('./closing/closing-screen.tsx'));
const predicting = () => untilHere(() => import('./predict/predict-screen.tsx'));

/** What a team works on is most of the page's code, and comes while the room is still gathering. */
export const BuildScreen = lazy(async () => ({ default: (await building()).BuildScreen }));
export const HowPictures = lazy(async () => ({ default: (await telling()).HowPictures }));
export const PredictScreen = lazy(async () => ({ default: (await predicting()).PredictScreen }));
export const ClosingScreen = lazy(async () => ({ default: (await closing()).ClosingScreen }));

/** Fetches all once the page stands, so that they are there when the server no longer is. */
export function fetchWork(): void {
  void telling();
  void building();
  void predicting();
  void closing();
  void untilHere(() => import('./tracing/tracing-table.tsx'));
}
