import { Circle, CircleCheck, Dices } from 'lucide-react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface GoalsHeadProps {
  readonly challenge: Challenge;
  readonly results: readonly GoalResult[] | null;
  /** The results are those of a drawing that has changed since. */
  readonly stale: boolean;
}

/** The goals in the head of the page: open, until the drawing meets them, and by how much. */
export function GoalsHead({ challenge, results, stale }: GoalsHeadProps) {
  const words = useWords();
  const { building } = words.tablet;
  return (
    <ul className="goals-head" data-stale={stale} data-many={challenge.goals.length > 2}>
      {challenge.goals.map((goal) => {
        const result = results?.find((each) => each.id === goal.id);
        const icon = result?.met ? CircleCheck : result?.leftToLuck ? Dices : Circle;
        return (
          <li key={goal.id} data-met={result?.met ?? false}>
            <Icon of={icon} size={24} label={result?.met ? building.met : building.open} />
            <span>
              <span className="goal-name">{words.goals.short(goal.formula, challenge.sheet)}</span>{' '}
              {result && <span className="goal-far">{words.goals.margin(result, goal.formula)}</span>}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
