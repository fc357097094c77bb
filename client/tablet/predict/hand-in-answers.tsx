import type { Answers } from '../../../shared/documents/answers.ts';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { AnswerRows } from '../../parts/answer-rows.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/use-words.ts';
import { HandInFrame } from '../handing/hand-in-frame.tsx';

export interface HandInAnswersProps {
  readonly open: boolean;
  readonly challenge: Challenge;
  readonly answers: Answers;
  readonly late: boolean;
  readonly onClose: () => void;
  readonly onYes: () => void;
}

/** What was answered so far, before it is handed in. */
export function HandInAnswers({ open, challenge, answers, late, onClose, onYes }: HandInAnswersProps) {
  const { handing, predicting } = useWords().tablet;
  const empty = answers.answers.length === 0;
  return (
    <HandInFrame open={open} title={predicting.handInTitle} empty={empty} onClose={onClose} onYes={onYes}>
      <div className="handing-words">
        <p>{predicting.scored}</p>
        {empty && <Notice>{predicting.empty}</Notice>}
        <AnswerRows challenge={challenge} answers={answers} />
        {late && <Notice tone="caution">{handing.late}</Notice>}
        <p className="quiet-words">{handing.best}</p>
      </div>
    </HandInFrame>
  );
}
