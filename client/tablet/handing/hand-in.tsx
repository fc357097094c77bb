import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { GoalRows } from '../../parts/goal-rows.tsx';
import { useJudged } from '../../parts/judging.ts';
import { MeritRows } from '../../parts/merit-rows.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useStudy } from '../../parts/studying.ts';
import { useWords } from '../../parts/use-words.ts';
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
  // As an entry is scored, once its robots have been driven.
  const { entry } = useStudy(challenge, open ? design : null);
  const verdict = entry ?? judged?.verdict;
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
              <p className="quiet-words">
                {handing.asItIs} {entry && <strong>{handing.points(entry.total)}</strong>}
              </p>
              <GoalRows
                challenge={challenge}
                results={verdict?.goals}
                ways={judged?.ways}
                points={verdict?.points}
              />
              {verdict && <MeritRows challenge={challenge} points={verdict.points} />}
            </>
          )}
          {late && <Notice tone="caution">{handing.late}</Notice>}
          <p className="quiet-words">{handing.best}</p>
        </div>
      </div>
    </HandInFrame>
  );
}
