import { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import type { Judged, JudgeTask } from './judging.ts';

/**
 * Runs in a worker thread: reads the documents, asks the judge, writes the verdict. Traces are not
 * kept: every page makes them again from the same design, bit for bit.
 */
export default function judgeEntry(task: JudgeTask): Judged {
  const challenge = parseDocument(Challenge, JSON.parse(task.challenge));
  const design = parseDocument(Design, JSON.parse(task.design));
  if (!challenge.ok)
    throw new Error(`a challenge that was kept is not one: ${JSON.stringify(challenge.problems)}`);
  if (!design.ok) throw new Error(`a design that was kept is not one: ${JSON.stringify(design.problems)}`);
  const { verdict } = judge(challenge.value, design.value, 'entry');
  return { verdict: writeDocument(Verdict, verdict), points: verdict.total, met: verdict.met };
}
