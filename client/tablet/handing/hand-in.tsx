import type { Challenge } from '../../../shared/documents/challenge.ts';
import { GoalRows } from '../../parts/goal-rows.tsx';
import { useJudged } from '../../parts/judging.ts';
import { Miniature } from '../../parts/miniature.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from '../build/session.ts';
import { useSessionState } from '../build/use-session.ts';
import { HandInFrame } from './hand-in-frame.tsx';

export interface HandInDialogProps {
  readonly open: boolean;
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly late: boolean;
  readonly onClose: () => void;
  readonly onYes: () => void;
}

/** What is scored, and how the drawing stands, before it is handed in. */
export function HandInDialog({ open, challenge, session, late, onClose, onYes }: HandInDialogProps) {
  const { handing } = useWords().tablet;
  const design = useSessionState(session, ({ editor }) => editor.design);
  const judged = useJudged(challenge, open ? design : null);
  const { lines, marks } = design.drawing;
  const empty = lines.length + marks.length === 0;
  const allMust = challenge.goals.every((goal) => goal.must);
  return (
    <HandInFrame open={open} title={handing.title} empty={empty} onClose={onClose} onYes={onYes}>
      <div className="handing">
        <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={design.drawing} />
        <div className="handing-words">
          <p>{handing.scored(allMust ? handing.mustAll : '')}</p>
          {empty ? (
            <Notice>{handing.empty}</Notice>
          ) : (
            <>
              <p className="quiet-words">{handing.asItIs}</p>
              <GoalRows
                challenge={challenge}
                results={judged?.verdict.goals}
                ways={judged?.ways}
                points={judged?.verdict.points}
              />
            </>
          )}
          {late && <Notice tone="caution">{handing.late}</Notice>}
          <p className="quiet-words">{handing.best}</p>
        </div>
      </div>
    </HandInFrame>
  );
}
