import type { Answers, AnswersVerdict } from '../documents/answers.ts';
import type { Challenge } from '../documents/challenge.ts';
import { EMPTY_DESIGN } from '../documents/design.ts';
import { PACES, type Pace } from '../documents/kit.ts';
import type { Odds } from '../documents/outlook.ts';
import type { Choice, Question, StandingPlace } from '../documents/question.ts';
import type { Area, Sheet } from '../documents/sheet.ts';
import type { Trace } from '../documents/trace.ts';
import { ENGINE_VERSION } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import { isInside } from '../geometry/polygon.ts';
import type { Mm } from '../geometry/units.ts';
import { eventsOf } from '../goals/predicate.ts';
import { oddsOf } from '../odds/odds.ts';
import { answerPoints } from '../points/points.ts';
import { type IdealRuns, idealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT, type StartBerth } from '../run/world.ts';
import { actionKey, CHANCE, ELSEWHERE, keyOf, NEVER, questionsOf } from './questions.ts';
import { sceneOf } from './scene.ts';
import { placeNamed } from './standing-places.ts';

export { questionsOf } from './questions.ts';

/** A robot that stopped where a line ends has its axle this near to the end. */
const AT_END: Mm = 15;

type QuestionOf<K extends Question['kind']> = Extract<Question, { kind: K }>;

/** The right answer to each question, by the question's id: the key of a choice, or a number of robots. */
export type AnswerKey = ReadonlyMap<string, string | number>;

/**
 * Drives over what is given and reads the answers off the runs. What is not the same in every run is
 * left to chance; how many of so many robots are to be expected is the whole number nearest to the
 * exact odds. Deterministic: the same challenge has the same key everywhere.
 */
export function answerKey(challenge: Challenge): AnswerKey {
  const drive = drivesOver(challenge);
  return new Map(
    questionsOf(challenge).map((question) => [
      question.id,
      rightAnswer(challenge.sheet, question, drive(question.start)),
    ]),
  );
}

/** What an undisturbed robot does from one berth, and the odds of it as far as they are asked for. */
interface Driven extends IdealRuns {
  readonly odds: () => Odds | undefined;
}

/** Drives from each berth once. */
function drivesOver(challenge: Challenge): (start: StartBerth) => Driven {
  const { limits, light: ambient = SAME_LIGHT } = challenge;
  const { world, track } = sceneOf(challenge, EMPTY_DESIGN);
  const driven = new Map<StartBerth, Driven>();
  return (start) => {
    const before = driven.get(start);
    if (before) return before;
    const runs = idealRuns(world, { starts: [start], limit: limits.time, ambient });
    const odds = () => oddsOf(world, track, { start, limit: limits.time, ambient, runs: runs.traces });
    const now = { ...runs, odds };
    driven.set(start, now);
    return now;
  };
}

/** Compares answers with the key. Questions that nobody asked are passed over. */
export function judgeAnswers(challenge: Challenge, answers: Answers): AnswersVerdict {
  const said = new Map(answers.answers.map((answer) => [answer.question, answer.says]));
  const lines = [...answerKey(challenge)].map(([question, key]) => ({
    question,
    answered: said.has(question),
    right: said.get(question) === key,
  }));
  const right = lines.filter((line) => line.right).length;
  const total = answerPoints(right, lines.length);
  return { version: 1, engine: ENGINE_VERSION, lines, right, questions: lines.length, total };
}

function rightAnswer(sheet: Sheet, question: Question, driven: Driven): string | number {
  if (question.kind === 'how-many') return expected(sheet, question, driven.odds());
  const found = driven.traces.map((run) => answerIn(sheet, question, run));
  return !driven.tooMany && found.every((key) => key === found[0]) ? found[0]! : CHANCE.key;
}

/** A number of robots; what is beyond working out is left to chance. */
function expected(
  sheet: Sheet,
  { place, of }: QuestionOf<'how-many'>,
  odds: Odds | undefined,
): string | number {
  if (!odds) return CHANCE.key;
  const there = odds.endings.filter(({ at }) => {
    const end = placeNamed(sheet, at);
    return end !== undefined && keyOf(end) === keyOf(place);
  });
  return Math.round(of * there.reduce((sum, { probability }) => sum + probability, 0));
}

/** The key of what one run answers to a question about the robot from its berth; numbers of robots need many. */
export function answerIn(
  sheet: Sheet,
  question: Exclude<Question, { kind: 'how-many' }>,
  run: Trace,
): string {
  switch (question.kind) {
    case 'end':
      return endIn(sheet, question.choices, run);
    case 'mark':
      return meaningOf(question.mark, run);
    case 'pace':
      return paceIn(
        sheet.areas.find(({ id }) => id === question.area),
        run,
      );
  }
}

function endIn(sheet: Sheet, choices: readonly Choice[], run: Trace): string {
  const place = placeOfEnd(sheet, run);
  if (place) return keyOf(place);
  const end = eventsOf(run, 'end').at(-1);
  const loose = choices.find(
    (choice) => choice.kind === 'loose-end' && end && distance(choice.at, end) <= AT_END,
  );
  return (loose ?? ELSEWHERE).key;
}

function placeOfEnd(sheet: Sheet, run: Trace): StandingPlace | undefined {
  const end = eventsOf(run, 'end').at(-1);
  return end && placeNamed(sheet, end);
}

/** What the mark said when it was first read. A word that the chart lacks says nothing. */
function meaningOf(mark: string, run: Trace): string {
  const reading = eventsOf(run, 'read').find((event) => event.mark === mark);
  return reading?.action ? actionKey(reading.action) : NEVER.key;
}

/** The commanded pace over the greatest part of the way that the axle made inside the area. */
function paceIn(area: Area | undefined, { samples }: Trace): string {
  const ways = new Map<Pace, Mm>();
  for (let i = 1; i < samples.x.length; i++) {
    if (!area || !isInside(area.polygon, { x: samples.x[i]!, y: samples.y[i]! })) continue;
    const pace = PACES[samples.pace[i]!]!;
    ways.set(pace, (ways.get(pace) ?? 0) + samples.way[i]! - samples.way[i - 1]!);
  }
  return [...ways].sort((a, b) => b[1] - a[1])[0]?.[0] ?? NEVER.key;
}
