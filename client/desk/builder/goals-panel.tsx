import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import type { Challenge, Goal } from '../../../shared/documents/challenge.ts';
import type { Formula } from '../../../shared/documents/formula.ts';
import { LOCALES } from '../../../shared/documents/values.ts';
import type { Wording } from '../../../shared/wording/wording.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { AsksForm } from './asks-form.tsx';
import { FormulaEditor } from './formula-editor.tsx';
import { TOP } from './formula-form.ts';
import { Choose, NumberField, Tick } from './inputs.tsx';
import { useOtherWords } from './other-words.ts';
import { useChallenge, type Work } from './work.ts';

const MOST_GOALS = 8;

/** What must come true, or what is asked where all is given. */
export function GoalsPanel({ work }: { readonly work: Work }) {
  const { builder } = useWholeWords();
  const challenge = useChallenge(work);
  const { goals, play } = challenge;
  const [open, setOpen] = useState<string | null>(goals[0]?.id ?? null);
  if (play === 'predict') return <AsksForm work={work} />;
  const put = (now: readonly Goal[], what: string | null = null) =>
    work.change({ ...challenge, goals: [...now] }, what);
  const add = () => {
    const goal = newGoal(challenge);
    put([...goals, goal]);
    setOpen(goal.id);
  };
  return (
    <div className="builder-panel">
      <h2>{builder.goals.title}</h2>
      {goals.length === 0 && <p className="desk-quiet">{builder.goals.none}</p>}
      <ol className="builder-goals">
        {goals.map((goal) => (
          <GoalItem
            key={goal.id}
            goal={goal}
            challenge={challenge}
            open={goal.id === open}
            onOpen={() => setOpen(goal.id === open ? null : goal.id)}
            onChange={(now) =>
              put(
                goals.map((each) => (each === goal ? now : each)),
                `goal ${goal.id}`,
              )
            }
            onRemove={() => put(goals.filter((each) => each !== goal))}
          />
        ))}
      </ol>
      <Button icon={<Icon of={Plus} />} disabled={goals.length >= MOST_GOALS} onClick={add}>
        {builder.goals.add}
      </Button>
    </div>
  );
}

function newGoal({ goals, sheet }: Challenge): Goal {
  let n = goals.length + 1;
  while (goals.some(({ id }) => id === String(n))) n++;
  const formula: Formula = sheet.finish ? { kind: 'finish' } : { kind: 'stay-on-paper' };
  return { id: String(n), formula, must: true, weight: 1 };
}

interface GoalItemProps {
  readonly goal: Goal;
  readonly challenge: Challenge;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly onChange: (goal: Goal) => void;
  readonly onRemove: () => void;
}

function GoalItem({ goal, challenge, open, onOpen, onChange, onRemove }: GoalItemProps) {
  const { builder } = useWholeWords();
  const { sheet } = challenge;
  return (
    <li className="builder-goal" data-open={open}>
      <Sentence goal={goal} challenge={challenge} />
      <div className="builder-goal-acts">
        <Button aria-expanded={open} onClick={onOpen}>
          {open ? builder.goals.shut : builder.goals.open(goal.id)}
        </Button>
        <Button
          look="quiet"
          icon={<Icon of={Trash2} />}
          aria-label={builder.goals.removeThis(goal.id)}
          title={builder.goals.remove}
          onClick={onRemove}
        />
      </div>
      {open && (
        <div className="builder-goal-form">
          <FormulaEditor
            formula={goal.formula}
            level={TOP}
            sheet={sheet}
            onChange={(formula) => onChange({ ...goal, formula: formula as Formula })}
          />
          <div className="formula-fields">
            <Tick
              label={builder.goals.must}
              checked={goal.must}
              onChange={(must) => onChange({ ...goal, must })}
            />
            <NumberField
              label={builder.goals.weight}
              value={goal.weight}
              least={1}
              most={100}
              onChange={(weight) => weight !== undefined && onChange({ ...goal, weight: Math.round(weight) })}
            />
            {(challenge.starts.length > 1 || goal.start !== undefined) && (
              <TravellerChoice goal={goal} onChange={onChange} />
            )}
          </div>
        </div>
      )}
    </li>
  );
}

function TravellerChoice({ goal, onChange }: Pick<GoalItemProps, 'goal' | 'onChange'>) {
  const { builder } = useWholeWords();
  const pick = (start: 'both' | 'start' | 'finish') => {
    const { start: _, ...rest } = goal;
    onChange(start === 'both' ? rest : { ...rest, start });
  };
  return (
    <Choose
      label={builder.goals.whose}
      value={goal.start ?? 'both'}
      options={(['both', 'start', 'finish'] as const).map((who) => [who, builder.goals.who(who)] as const)}
      onChange={pick}
    />
  );
}

/** The goal as one sentence in each language: first that of this device. */
function Sentence({ goal, challenge }: Pick<GoalItemProps, 'goal' | 'challenge'>) {
  const words = useWholeWords();
  const locale = useLocale();
  const other = useOtherWords();
  const said = (of: Wording) => of.goals.sentence(goal.formula, challenge.sheet, goal.start);
  return (
    <p className="builder-sentence">
      <span className="builder-goal-number">{goal.id}</span>
      <span lang={locale}>{said(words)}</span>
      {other && (
        <span className="desk-quiet" lang={LOCALES.find((each) => each !== locale)}>
          {said(other)}
        </span>
      )}
    </p>
  );
}
