import { reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import type { MarksProblem } from './marks-problem.ts';
import { type Measured, measured } from './measure.ts';
import { marksNeeded, type Needs, needsOf } from './needs.ts';
import type { PlacedMark } from './rail-marks.ts';
import { type RailRuns, railRuns } from './rail-run.ts';
import type { RailRun } from './ride.ts';
import { signatureOf } from './signature.ts';
import { BEGINNING, type Moment, type Spot, spotsAfter } from './spots.ts';
import { type Relevance, relevanceOf } from './words.ts';

/** Marks with which every must-goal may be met, as far as the rails tell. */
export interface Candidate {
  readonly marks: readonly PlacedMark[];
  readonly margin: number;
}

/** What a search has spent and may spend. */
export interface Effort {
  /** Drawings driven on the rails so far. */
  searched: number;
  readonly most: number;
  /** Asked now and then; false ends the search. */
  readonly goOn: () => boolean;
  stopped: 'cancelled' | 'spent' | undefined;
  /** The largest margin that was seen, of each must-goal for itself. */
  readonly best: Map<string, Measured['results'][number]>;
}

interface Node {
  readonly marks: readonly PlacedMark[];
  /** As far as the first that fails. */
  readonly runs: RailRuns;
  readonly last: Moment;
  readonly passes: boolean;
  readonly margin: number;
  /** The chance of the runs that pass, and what the one that fails lacks: where to look first. */
  readonly hope: number;
}

/** Which members of a class of like places stand for it: its middle, or both of its ends. */
export type Members = 'middle' | 'ends';

interface Search {
  readonly problem: MarksProblem;
  readonly relevance: Relevance;
  readonly needs: Needs;
  readonly effort: Effort;
  readonly members: Members;
  /** Drawings to drive on after the first candidate. */
  readonly patience: number;
  foundAt: number | undefined;
  /** By what the marks bring about, with every place of the last mark that brings it about. */
  readonly found: Map<string, Candidate[]>;
}

/** Steps of a scale that a certain pass is worth. */
const MOST_HOPE = 100;

/** How many drawings are tried between two questions whether to go on. */
const ASK_EVERY = 64;

/**
 * All ways to meet the must-goals with exactly `count` more marks, as classes of candidates that do the
 * same, best first, as far as `effort` and patience go.
 */
export function marksCandidates(
  problem: MarksProblem,
  count: number,
  members: Members,
  effort: Effort,
  patience: number,
): Candidate[][] {
  const needs = needsOf(problem);
  const search: Search = {
    problem,
    relevance: relevanceOf(problem, needs),
    needs,
    effort,
    members,
    patience,
    foundAt: undefined,
    found: new Map(),
  };
  const root = nodeOf(search, problem.given, BEGINNING);
  if (count === 0) {
    return root.passes ? [[{ marks: [], margin: root.margin }]] : [];
  }
  explore(search, root, count);
  return [...search.found.values()].sort((a, b) => b[0]!.margin - a[0]!.margin);
}

function nodeOf({ problem, effort }: Search, marks: readonly PlacedMark[], last: Moment): Node {
  effort.searched++;
  if (effort.searched >= effort.most) effort.stopped ??= 'spent';
  if (effort.searched % ASK_EVERY === 0 && !effort.goOn()) effort.stopped = 'cancelled';
  const drawn = marks.length - problem.given.length;
  let margin = Number.POSITIVE_INFINITY;
  let passes = true;
  let missing = 0;
  let chance = 0;
  const follow = (run: RailRun): boolean => {
    const found = measured(problem, run, drawn);
    margin = Math.min(margin, found.margin);
    passes = found.passes;
    missing = found.missing;
    if (passes) chance += run.trace.probability;
    noteBest(effort.best, found.results);
    return passes;
  };
  const runs = railRuns(problem.map, marks, problem.challenge.starts, follow);
  return { marks, runs, last, passes: passes && !runs.tooMany, margin, hope: missing + MOST_HOPE * chance };
}

function noteBest(best: Effort['best'], results: Measured['results']): void {
  for (const result of results) {
    const before = best.get(result.id);
    const better = !before || (result.met === before.met ? result.margin > before.margin : result.met);
    if (better) best.set(result.id, result);
  }
}

/** What one place and word bring about. */
interface Child {
  readonly node: Node;
  readonly rail: number;
  readonly word: string;
}

function explore(search: Search, node: Node, left: number): void {
  const failing = node.runs.runs.length - 1;
  const fails = !node.passes && !node.runs.tooMany;
  // Runs before the last mark's first reading stay as they are; and every ride that fails has to change.
  if (fails && failing < node.last.run) return;
  if (marksNeeded(search.needs, search.problem, node.marks, node.runs.runs[0]) > left) return;
  const within = fails && left === 1 ? failing : undefined;
  const classes = new Map<string, Child[]>();
  for (const child of childrenOf(search, node, within)) {
    if (isDone(search)) return;
    if (left === 1) {
      keep(search, child);
      continue;
    }
    const key = `${child.word} ${child.rail} ${seen(search, child.node)}`;
    const known = classes.get(key);
    if (known) known.push(child);
    else classes.set(key, [child]);
  }
  const hopeful = spread([...classes.values()]).sort((a, b) => b[0]!.node.hope - a[0]!.node.hope);
  for (const children of hopeful) {
    for (const child of chosen(children, search.members)) {
      if (isDone(search)) return;
      explore(search, child.node, left - 1);
    }
  }
}

const seen = ({ problem, relevance }: Search, { runs }: Node): string =>
  signatureOf(problem.challenge, runs, relevance.numeric);

const isDone = ({ effort, foundAt, patience }: Search): boolean =>
  effort.stopped !== undefined || (foundAt !== undefined && effort.searched > foundAt + patience);

/** The golden ratio: multiples of it, without their whole parts, fill the span from 0 to 1 evenly. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The same things in an order that touches all parts of the list early. */
const spread = <T>(list: readonly T[]): T[] =>
  list
    .map((thing, i) => ({ thing, rank: ((i + 1) * GOLDEN) % 1 }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ thing }) => thing);

