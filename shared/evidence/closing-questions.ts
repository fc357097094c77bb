import type { Challenge } from '../documents/challenge.ts';
import {
  type ClosingAnswer,
  type ClosingAsk,
  type ClosingMistake,
  ClosingQuestion,
  type RealTrouble,
} from '../documents/closing-check.ts';
import { type Design, EMPTY_DESIGN, wordOf } from '../documents/design.ts';
import { reversed } from '../documents/kit.ts';
import type { Cause, Stray } from '../documents/outlook.ts';
import type { Choice } from '../documents/question.ts';
import { isMistaken, type TrueReason } from '../documents/reason.ts';
import { parseDocument, writeDocument } from '../documents/values.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { eventsOf } from '../goals/predicate.ts';
import { reasonsFor } from '../judge/because.ts';
import { givenWith } from '../judge/given-with.ts';
import { judge } from '../judge/judge.ts';
import { answerIn } from '../judge/predict.ts';
import { CHANCE, keyOf, questionsOf } from '../judge/questions.ts';
import { sceneOf } from '../judge/scene.ts';
import { troublesOf } from '../judge/trouble.ts';
import { type IdealRuns, idealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT, type StartBerth } from '../run/world.ts';
import { choicesOfMark, inTurn } from './mark-choices.ts';
import { withStampedMark } from './stamped-mark.ts';

/** A drawing of the class with the challenge that it was drawn for, on the sheet that the team had. */
export interface ClassDrawing {
  readonly challenge: Challenge;
  readonly design: Design;
  /** What a real robot did on it, where that was not what was foretold. */
  readonly real?: RealRun | undefined;
}

export interface RealRun {
  readonly trouble: RealTrouble;
  /** Where, if that was noted. */
  readonly at: PaperPoint | null;
  /** Disturbed robots of the model that did not do as the undisturbed one. */
  readonly strays: readonly Stray[];
}

/** A question with what is right. */
export interface Posed {
  readonly question: ClosingQuestion;
  readonly answer: ClosingAnswer;
}

/** What can be asked of one drawing. */
export interface Askable {
  /** One mark, met from either berth, where it says different things. */
  readonly pairs: readonly (readonly [Posed, Posed])[];
  readonly marks: readonly Posed[];
  readonly why: Posed | undefined;
  readonly real: Posed | undefined;
  readonly end: Posed | undefined;
}

/** Drives over the drawing from each berth and sees what could be asked. */
export function askableOf({ challenge, design, real }: ClassDrawing): Askable {
  const given = givenWith(challenge, design.drawing);
  const drives = drivesOver(given);
  const pose = (ask: ClosingAsk, answer: ClosingAnswer) => posed(given, ask, answer);
  const start = challenge.starts[0] ?? 'start';
  return {
    ...marksMet(given, drives),
    why: whyQuestion(challenge, design, pose),
    real: real && realQuestion(challenge, design, real, drives.get(start), pose),
    end: endQuestion(given, start, drives.get(start), pose),
  };
}

/** A pair of questions about a mark that is put into the drawing to be asked about. */
export function stampedPair({ challenge, design }: ClassDrawing): readonly [Posed, Posed] | undefined {
  const stamped = withStampedMark(givenWith(challenge, design.drawing));
  if (!stamped) return undefined;
  const { pairs } = marksMet(stamped.challenge, drivesOver(stamped.challenge));
  return pairs.find(([one]) => markOf(one) === stamped.mark);
}

/** What can be asked about marks: each from every berth, and those that say different things from two. */
function marksMet(given: Challenge, drives: Drives): Pick<Askable, 'pairs' | 'marks'> {
  const pose = (ask: ClosingAsk, answer: ClosingAnswer) => posed(given, ask, answer);
  const met = (start: StartBerth) =>
    given.sheet.given.marks.flatMap(({ id }) => markQuestion(given, drives.get(start), id, pose) ?? []);
  const [from, back] = [met('start'), met('finish')];
  const pairs = from.flatMap((one) =>
    back.flatMap((other) => (areSides(one, other) ? [[one, other] as const] : [])),
  );
  return { pairs, marks: [...from, ...back] };
}

type Drives = ReadonlyMap<StartBerth, IdealRuns>;
type Pose = (ask: ClosingAsk, answer: ClosingAnswer) => Posed | undefined;

/** As it will be read from its file; undefined where drawn and given things do not go together there. */
function posed(
  { kit, sheet, sentence }: Challenge,
  ask: ClosingAsk,
  answer: ClosingAnswer,
): Posed | undefined {
  const file = writeDocument(ClosingQuestion, { kit, sheet, sentence, ask });
  const read = parseDocument(ClosingQuestion, file);
  return read.ok ? { question: read.value, answer } : undefined;
}

function drivesOver(given: Challenge): Drives {
  const { sheet, limits, light: ambient = SAME_LIGHT } = given;
  const { world } = sceneOf(given, EMPTY_DESIGN);
  const starts: StartBerth[] = sheet.finish ? ['start', 'finish'] : ['start'];
  return new Map(
    starts.map((start) => [start, idealRuns(world, { starts: [start], limit: limits.time, ambient })]),
  );
}

/** Different for every run, and the same everywhere. */
const turnOf = (runs: IdealRuns): number => Number.parseInt((runs.traces[0]?.hash ?? '').slice(-6), 16) || 0;

