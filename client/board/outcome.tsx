import type { Answers } from '../../shared/documents/answers.ts';
import type { GoalResult } from '../../shared/documents/verdict.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { AnswerRows } from '../parts/answer-rows.tsx';
import { GoalRows } from '../parts/goal-rows.tsx';
import { seenAt } from '../parts/goal-times.ts';
import { useStageLook, useStageTime } from '../parts/stage-clock.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import type { Staged } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { useSlowTime } from './use-slow-time.ts';

/** A run counts as over so much before its end, s: the page looks four times a second. */
const NEAR: Seconds = 0.05;

export interface OutcomeProps {
  readonly staged: Staged;
  readonly duration: Seconds;
}

/** The goals that the run has shown by `t`; at its end all of which anything is known. */
export function seenResults({ challenge, judged, traces }: Staged, t: Seconds): GoalResult[] {
  return judged.verdict.goals.filter((result) => {
    if (result.open) return false;
    const goal = challenge.goals.find((each) => each.id === result.id);
    return !goal || t >= seenAt(goal, result, traces, judged) - NEAR;
  });
}

/** Whether all of a run has been shown. */
export const isOver = (t: Seconds, duration: Seconds): boolean => t >= duration - NEAR;

/** Goals turn as the run shows them; margins stand there at the end. */
export function Outcome({ staged, duration }: OutcomeProps) {
  const { stage } = useWords();
  const { challenge, judged, answers, replayed } = staged;
  const { whole } = useStageLook();
  const now = useSlowTime(
    useStageTime(duration),
    (t) => `${seenResults(staged, t).length} ${isOver(t, duration)}`,
  );
  const t = whole ? duration : now;
  const ended = isOver(t, duration);
  return (
    <section className="outcome">
      {answers ? (
        <Predicted staged={staged} answers={answers} told={ended} />
      ) : (
        <GoalRows
          challenge={challenge}
          results={seenResults(staged, t)}
          ways={judged.ways}
          margins={ended}
          iconSize="1.1em"
        />
      )}
      {replayed !== 'same' && <p className="one-way">{stage.replayed(replayed)}</p>}
    </section>
  );
}

interface PredictedProps {
  readonly staged: Staged;
  readonly answers: Answers;
  /** Whether the run has shown by now what is right. */
  readonly told: boolean;
}

/** What is supposed has other answers than those that were asked for: none is then marked. */
function Predicted({ staged: { challenge, entry, whatIf }, answers, told }: PredictedProps) {
  const verdict = hereOf(useDocument('answers-verdict', entry.verdict?.document ?? null));
  const known = told && verdict && whatIf === null ? { verdict } : {};
  return <AnswerRows challenge={challenge} answers={answers} {...known} iconSize="1.1em" short />;
}
