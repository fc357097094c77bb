import { Plus, Trash2 } from 'lucide-react';
import type { Formula } from '../../../shared/documents/formula.ts';
import { PACES } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import type { ChoiceOf, Clause, Field } from './formula-form.ts';
import { Choose, LengthField, LONGEST_TIME, NumberField, Tick } from './inputs.tsx';

export interface FieldEditorProps {
  readonly field: Field;
  readonly formula: Clause;
  readonly sheet: Sheet;
  readonly onChange: (formula: Clause) => void;
}

/** The widest sheet once round, mm: no robot drives further in its time. */
const FURTHEST = 20_000;
const ROBOTS = 20;

/** One thing of a predicate: a list, a number, gates in their order. */
export function FieldEditor({ field, formula, sheet, onChange }: FieldEditorProps) {
  const { wish } = useWholeWords().builder;
  const value = (formula as unknown as Record<string, unknown>)[field.key];
  const set = (now: unknown) => {
    const { [field.key]: _, ...rest } = formula as unknown as Record<string, unknown>;
    onChange((now === undefined ? rest : { ...rest, [field.key]: now }) as unknown as Formula);
  };
  const kept = (now: unknown) => set(now ?? value);
  if (field.is === 'gates') return <Gates gates={value as string[]} sheet={sheet} onChange={set} />;
  if (field.is === 'tick') return <Tick label={wish.ordered} checked={value === true} onChange={set} />;
  if (field.is === 'one-of')
    return <ChoiceEditor of={field.of} value={value as string | undefined} sheet={sheet} onChange={set} />;
  const label = wish.number(formula.kind as never, field.key);
  const common = { label, value: value as number, onChange: kept };
  switch (field.of) {
    case 'length':
      return <LengthField {...common} most={FURTHEST} />;
    case 'time':
      return <NumberField {...common} least={0} most={LONGEST_TIME} step={0.5} unit={wish.seconds} />;
    case 'share':
      return (
        <NumberField
          label={label}
          value={Math.round((value as number) * ROBOTS)}
          onChange={(robots) => kept(robots === undefined ? undefined : robots / ROBOTS)}
          least={1}
          most={ROBOTS}
          unit={wish.ofRobots(ROBOTS)}
        />
      );
    case 'count':
      return <NumberField {...common} least={0} most={99} />;
  }
}

interface ChoiceEditorProps {
  readonly of: ChoiceOf;
  readonly value: string | undefined;
  readonly sheet: Sheet;
  readonly onChange: (value: string | undefined) => void;
}

const FINISH = '';

function ChoiceEditor({ of, value, sheet, onChange }: ChoiceEditorProps) {
  const words = useWholeWords();
  const locale = useLocale();
  const { wish } = words.builder;
  const areas = sheet.areas.map(({ id, name }) => [id, textIn(name, locale)] as const);
  const options = {
    pace: PACES.map((pace) => [pace, words.actions.pace(pace)] as const),
    how: (['exactly', 'at-least', 'at-most'] as const).map((how) => [how, wish.how(how)] as const),
    'how-much': (['at-least', 'at-most'] as const).map((how) => [how, wish.how(how)] as const),
    act: (['wait', 'signal'] as const).map((act) => [act, wish.act(act)] as const),
    area: areas,
    'area-or-finish': [[FINISH, wish.inFinish] as const, ...areas],
  }[of] as readonly (readonly [string, string])[];
  const known = options.some(([key]) => key === (value ?? FINISH));
  return (
    <Choose
      label={wish.choice(of)}
      value={value ?? FINISH}
      options={known ? options : [[value ?? FINISH, wish.noPlace], ...options]}
      onChange={(now) => onChange(now === FINISH ? undefined : now)}
    />
  );
}

interface GatesProps {
  readonly gates: readonly string[];
  readonly sheet: Sheet;
  readonly onChange: (gates: readonly string[]) => void;
}

/** A gate may be passed more than once. */
function Gates({ gates, sheet, onChange }: GatesProps) {
  const { wish } = useWholeWords().builder;
  const locale = useLocale();
  const named = sheet.gates.map(({ id, name }) => [id, textIn(name, locale)] as const);
  const numbered = gates.map((gate, at) => ({ gate, at }));
  return (
    <div className="formula-gates">
      {numbered.map(({ gate, at }) => (
        <div key={at} className="formula-gate">
          <Choose
            label={wish.gate(at + 1)}
            value={gate}
            options={named.some(([id]) => id === gate) ? named : [[gate, wish.noPlace], ...named]}
            onChange={(now) => onChange(gates.map((each, i) => (i === at ? now : each)))}
          />
          {gates.length > 1 && (
            <Button
              look="quiet"
              icon={<Icon of={Trash2} />}
              aria-label={wish.lessGate(at + 1)}
              title={wish.less}
              onClick={() => onChange(gates.filter((_, i) => i !== at))}
            />
          )}
        </div>
      ))}
      <Button
        icon={<Icon of={Plus} />}
        disabled={named.length === 0}
        onClick={() => onChange([...gates, named[0]![0]])}
      >
        {wish.moreGates}
      </Button>
    </div>
  );
}
