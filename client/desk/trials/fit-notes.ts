import * as z from 'zod/mini';
import { create } from 'zustand';
import { PACES } from '../../../shared/documents/kit.ts';
import { TIMED_CIRCLES, type TimedRun } from '../../../shared/prep/fit.ts';
import { CORNERS_TRIED, type Made } from '../../../shared/prep/fit-limits.ts';
import { keepText, keptText } from '../../parts/kept-text.ts';

/** What was typed in from the robots; kept in this browser until it is cleared. */

export const FIT_LIMITS = { runs: 500, robots: 40, robotNumber: 999, laps: 100, seconds: 3600 } as const;

const Whole = (most: number) => z.int().check(z.gte(0), z.lte(most));
const Row = z.array(z.nullable(Whole(FIT_LIMITS.robots))).check(z.maxLength(CORNERS_TRIED.length));
const Notes = z.object({
  runs: z
    .array(
      z.object({
        robot: Whole(FIT_LIMITS.robotNumber),
        pace: z.enum(PACES),
        laps: Whole(FIT_LIMITS.laps),
        radius: z.number(),
        time: z.number().check(z.gt(0), z.lte(FIT_LIMITS.seconds)),
      }),
    )
    .check(z.maxLength(FIT_LIMITS.runs)),
  /** How many robots drove over the strip of limits, and how many made each step. */
  tried: Whole(FIT_LIMITS.robots),
  corners: Row,
  bands: Row,
});

export interface FitNotes {
  readonly runs: readonly TimedRun[];
  readonly tried: number;
  readonly corners: readonly Made[];
  readonly bands: readonly Made[];
}

export const NO_NOTES: FitNotes = { runs: [], tried: 1, corners: [], bands: [] };

/** Whether nothing has been typed in. */
export const isNothing = ({ runs, tried, corners, bands }: FitNotes): boolean =>
  runs.length === 0 && tried === NO_NOTES.tried && [...corners, ...bands].every((made) => made === null);

/** A run of the form as it stands at first. */
export const FIRST_RUN: TimedRun = { robot: 1, pace: 'steady', laps: 0, radius: TIMED_CIRCLES[0], time: 0 };

const KEPT = 'harbour-lines.desk.fit';

function keptNotes(): FitNotes {
  try {
    const read = Notes.safeParse(JSON.parse(keptText(KEPT) ?? ''));
    return read.success ? read.data : NO_NOTES;
  } catch {
    return NO_NOTES;
  }
}

/** Beside the leaf, so that what was removed can be taken back from another one. */
export const useFitNotes = create<FitNotes>()(keptNotes);

export function setNotes(notes: FitNotes): void {
  keepText(KEPT, JSON.stringify(notes));
  useFitNotes.setState(notes);
}

/** How many made a step, with the others as they were. */
export const withMade = (made: readonly Made[], steps: number, step: number, count: Made): readonly Made[] =>
  Array.from({ length: steps }, (_, i) => (i === step ? count : (made[i] ?? null)));
