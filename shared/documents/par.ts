import type { Action } from './kit.ts';
import type { Texts } from './values.ts';
import type { Unit } from './verdict.ts';

/**
 * Why no drawing meets a challenge, as far as the model of the run goes: codes and numbers, for
 * `shared/wording`. Nothing is said of real robots.
 */
export type Impossibility =
  /** No robot stands on a line in this berth. */
  | { readonly code: 'no-start'; readonly berth: 'start' | 'finish' }
  /** Whatever the marks, no given line leads from a start to where the goal wants something. */
  | { readonly code: 'out-of-reach'; readonly goal: string; readonly place: Texts }
  /** Marks go into boxes, and over no given line that a robot comes to lies a box that one fits into. */
  | { readonly code: 'no-box' }
  /** The goal needs an action that the chart has no word for. */
  | { readonly code: 'action-missing'; readonly goal: string; readonly action: Action['kind'] }
  /** The goal needs more marks than may be drawn. */
  | { readonly code: 'marks-needed'; readonly needed: number; readonly allowed: number }
  /** Of all drawings with so many marks none meets this goal; the best one is off by the margin. */
  | {
      readonly code: 'goal-never-met';
      readonly goal: string;
      readonly marks: number;
      readonly margin: number;
      readonly unit: Unit;
    }
  /** Each goal can be met, but no drawing with so many marks meets all of them. */
  | { readonly code: 'goals-clash'; readonly goals: readonly string[]; readonly marks: number }
  /** The graph would allow it, but every drawing that was driven failed or did so only at times. */
  | { readonly code: 'never-steady'; readonly marks: number; readonly driven: number };

export type ImpossibilityCode = Impossibility['code'];

/**
 * How a par is known. `exhaustive`: every cheaper drawing of the search's words and grid was ruled out on
 * the graph. `bound`: cheaper ones may exist, since the search ended before, or the graph does not foretell
 * all that the robot may do. `model`: the maker's design costs it.
 */
const PAR_PROOFS = ['exhaustive', 'bound', 'model'] as const;
export type ParProof = (typeof PAR_PROOFS)[number];
