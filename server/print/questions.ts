import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Design, type Drawing, EMPTY_DRAWING, type Line } from '../../shared/documents/design.ts';
import type { Choice, Question } from '../../shared/documents/question.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import { pathOf, pathPart } from '../../shared/geometry/path.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { givenWith } from '../../shared/judge/given-with.ts';
import { judge } from '../../shared/judge/judge.ts';
import { type AnswerKey, answerKey, questionsOf } from '../../shared/judge/predict.ts';

/** Questions on paper about any challenge, with a key that the engine works out. */
export type QuestionSheet =
  | {
      readonly kind: 'asked';
      readonly challenge: Challenge;
      readonly questions: readonly Question[];
      readonly key: AnswerKey;
    }
  | {
      readonly kind: 'mend';
      readonly challenge: Challenge;
      readonly faulty: Drawing;
      readonly findings: readonly Finding[];
      /** Goals that the faulty drawing misses. */
      readonly missed: readonly string[];
      readonly sound: Drawing;
    };

/**
 * Why there is no such sheet: nothing is drawn that could be asked about; no robot comes from the other
 * end; no change of the drawing makes it fail.
 */
export type NoQuestions = 'nothing-drawn' | 'one-end' | 'no-fault';

export type QuestionKind = 'predict' | 'two-travellers' | 'mend';

export function questionSheet(challenge: Challenge, kind: QuestionKind): QuestionSheet | NoQuestions {
  if (kind === 'mend') return mendSheet(challenge);
  const shown = asGiven(challenge);
  if (shown.sheet.given.lines.length === 0) return 'nothing-drawn';
  const asked = kind === 'predict' ? predicting(shown) : travelling(shown);
  if (asked === undefined) return 'one-end';
  const key = answerKey(asked);
  const questions = questionsOf(asked);
  if (kind === 'two-travellers' && !bothRead(questions, key)) return 'one-end';
  return { kind: 'asked', challenge: asked, questions, key };
}

/** All is given: the maker's own drawing, or the faulty one where there is no other. */
function asGiven(challenge: Challenge): Challenge {
  return givenWith(challenge, (challenge.model ?? challenge.begin)?.drawing ?? EMPTY_DRAWING);
}

/** A challenge that asks by itself keeps its questions. */
function predicting(challenge: Challenge): Challenge {
  if (challenge.asks) return challenge;
  const start = challenge.starts[0] ?? 'start';
  const ofMarks = challenge.sheet.given.marks.length === 0 ? [] : [{ kind: 'marks', start } as const];
  return { ...challenge, starts: [start], asks: [...ofMarks, { kind: 'end', start }] };
}

function travelling(challenge: Challenge): Challenge | undefined {
  if (!challenge.sheet.finish || challenge.sheet.given.marks.length === 0) return undefined;
  const starts: Challenge['starts'] = ['start', 'finish'];
  return { ...challenge, starts, asks: starts.map((start) => ({ kind: 'marks', start })) };
}

/** Whether each traveller reads a mark: without that there is nothing to compare. */
const bothRead = (questions: readonly Question[], key: AnswerKey): boolean =>
  (['start', 'finish'] as const).every((start) =>
    questions.some((question) => question.start === start && key.get(question.id) !== 'never'),
  );

function mendSheet(challenge: Challenge): QuestionSheet | NoQuestions {
  const { model, begin } = challenge;
  if (!model) return 'nothing-drawn';
  const candidates = begin ? [begin] : faultsOf(model);
  for (const design of candidates) {
    const { verdict } = judge(challenge, design, 'live');
    if (verdict.met && !begin) continue;
    const missed = verdict.goals.filter(({ met }) => !met).map(({ id }) => id);
    const findings = verdict.findings;
    return { kind: 'mend', challenge, faulty: design.drawing, findings, missed, sound: model.drawing };
  }
  return 'no-fault';
}

/** Small faults of a sound drawing, as they are made: a mark met from the wrong side, too small, too early, none; a gap in a line. */
function faultsOf({ drawing }: Design): Design[] {
  const { marks, lines } = drawing;
  const changed = (change: Partial<Drawing>): Design => ({ version: 1, drawing: { ...drawing, ...change } });
  const withMark = (at: number, change: (mark: (typeof marks)[number]) => (typeof marks)[number]) =>
    changed({ marks: marks.map((mark, i) => (i === at ? change(mark) : mark)) });
  const ofMarks = marks.flatMap((_, i) => [
    withMark(i, (mark) => ({ ...mark, bands: [...mark.bands].reverse() })),
    withMark(i, (mark) => ({
      ...mark,
      bands: mark.bands.map((band) => ({ ...band, length: band.length * 0.5 })),
    })),
    withMark(i, (mark) => ({ ...mark, at: 8 })),
    changed({ marks: marks.filter((__, j) => j !== i) }),
  ]);
  const broken = lines.flatMap((line) => {
    const halves = withGap(line);
    return halves.length === 0
      ? []
      : [changed({ lines: lines.flatMap((each) => (each === line ? halves : [each])) })];
  });
  return [...ofMarks, ...broken];
}

/** Wider than any robot finds its way over, and wide enough to be seen in a smaller picture. */
const GAP: Mm = 16;

/** A line in two parts with white between them; marks beyond the gap are lost with their place. */
function withGap(line: Line): Line[] {
  const path = pathOf(line);
  const from = path.length * 0.6;
  if (from < GAP || path.length - from - GAP < GAP) return [];
  const part = (id: string, s0: Mm, s1: Mm): Line => {
    const pieces = pathPart(path, s0, s1);
    return { ...line, id, from: pieces[0]!.from, pieces: pieces.map(({ to, bulge }) => ({ to, bulge })) };
  };
  return [part(line.id, 0, from), part(`${line.id}-on`.slice(0, 32), from + GAP, path.length)];
}

/** The right choice of a question, where it is one of a list. */
export const rightChoice = (question: Question, key: AnswerKey): Choice | undefined =>
  question.kind === 'how-many'
    ? undefined
    : question.choices.find((choice) => choice.key === key.get(question.id));
