import type { Challenge } from '../documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../documents/design.ts';
import type { Impossibility, ImpossibilityCode, ParProof } from '../documents/par.ts';
import { costOf, MARK_COST } from '../points/cost.ts';
import { isForetold } from './certainty.ts';
import { confirm } from './confirm.ts';
import { graphProblems, searchProblems } from './impossible.ts';
import { isAboutMarks, type MarksProblem, marksProblem } from './marks-problem.ts';
import { type Effort, marksCandidates } from './marks-search.ts';
import { marksNeeded, needsOf } from './needs.ts';
import { type Trial, tryOut } from './trials.ts';

export type ParResult =
  | {
      readonly kind: 'par';
      /** mm of line and 20 a mark, given lines free. */
      readonly cost: number;
      readonly design: Design;
      readonly proof: ParProof;
      /** Drawings driven on the rails. */
      readonly searched: number;
    }
  /**
   * No drawing of the search's words and grid meets it, in this model of the run. Said only where the graph
   * of the given lines foretells the robot, and neither the bare lines nor the maker's design meet it.
   */
  | { readonly kind: 'impossible'; readonly why: readonly Impossibility[]; readonly searched: number }
  /** None was found, but not everything was tried, or the robot may leave the lines that were searched. */
  | { readonly kind: 'open'; readonly searched: number }
  | { readonly kind: 'cancelled'; readonly searched: number }
  /** Nothing is drawn: the team answers questions. */
  | { readonly kind: 'nothing-to-draw' };

export interface ParOptions {
  /** Asked between steps of a few milliseconds; false ends the search. */
  readonly goOn?: () => boolean;
  /** The most drawings to drive on the rails. */
  readonly most?: number;
}

/** The most marks of a drawing that is searched for. */
export const MOST_MARKS = 6;
/** About two seconds. */
const USUAL_EFFORT = 150_000;

/**
 * The lowest cost with which every must-goal is met, by at least 19 of 20 slightly different robots.
 * Where lines are given, marks are searched on a grid of 5 mm, by their number; elsewhere the maker's
 * design tells. Deterministic: equal challenges and options have equal results.
 */
export function parOf(challenge: Challenge, options: ParOptions = {}): ParResult {
  if (challenge.play === 'predict') return { kind: 'nothing-to-draw' };
  if (!isAboutMarks(challenge)) return modelPar(challenge, 0);
  const { goOn = () => true, most = USUAL_EFFORT } = options;
  const effort: Effort = { searched: 0, most, goOn, stopped: undefined, best: new Map() };
  const problem = marksProblem(challenge);
  if (confirm(challenge, EMPTY_DESIGN).steady) {
    return { kind: 'par', cost: 0, design: EMPTY_DESIGN, proof: 'exhaustive', searched: 0 };
  }
  const why = graphProblems(problem);
  const found = why.length > 0 ? impossible(effort, why) : fewestMarks(problem, effort);
  if (effort.stopped === 'cancelled') return { kind: 'cancelled', searched: effort.searched };
  return found ? asFarAsProven(problem, found) : modelPar(challenge, effort.searched);
}

/** Reasons that need no graph. */
const CERTAIN: readonly ImpossibilityCode[] = ['no-start', 'action-missing'];

/** What is left of a result where the robot may do what the graph of the lines does not foretell. */
function asFarAsProven(problem: MarksProblem, result: ParResult): ParResult {
  if (result.kind === 'impossible') {
    const own = modelPar(problem.challenge, result.searched);
    if (own.kind === 'par') return own;
    const why = result.why.filter(({ code }) => CERTAIN.includes(code));
    if (why.length > 0) return { ...result, why };
    return isForetold(problem) ? result : own;
  }
  if (result.kind !== 'par' || result.proof !== 'exhaustive') return result;
  return isForetold(problem) ? result : { ...result, proof: 'bound' };
}

/** The maker's design, where it really meets the challenge. */
function modelPar(challenge: Challenge, searched: number): ParResult {
  const { model } = challenge;
  if (!model || !confirm(challenge, model).met) return { kind: 'open', searched };
  return { kind: 'par', cost: costOf(model.drawing), design: model, proof: 'model', searched };
}

function fewestMarks(problem: MarksProblem, effort: Effort): ParResult | undefined {
  const { challenge } = problem;
  const most = Math.min(challenge.limits.marks ?? MOST_MARKS, MOST_MARKS);
  const least = marksNeeded(needsOf(problem), problem, [], undefined);
  if (least > most) return impossible(effort, [{ code: 'marks-needed', needed: least, allowed: most }]);
  let complete = true;
  let failed = 0;
  for (let count = least; count <= most; count++) {
    const level = searchLevel(problem, count, effort);
    if (effort.stopped === 'cancelled') return undefined;
    if (level.design) {
      const proof = complete ? 'exhaustive' : 'bound';
      return { kind: 'par', cost: MARK_COST * count, design: level.design, proof, searched: effort.searched };
    }
    complete &&= level.all && !effort.stopped;
    failed += level.failed;
    if (effort.stopped) return undefined;
  }
  if (!complete) return undefined;
  if (failed > 0) return impossible(effort, [{ code: 'never-steady', marks: most, driven: failed }]);
  return impossible(effort, searchProblems(problem, effort.best, most));
}

const impossible = (effort: Effort, why: readonly Impossibility[]): ParResult => ({
  kind: 'impossible',
  why,
  searched: effort.searched,
});

/** Drives on the rails before a level's search goes on although something was found. */
const PATIENCE = 3000;

/** A quick search among typical places first; then everything. */
function searchLevel(problem: MarksProblem, count: number, effort: Effort): Trial {
  const tried = new Set<string>();
  const quick = tryOut(problem, marksCandidates(problem, count, 'middle', effort, PATIENCE), effort, tried);
  if (quick.design || effort.stopped) return quick;
  // With one mark there are no classes whose middles could stand for them.
  if (count < 2 && quick.failed === 0) return quick;
  const classes = marksCandidates(problem, count, 'ends', effort, Number.POSITIVE_INFINITY);
  const full = tryOut(problem, classes, effort, tried);
  return { ...full, failed: quick.failed + full.failed };
}
