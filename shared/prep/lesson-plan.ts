import { MOST_CLOSING_QUESTIONS } from '../documents/closing-check.ts';
import type { Minutes } from './charging.ts';

/** A lesson by the clock: how the minutes of a period are shared out among its phases. */

export const PLAN_PHASES = ['prepare', 'gather', 'brief', 'build', 'show', 'drive', 'close'] as const;
export type PlanPhase = (typeof PLAN_PHASES)[number];

/** Periods that a plan is made for, min. */
export const PERIOD = { least: 30, most: 120, usual: 45 } as const;

/** A lesson of 45 minutes (common practice, no source); longer and shorter ones in proportion. */
const SHARES: Readonly<Record<PlanPhase, Minutes>> = {
  prepare: 3,
  gather: 4,
  brief: 5,
  build: 13,
  show: 7,
  drive: 8,
  close: 5,
};

export interface PlannedPhase {
  readonly phase: PlanPhase;
  readonly minutes: Minutes;
  /** Minutes since the lesson began. */
  readonly from: Minutes;
  readonly to: Minutes;
}

export interface LessonPlan {
  /** Their minutes are the period's, exactly. */
  readonly phases: readonly PlannedPhase[];
  /** Questions of the closing check for which there is time. */
  readonly questions: number;
}

/**
 * Whole minutes in proportion, by the method of Webster (1832), as seats are shared out: the next minute
 * goes to the phase with the largest share / (2 × minutes + 1). No phase gets shorter in a longer period,
 * as it may when rests are rounded. `minutes` is a whole number within PERIOD.
 */
export function lessonPlan(minutes: Minutes): LessonPlan {
  const given = new Map<PlanPhase, Minutes>(PLAN_PHASES.map((phase) => [phase, 0]));
  const claim = (phase: PlanPhase) => SHARES[phase] / (2 * given.get(phase)! + 1);
  for (let minute = 0; minute < minutes; minute++) {
    const next = PLAN_PHASES.reduce((best, phase) => (claim(phase) > claim(best) ? phase : best));
    given.set(next, given.get(next)! + 1);
  }
  let from = 0;
  const phases = PLAN_PHASES.map((phase) => {
    const planned = { phase, minutes: given.get(phase)!, from, to: from + given.get(phase)! };
    from = planned.to;
    return planned;
  });
  return { phases, questions: questionsIn(given.get('close')!) };
}

const FEWEST_QUESTIONS = 2;
/** A question is read, answered and talked about. */
const MINUTES_A_QUESTION = 1.5;

const questionsIn = (closing: Minutes): number =>
  Math.min(MOST_CLOSING_QUESTIONS, Math.max(FEWEST_QUESTIONS, Math.floor(closing / MINUTES_A_QUESTION)));
