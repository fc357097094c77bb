import { lazy } from 'react';

/** Code that could not be had, since the server was away, is asked for again after so long. */
const AGAIN_MS = 2000;

async function untilHere<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch {
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    return untilHere(load);
  }
}

const building = () => untilHere(() => import('./build/build-screen.tsx'));
const predicting = () => untilHere(() => import('./predict/predict-screen.tsx'));

/** What a team works on is most of the page's code, and comes while the room is still gathering. */
export const BuildScreen = lazy(async () => ({ default: (await building()).BuildScreen }));
export const PredictScreen = lazy(async () => ({ default: (await predicting()).PredictScreen }));

/** Fetches both once the page stands, so that they are there when the server no longer is. */
export function fetchWork(): void {
  void building();
  void predicting();
}