/** Only where every run reads the mark first as it is drawn, from one side or the other. */
function markQuestion(
  { kit, sheet }: Challenge,
  runs: IdealRuns | undefined,
  mark: string,
  pose: Pose,
): Posed | undefined {
  if (!runs || runs.tooMany) return undefined;
  const drawn = sheet.given.marks.find(({ id }) => id === mark);
  const words = runs.traces.map((run) => eventsOf(run, 'read').find((event) => event.mark === mark)?.word);
  const word = words[0];
  if (!drawn || word === undefined || !words.every((other) => other === word)) return undefined;
  if (word !== wordOf(drawn) && word !== reversed(wordOf(drawn))) return undefined;
  const found = choicesOfMark(kit, word, turnOf(runs));
  const start = runs.traces[0]!.start;
  return found && pose({ kind: 'mark', start, mark, choices: found.choices }, found.answer);
}

const markOf = ({ question: { ask } }: Posed) => (ask.kind === 'mark' ? ask.mark : undefined);

const areSides = (one: Posed, other: Posed): boolean =>
  markOf(one) === markOf(other) && one.answer.right !== other.answer.right;

type EndChoice = Extract<ClosingAsk, { kind: 'end' }>['choices'][number];
const isEnd = (choice: Choice): choice is EndChoice =>
  choice.kind !== 'action' && choice.kind !== 'pace' && choice.kind !== 'never';

const MOST_WRONG_ENDS = 3;

function endQuestion(
  given: Challenge,
  start: StartBerth,
  runs: IdealRuns | undefined,
  pose: Pose,
): Posed | undefined {
  const [asked] = questionsOf({ ...given, asks: [{ kind: 'end', start }] });
  if (!runs || runs.traces.length === 0 || asked?.kind !== 'end') return undefined;
  const ends = runs.traces.map((run) => answerIn(given.sheet, asked, run));
  const right = !runs.tooMany && ends.every((end) => end === ends[0]) ? ends[0]! : CHANCE.key;
  const target = keyOf({ kind: 'berth', berth: start === 'start' ? 'finish' : 'start' });
  const choices = asked.choices.filter(isEnd);
  const wrong = choices
    .filter(({ key }) => key !== right)
    // What the drawing was meant for first.
    .sort((a, b) => Number(b.key === target) - Number(a.key === target))
    .slice(0, MOST_WRONG_ENDS);
  const mistakeOf = ({ key }: EndChoice): ClosingMistake => {
    if (key === target) return 'knows-the-wish';
    if (key === CHANCE.key) return 'got-tired';
    return right === CHANCE.key ? 'shortest-way' : 'sees-the-sheet';
  };
  const one = choices.find(({ key }) => key === right);
  if (!one || wrong.length === 0) return undefined;
  const mistakes = wrong.map((choice) => ({ choice: choice.key, mistake: mistakeOf(choice) }));
  return pose({ kind: 'end', start, choices: inTurn(turnOf(runs), one, wrong) }, { right, mistakes });
}

/** Why a drawing does not do what it should, where all its runs have one reason. */
function whyQuestion(challenge: Challenge, design: Design, pose: Pose): Posed | undefined {
  if (challenge.play === 'predict') return undefined;
  const judged = judge(challenge, design, 'live');
  const { track } = sceneOf(challenge, design);
  const troubles = judged.refusal ? [] : troublesOf(challenge, design, track, judged);
  const [first] = troubles;
  const trace = judged.traces[0];
  if (!first || !trace || !troubles.every((trouble) => trouble?.reason === first.reason)) return undefined;
  const at = first.reason === 'falls-short' ? undefined : first.at;
  const { choices, answer } = choicesOfReason(first.reason, design, trace.hash);
  return pose({ kind: 'why', start: trace.start, at, choices }, answer);
}

/** The right reason among two known mistakes. */
function choicesOfReason(reason: TrueReason, { drawing }: Design, hash: string) {
  const { offered, right } = reasonsFor(reason, drawing, hash);
  const choices = offered.map((one) => ({ key: one, kind: 'reason' as const, reason: one }));
  const mistakes = offered.flatMap((one) => (isMistaken(one) ? [{ choice: one, mistake: one }] : []));
  return { choices, answer: { right, mistakes } };
}

const LOST: readonly Cause[] = ['lost', 'off-paper'];
const MISREAD: readonly Cause[] = ['mark-missed', 'mark-misread'];

/**
 * Why a real robot did something else, as far as the model knows: where disturbed robots do the same, or where
 * nothing decides at a junction. What the model has never seen is not asked.
 */
function realQuestion(
  challenge: Challenge,
  design: Design,
  { trouble, at, strays }: RealRun,
  runs: IdealRuns | undefined,
  pose: Pose,
): Posed | undefined {
  const causes = trouble === 'lost' ? LOST : MISREAD;
  const alike = strays.find(({ cause }) => causes.includes(cause));
  const trace = runs?.traces[0];
  const isOpen = trouble === 'other-branch' && (runs?.traces.length ?? 0) > 1;
  if (!trace || (!alike && !isOpen)) return undefined;
  const known = trouble === 'lost' ? 'some-robots-stray' : 'mark-overlooked';
  const { choices, answer } = choicesOfReason(alike ? known : 'left-to-luck', design, trace.hash);
  const where = at ?? alike?.at;
  return pose(
    { kind: 'why', start: challenge.starts[0] ?? 'start', real: trouble, at: where, choices },
    answer,
  );
}
