import type * as z from 'zod/mini';
import { Answers, AnswersVerdict } from '../../shared/documents/answers.ts';
import { AS_IT_IS, Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import { judgeAnswers } from '../../shared/judge/predict.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import type { Judged, JudgeTask } from './judging.ts';

/**
 * Runs in a worker thread: reads the documents, asks the judge, writes the verdict. Traces are not
 * kept: every page makes them again from the same design, bit for bit.
 */
export default function judgeEntry(task: JudgeTask): Judged {
  const challenge = challengeUnder(task.drawnIn ?? AS_IT_IS, read('challenge', Challenge, task.challenge));
  if (challenge.play === 'predict') {
    const verdict = judgeAnswers(challenge, read('answers', Answers, task.design));
    const met = verdict.right === verdict.questions;
    const written = writeDocument(AnswersVerdict, verdict);
    return { verdict: written, points: verdict.total, met };
  }
  const { verdict } = judge(challenge, read('design', Design, task.design), 'entry');
  const written = writeDocument(Verdict, verdict);
  return { verdict: written, points: verdict.total, met: verdict.met };
}

function read<T>(name: string, schema: z.ZodMiniType<T, unknown>, text: string): T {
  const document = parseDocument(schema, JSON.parse(text));
  if (document.ok) return document.value;
  throw new Error(`a ${name} that was kept is not one: ${JSON.stringify(document.problems)}`);
}
