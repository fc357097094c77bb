import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Entry } from '../../../shared/room/state.ts';
import { AnswerRows } from '../../parts/answer-rows.tsx';
import { hereOf, useDocument } from '../../parts/use-document.ts';

export interface PredictedEntryProps {
  readonly entry: Entry;
  readonly challenge: Challenge;
}

/** What was answered, and once it is judged, which answers are right. The others may be thought over. */
export function PredictedEntry({ entry, challenge }: PredictedEntryProps) {
  const answers = hereOf(useDocument('answers', entry.design));
  const verdict = hereOf(useDocument('answers-verdict', entry.verdict?.document ?? null));
  return answers && <AnswerRows challenge={challenge} answers={answers} verdict={verdict ?? undefined} />;
}
