import * as z from 'zod/mini';

/** The most questions that one challenge may come to. */
export const MOST_QUESTIONS = 60;

/** The id of a question, or the key of one of its choices. */
const Key = z.string().check(z.regex(/^[A-Za-z0-9_:-]{1,80}$/));

export const Answer = z.strictObject({
  question: Key,
  /** The key of the chosen answer, or a number of robots. */
  says: z.union([Key, z.int().check(z.gte(0), z.lte(100))]),
});

/** What a team predicts, in place of a design. Questions may be left out; none is answered twice. */
export const Answers = z
  .strictObject({
    version: z.literal(1),
    answers: z.array(Answer).check(z.maxLength(MOST_QUESTIONS)),
  })
  .check(
    z.refine((a) => new Set(a.answers.map((one) => one.question)).size === a.answers.length, {
      error: 'same-question-twice',
      path: ['answers'],
    }),
  );

/** What the judge says of answers. It never carries the key, so that a team may try again. */
export const AnswersVerdict = z.strictObject({
  version: z.literal(1),
  engine: z.int(),
  lines: z.array(z.strictObject({ question: z.string(), answered: z.boolean(), right: z.boolean() })),
  right: z.int(),
  questions: z.int(),
  /** 100 × right / questions, whole. */
  total: z.int(),
});

export type Answer = z.output<typeof Answer>;
export type Answers = z.output<typeof Answers>;
export type AnswersVerdict = z.output<typeof AnswersVerdict>;

export const NO_ANSWERS: Answers = { version: 1, answers: [] };
