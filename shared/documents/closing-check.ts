import * as z from 'zod/mini';
import { Action, Kit, Word } from './kit.ts';
import { MISTAKEN_REASONS, Reason } from './reason.ts';
import { Sheet } from './sheet.ts';
import { Id, Point, Texts } from './values.ts';

/** The last questions of a lesson, about drawings of the class; which answers are right is kept apart. */

export const MOST_CLOSING_QUESTIONS = 5;
/** For a lesson of 45 minutes. */
export const USUAL_CLOSING_QUESTIONS = 3;
const MOST_CHOICES = 4;

/** Mistakes that a wrong answer may come from. */
export const CLOSING_MISTAKES = [...MISTAKEN_REASONS, 'one-ink-mistaken'] as const;
export type ClosingMistake = (typeof CLOSING_MISTAKES)[number];

/** What a real robot did instead of what was foretold. */
export const REAL_TROUBLES = ['lost', 'other-branch'] as const;
export type RealTrouble = (typeof REAL_TROUBLES)[number];

const Key = z.string().check(z.regex(/^[A-Za-z0-9_:-]{1,80}$/));
const Start = z.enum(['start', 'finish']);

const ActionChoice = z.strictObject({ key: Key, kind: z.literal('action'), action: Action });
const EndChoice = z.discriminatedUnion('kind', [
  z.strictObject({ key: Key, kind: z.literal('berth'), berth: Start }),
  z.strictObject({ key: Key, kind: z.literal('area'), area: Id }),
  z.strictObject({
    key: Key,
    kind: z.literal('loose-end'),
    letter: z.string().check(z.regex(/^[A-Z][0-9]{0,3}$/)),
    at: Point,
  }),
  z.strictObject({ key: Key, kind: z.literal('elsewhere') }),
  z.strictObject({ key: Key, kind: z.literal('chance') }),
]);
const ReasonChoice = z.strictObject({ key: Key, kind: z.literal('reason'), reason: Reason });

const SEVERAL = [z.minLength(2), z.maxLength(MOST_CHOICES)] as const;

/** What is asked. Questions about a mark and an end are those of a challenge that is predicted. */
export const ClosingAsk = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('mark'),
    start: Start,
    mark: Id,
    choices: z.array(ActionChoice).check(...SEVERAL),
  }),
  z.strictObject({ kind: z.literal('end'), start: Start, choices: z.array(EndChoice).check(...SEVERAL) }),
  /**
   * Why the robot does not do what it should, or a real one did not do as foretold; `at`: where that can be seen,
   * absent where all is driven as drawn.
   */
  z.strictObject({
    kind: z.literal('why'),
    start: Start,
    real: z.optional(z.enum(REAL_TROUBLES)),
    at: z.optional(Point),
    choices: z.array(ReasonChoice).check(...SEVERAL),
  }),
]);

export const ClosingQuestion = z.strictObject({
  kit: Kit,
  /** With the drawing among what is given: whose it is is not said. */
  sheet: Sheet,
  /** What the robot should do. */
  sentence: Texts,
  ask: ClosingAsk,
});

export const ClosingCheck = z.strictObject({
  version: z.literal(1),
  questions: z.array(ClosingQuestion).check(z.minLength(1), z.maxLength(MOST_CLOSING_QUESTIONS)),
});

/** The right answer of one question, and what mistake each other one comes from. */
export const ClosingAnswer = z.strictObject({
  right: Key,
  /** What the robot reads, where a mark is asked about. */
  word: z.optional(Word),
  mistakes: z
    .array(z.strictObject({ choice: Key, mistake: z.enum(CLOSING_MISTAKES) }))
    .check(z.maxLength(MOST_CHOICES)),
});
export const ClosingKey = z.array(ClosingAnswer).check(z.minLength(1), z.maxLength(MOST_CLOSING_QUESTIONS));

export type ClosingAsk = z.output<typeof ClosingAsk>;
export type ClosingChoice = ClosingAsk['choices'][number];
export type ClosingQuestion = z.output<typeof ClosingQuestion>;
export type ClosingCheck = z.output<typeof ClosingCheck>;
export type ClosingAnswer = z.output<typeof ClosingAnswer>;
export type ClosingKey = z.output<typeof ClosingKey>;

/** Whether an answer may be given to a question at all. */
export const isChoice = ({ right, mistakes }: ClosingAnswer, picked: string): boolean =>
  picked === right || mistakes.some(({ choice }) => choice === picked);