function chosen(children: readonly Child[], members: Members): Child[] {
  if (members === 'middle') return [children[children.length >> 1]!];
  return children.length === 1 ? [children[0]!] : [children[0]!, children.at(-1)!];
}

function keep(search: Search, child: Child): void {
  const { marks, passes, margin } = child.node;
  if (!passes) return;
  const candidate = { marks: marks.slice(search.problem.given.length), margin };
  search.foundAt ??= search.effort.searched;
  const key = `${marks.map((mark) => mark.word).join()} ${seen(search, child.node)}`;
  const known = search.found.get(key);
  if (!known) search.found.set(key, [candidate]);
  else if (margin > known[0]!.margin) known.unshift(candidate);
  else known.push(candidate);
}

function* childrenOf(search: Search, node: Node, within: number | undefined): Generator<Child> {
  const { problem, relevance } = search;
  const { kit } = problem.map;
  const spots = new Map<Mm, Spot[]>();
  for (const word of relevance.words) {
    const length = word.length * kit.robot.bandUnit;
    let places = spots.get(length);
    if (!places) {
      places = spotsAfter(problem.map, node.runs.runs, node.marks, length, node.last, within);
      spots.set(length, places);
    }
    for (const { rail, line, from, along } of places) {
      const mark = { line, from, to: from + length, word: along ? word : reversed(word) };
      const child = nodeOf(search, [...node.marks, mark], BEGINNING);
      const last = firstReading(child.runs, node.marks.length);
      if (last) yield { node: { ...child, last }, rail, word };
    }
  }
}

function firstReading({ runs }: RailRuns, mark: number): Moment | undefined {
  for (const [run, { readings }] of runs.entries()) {
    const found = readings.find((reading) => reading.mark === mark);
    if (found) return { run, pass: found.pass, way: found.way };
  }
  return undefined;
}
