import type { ClosingCheck, ClosingKey, ClosingQuestion } from '../documents/closing-check.ts';
import { type Askable, askableOf, type ClassDrawing, type Posed, stampedPair } from './closing-questions.ts';

/** A closing check with its key, in the order of its questions. */
export interface MadeCheck {
  readonly check: ClosingCheck;
  readonly key: ClosingKey;
}

/**
 * Up to `count` questions about drawings of the class, those that are preferred first: one mark from both
 * sides, why a real robot did something else, why a drawing does not do what it should, where a robot ends,
 * other marks; none of those that were asked `before`. One step a drawing, so that it may be put aside for
 * anything more urgent; undefined where there is nothing to ask. The same drawings make the same check everywhere.
 */
export function* closingCheckOf(
  drawings: readonly ClassDrawing[],
  count: number,
  before: readonly ClosingQuestion[] = [],
): Generator<undefined, MadeCheck | undefined> {
  const known = new Set(before.map(sameAs));
  const found: Askable[] = [];
  for (const drawing of drawings) {
    found.push(without(askableOf(drawing), known));
    if (isEnough(found, count)) break;
    yield undefined;
  }
  const posed = chosenOf(found, yield* pairFor(found, drawings, known)).slice(0, count);
  if (posed.length === 0) return undefined;
  return {
    check: { version: 1, questions: posed.map(({ question }) => question) },
    key: posed.map(({ answer }) => answer),
  };
}

/** Questions are the same where they ask the same about the same sheet. */
function sameAs({ sheet, ask }: ClosingQuestion): string {
  const { choices: _, ...asked } = ask;
  return JSON.stringify([asked, sheet]);
}

const isNew =
  (known: ReadonlySet<string>) =>
  ({ question }: Posed): boolean =>
    known.size === 0 || !known.has(sameAs(question));

function without(found: Askable, known: ReadonlySet<string>): Askable {
  const fresh = isNew(known);
  const ifNew = (posed: Posed | undefined) => (posed && fresh(posed) ? posed : undefined);
  return {
    pairs: found.pairs.filter((pair) => pair.every(fresh)),
    marks: found.marks.filter(fresh),
    why: ifNew(found.why),
    real: ifNew(found.real),
    end: ifNew(found.end),
  };
}

/** Whether what comes first in a check is there, and nothing better could take its place. */
const isEnough = (found: readonly Askable[], count: number): boolean =>
  found.some(({ pairs }) => pairs.length > 0) &&
  found.some(({ why }) => why) &&
  chosenOf(found, []).length >= count;

/** So many drawings are tried for a mark that is put in. */
const MOST_STAMPED = 6;

/** Where the class has drawn no mark that can be met from both sides: one that is put into a drawing of its own. */
function* pairFor(
  found: readonly Askable[],
  drawings: readonly ClassDrawing[],
  known: ReadonlySet<string>,
): Generator<undefined, readonly Posed[]> {
  if (found.some(({ pairs }) => pairs.length > 0)) return [];
  for (const drawing of drawings.slice(0, MOST_STAMPED)) {
    const pair = stampedPair(drawing);
    if (pair?.every(isNew(known))) return pair;
    yield undefined;
  }
  return [];
}

function chosenOf(found: readonly Askable[], stamped: readonly Posed[]): Posed[] {
  const pair: readonly Posed[] = found.flatMap(({ pairs }) => pairs)[0] ?? stamped;
  const marks = found.flatMap((one) => one.marks.filter((posed) => !pair.includes(posed)).slice(0, 1));
  // Where something can be pointed at there is more to see.
  const whys = found.flatMap(({ why }) => why ?? []).sort((a, b) => Number(isSeen(b)) - Number(isSeen(a)));
  const ends = found.flatMap(({ end }) => end ?? []);
  const [first = [], rest] = pair.length > 0 ? [pair, marks] : [marks.slice(0, 2), marks.slice(2)];
  const reals = found.flatMap(({ real }) => real ?? []);
  const once = [...first, ...reals.slice(0, 1), ...whys.slice(0, 1), ...ends.slice(0, 1)];
  return [...once, ...rest, ...whys.slice(1), ...ends.slice(1)];
}

const isSeen = ({ question: { ask } }: Posed): boolean => ask.kind === 'why' && ask.at !== undefined;
