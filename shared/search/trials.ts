import { type Design, EMPTY_DESIGN } from '../documents/design.ts';
import { scenesInTurn } from '../judge/scene.ts';
import { breaksRules, confirm } from './confirm.ts';
import { drawingOf, type MarksProblem } from './marks-problem.ts';
import type { Candidate, Effort } from './marks-search.ts';

/** Designs driven by the robot in one go. */
const MOST_DRIVEN = 24;
/** Designs held against the drawing rules in one go. */
const MOST_CHECKED = 400;

export interface Trial {
  /** The first that every undisturbed run and 19 of 20 robots get through. */
  readonly design: Design | undefined;
  /** Whether every candidate was driven. */
  readonly all: boolean;
  /** Designs that were driven in vain. */
  readonly failed: number;
}

/**
 * Lets the robot drive candidates: first those that break no drawing rule, best classes first, then the
 * others. `tried` keeps what was driven before.
 */
export function tryOut(
  problem: MarksProblem,
  classes: readonly (readonly Candidate[])[],
  effort: Effort,
  tried: Set<string>,
): Trial {
  const untidy: Design[] = [];
  let checked = 0;
  let failed = 0;
  let all = true;
  // Candidates differ in a mark or two: most of the ink is that of the one before.
  const scenes = scenesInTurn();
  const drives = (design: Design): boolean => {
    if (!effort.goOn()) effort.stopped = 'cancelled';
    if (effort.stopped === 'cancelled') return false;
    const { met, steady } = confirm(problem.challenge, design, scenes);
    if (!met || !steady) failed++;
    return met && steady;
  };
  for (const candidate of inTurns(classes)) {
    const key = JSON.stringify(candidate.marks);
    if (tried.has(key)) continue;
    if (checked === MOST_CHECKED || failed === MOST_DRIVEN) {
      all = false;
      break;
    }
    tried.add(key);
    checked++;
    const design = { ...EMPTY_DESIGN, drawing: drawingOf(problem, candidate.marks) };
    if (breaksRules(problem.challenge, design)) untidy.push(design);
    else if (drives(design)) return { design, all, failed };
    if (effort.stopped === 'cancelled') return { design: undefined, all: false, failed };
  }
  const tidyFailed = failed;
  for (const design of untidy) {
    if (failed === tidyFailed + MOST_DRIVEN || effort.stopped === 'cancelled') {
      return { design: undefined, all: false, failed };
    }
    if (drives(design)) return { design, all, failed };
  }
  return { design: undefined, all, failed };
}

/** The best of each class, then the next of each. */
function* inTurns(classes: readonly (readonly Candidate[])[]): Generator<Candidate> {
  const ordered = classes.map(fromMiddle);
  const longest = Math.max(0, ...ordered.map((list) => list.length));
  for (let i = 0; i < longest; i++) {
    for (const list of ordered) {
      const candidate = list[i];
      if (candidate) yield candidate;
    }
  }
}

/** Margins that differ by less are alike: then the middle of the class has most room around it. */
const ALIKE = 0.5;

function fromMiddle(candidates: readonly Candidate[]): Candidate[] {
  const best = Math.max(...candidates.map(({ margin }) => margin));
  const good = candidates.filter(({ margin }) => margin >= best - ALIKE);
  const middle = (good.length - 1) / 2;
  const near = good.map((candidate, i) => ({ candidate, off: Math.abs(i - middle) }));
  const rest = candidates.filter(({ margin }) => margin < best - ALIKE).sort((a, b) => b.margin - a.margin);
  return [...near.sort((a, b) => a.off - b.off).map(({ candidate }) => candidate), ...rest];
}
