import { useCallback, useEffect, useState } from 'react';
import { Answers, NO_ANSWERS } from '../../../shared/documents/answers.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import type { TeamId } from '../../../shared/room/state.ts';
import type { Link } from '../../link/connect.ts';
import { useLink } from '../../parts/use-link.tsx';
import { type DraftPlace, keepDraft, keptDraft, readAs } from '../build/drafts.ts';

export type Says = string | number;

export interface AnswersNow {
  readonly answers: Answers;
  readonly say: (question: string, says: Says) => void;
}

const saying = (answers: Answers, question: string, says: Says): Answers => ({
  ...answers,
  answers: [...answers.answers.filter((one) => one.question !== question), { question, says }],
});

/** What the server has kept, where the seat moved here. */
function serverAnswers(link: Link, team: TeamId, round: number): Answers | null {
  const draft = link.state().drafts[team];
  return draft?.round === round ? readAs(Answers, draft.answers) : null;
}

const tellAnswers = (link: Link, round: number, answers: Answers): void =>
  link.tell({ kind: 'draft', round, answers: writeDocument(Answers, answers) });

/**
 * What the team has answered so far, as it was left: in this browser, else as the server kept it; null
 * while that is looked up.
 */
export function useAnswers({ room, team, round, moves }: DraftPlace): AnswersNow | null {
  const link = useLink();
  const [answers, setAnswers] = useState<Answers | null>(null);
  useEffect(() => {
    let here = true;
    void keptDraft(Answers, { room, team, round, moves }).then((kept) => {
      if (!here) return;
      const first = kept ?? serverAnswers(link, team, round) ?? NO_ANSWERS;
      setAnswers(first);
      if (first.answers.length > 0) tellAnswers(link, round, first);
    });
    return () => {
      here = false;
    };
  }, [link, room, team, round, moves]);
  const say = useCallback(
    (question: string, says: Says) => {
      const now = saying(answers ?? NO_ANSWERS, question, says);
      setAnswers(now);
      void keepDraft(Answers, { room, team, round, moves }, now);
      tellAnswers(link, round, now);
    },
    [answers, link, room, team, round, moves],
  );
  return answers && { answers, say };
}
