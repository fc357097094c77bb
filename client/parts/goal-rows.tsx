import { Check, Dices, X } from 'lucide-react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { GoalResult, PointLine } from '../../shared/documents/verdict.ts';
import { Icon } from './icon.tsx';
import type { WaysOfGoals } from './judge-here.ts';
import { useWords } from './use-words.ts';
import './goal-rows.css';

export interface GoalRowsProps {
  readonly challenge: Challenge;
  /** Absent: the goals are only named. */
  readonly results?: readonly GoalResult[] | undefined;
  /** In how many ways missed goals are missed, where there are several. */
  readonly ways?: WaysOfGoals | undefined;
  /** Shown at the end of each row that a line belongs to. */
  readonly points?: readonly PointLine[] | undefined;
  readonly iconSize?: number | string;
  /** Whether it is said by how much. */
  readonly margins?: boolean;
}

/** Each goal in a few words, whether it is met and by how much. */
export function GoalRows({ challenge, results, ways, points, iconSize = 18, margins = true }: GoalRowsProps) {
  const { goals } = useWords();
  return (
    <ul className="goal-rows">
      {challenge.goals.map((goal) => {
        const result = results?.find((each) => each.id === goal.id);
        const line = points?.find((each) => each.reason === `goal:${goal.id}`);
        return (
          <li key={goal.id} className="goal-row" data-stand={result ? standOf(result) : 'open'}>
            {result && <GoalIcon result={result} size={iconSize} />}
            <span className="goal-words">
              <span className="goal-short">{goals.short(goal.formula, challenge.sheet, goal.start)}</span>
              {result && margins && (
                <span className="goal-margin">{goals.far(result, goal.formula, ways?.[goal.id])}</span>
              )}
            </span>
            {line && <GoalPoints line={line} />}
          </li>
        );
      })}
    </ul>
  );
}

function GoalPoints({ line }: { readonly line: PointLine }) {
  const { stands } = useWords().judging;
  return <span className="goal-points">{stands.outOf(line.got, line.of)}</span>;
}

const standOf = (result: GoalResult) => (result.met ? 'met' : result.leftToLuck ? 'luck' : 'missed');

function GoalIcon({ result, size }: { readonly result: GoalResult; readonly size: number | string }) {
  const { stands } = useWords().judging;
  if (result.met) return <Icon of={Check} size={size} label={stands.met} />;
  return result.leftToLuck ? (
    <Icon of={Dices} size={size} label={stands.luck} />
  ) : (
    <Icon of={X} size={size} label={stands.notMet} />
  );
}
