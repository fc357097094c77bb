import { Circle, CircleCheck, Dices, ScrollText } from 'lucide-react';
import { useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Hear } from '../../parts/hear.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { MissedWays, WaysOfGoals } from '../../parts/judge-here.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';

export interface GoalsHeadProps {
  readonly challenge: Challenge;
  readonly results: readonly GoalResult[] | null;
  readonly ways: WaysOfGoals;
  /** Opens the sheet in words. */
  readonly onRead: () => void;
}

/** The goals in the head of the page: open, until the drawing meets them, and by how much. */
export function GoalsHead({ challenge, results, ways, onRead }: GoalsHeadProps) {
  const words = useWords();
  const { building } = words.tablet;
  const heard = challenge.goals.map((goal) =>
    words.goals.sentence(goal.formula, challenge.sheet, goal.start),
  );
  const sentence = textIn(challenge.sentence, useLocale());
  const [open, setOpen] = useState(false);
  return (
    <>
      <h1 className="only-read-aloud">{sentence}</h1>
      <button
        type="button"
        className="goals-head"
        data-many={challenge.goals.length > 2}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        {challenge.goals.map((goal) => (
          <GoalShort
            key={goal.id}
            challenge={challenge}
            goal={goal}
            result={results?.find((each) => each.id === goal.id)}
            ways={ways[goal.id]}
          />
        ))}
      </button>
      <Dialog open={open} title={building.goals} closeWord={building.close} onClose={() => setOpen(false)}>
        <p className="goals-sentence">{sentence}</p>
        <ul className="goals-full">
          {challenge.goals.map((goal) => (
            <GoalFull
              key={goal.id}
              challenge={challenge}
              goal={goal}
              result={results?.find((each) => each.id === goal.id)}
              ways={ways[goal.id]}
            />
          ))}
        </ul>
        <div className="goals-buttons">
          <Hear text={[sentence, ...heard].join(' ')} />
          <Button
            look="quiet"
            icon={<Icon of={ScrollText} size={24} />}
            onClick={() => {
              setOpen(false);
              onRead();
            }}
          >
            {words.reading.title}
          </Button>
        </div>
      </Dialog>
    </>
  );
}

interface GoalProps {
  readonly challenge: Challenge;
  readonly goal: Challenge['goals'][number];
  readonly result: GoalResult | undefined;
  readonly ways: MissedWays | undefined;
}

function GoalIcon({ result }: { readonly result: GoalResult | undefined }) {
  const { building } = useWords().tablet;
  const icon = result?.met ? CircleCheck : result?.leftToLuck ? Dices : Circle;
  return <Icon of={icon} size={24} label={result?.met ? building.met : building.open} />;
}

function GoalShort({ challenge, goal, result, ways }: GoalProps) {
  const { goals } = useWords();
  return (
    <span className="goal-in-head" data-met={result?.met ?? false}>
      <GoalIcon result={result} />
      <span>
        <span className="goal-name">{goals.short(goal.formula, challenge.sheet, goal.start)}</span>{' '}
        {result && <span className="goal-far">{goals.far(result, goal.formula, ways)}</span>}
      </span>
    </span>
  );
}

function GoalFull({ challenge, goal, result, ways }: GoalProps) {
  const { goals } = useWords();
  return (
    <li data-met={result?.met ?? false}>
      <GoalIcon result={result} />
      <span>
        {goals.sentence(goal.formula, challenge.sheet, goal.start)}
        {result && <span className="goal-far">{goals.far(result, goal.formula, ways)}</span>}
      </span>
    </li>
  );
}
