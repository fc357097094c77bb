import type { Mark } from '../documents/design.ts';
import type { GoalResult, Unit } from '../documents/verdict.ts';
import { measureGoal } from '../goals/measure.ts';
import type { MarksProblem } from './marks-problem.ts';
import type { RailRun } from './ride.ts';

/**
 * How far the rails and the robot may differ: a goal that is short by no more on the rails may still be
 * met by the robot. The rails come within 2 mm and 0.3 s of it on the ready challenges.
 */
const ALLOWANCE: Readonly<Record<Unit, number>> = { mm: 12, s: 0.6, count: 0, degrees: 0, ratio: 0 };
/** One step of a margin, in its unit. */
export const SCALE: Readonly<Record<Unit, number>> = { mm: 10, s: 1, count: 1, degrees: 10, ratio: 0.05 };

export interface Measured {
  /** Whether the robot may meet every goal. */
  readonly passes: boolean;
  /** The smallest margin in steps of its scale. */
  readonly margin: number;
  /** What is missing in all, each goal counting so much at most: 0 or below. */
  readonly missing: number;
  readonly results: readonly GoalResult[];
}

/** Stands for a mark where only their number counts. */
const SOME_MARK: Mark = { id: 'm', line: 'l', at: 0, bands: [{ ink: 'A', length: 5, gap: 0 }] };

const passes = ({ met, margin, unit }: GoalResult): boolean => met || margin >= -ALLOWANCE[unit];

/** More steps of any scale than matter. */
const MOST = 1000;

/** Steps of a scale beyond which a goal is just not met. */
const FAR_OFF = 1;

const shortOf = ({ margin, unit }: GoalResult): number =>
  Math.max(-FAR_OFF, Math.min(0, margin / SCALE[unit]));

/** The must-goals of a challenge measured on one run over the rails. Goals for other travellers don't count. */
export function measured({ challenge, must }: MarksProblem, { trace }: RailRun, marks: number): Measured {
  const drawing = { lines: [], marks: new Array<Mark>(marks).fill(SOME_MARK) };
  const context = { sheet: challenge.sheet, drawing, robot: challenge.kit.robot };
  const runs = { traces: [trace], tooMany: false };
  const results = must
    .filter(({ start }) => start === undefined || start === trace.start)
    .map((goal) => measureGoal(goal, runs, context))
    // What depends on many robots is settled when they are driven.
    .filter(({ open }) => !open);
  const margin = results.reduce((least, r) => Math.min(least, r.margin / SCALE[r.unit]), MOST);
  const missing = results.reduce((sum, r) => sum + shortOf(r), 0);
  return { passes: results.every(passes), margin, missing, results };
}
