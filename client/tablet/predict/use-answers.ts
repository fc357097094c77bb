import { useCallback, useEffect, useState } from 'react';
import { Answers, NO_ANSWERS } from '../../../shared/documents/answers.ts';
import { type DraftPlace, keepDraft, keptDraft } from '../build/drafts.ts';

export type Says = string | number;

export interface AnswersNow {
  readonly answers: Answers;
  readonly say: (question: string, says: Says) => void;
}

const saying = (answers: Answers, question: string, says: Says): Answers => ({
  ...answers,
  answers: [...answers.answers.filter((one) => one.question !== question), { question, says }],
});

/** What the team has answered so far, kept in this browser; null while that is looked up. */
export function useAnswers({ room, team, round, moves }: DraftPlace): AnswersNow | null {
  const [answers, setAnswers] = useState<Answers | null>(null);
  useEffect(() => {
    let here = true;
    void keptDraft(Answers, { room, team, round, moves }).then(
      (kept) => here && setAnswers(kept ?? NO_ANSWERS),
    );
    return () => {
      here = false;
    };
  }, [room, team, round, moves]);
  const say = useCallback(
    (question: string, says: Says) => {
      const now = saying(answers ?? NO_ANSWERS, question, says);
      setAnswers(now);
      void keepDraft(Answers, { room, team, round, moves }, now);
    },
    [answers, room, team, round, moves],
  );
  return answers && { answers, say };
}
