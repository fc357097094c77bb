import { Plus, Trash2 } from 'lucide-react';
import type { Formula, Until, Window } from '../../../shared/documents/formula.ts';
import { isPredicate } from '../../../shared/documents/formula.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWholeWords } from '../whole-words.ts';
import { FieldEditor } from './formula-fields.tsx';
import {
  type Clause,
  FIELDS,
  type FormulaKind,
  kindsAt,
  type Level,
  levelIn,
  MOST_PARTS,
  ofKind,
  partsOf,
  withParts,
} from './formula-form.ts';
import { Choose, LONGEST_TIME, NumberField } from './inputs.tsx';

export interface FormulaEditorProps {
  readonly formula: Clause;
  readonly level: Level;
  readonly sheet: Sheet;
  readonly onChange: (formula: Clause) => void;
}

/** A wish as a list of what it can be, what it needs, and the wishes in it, each the same again. */
export function FormulaEditor({ formula, level, sheet, onChange }: FormulaEditorProps) {
  const { wish } = useWholeWords().builder;
  const { wishes, operators } = kindsAt(level);
  const name = level.moment ? wish.moment : wish.run;
  return (
    <div className="formula">
      <p className="builder-field formula-kind">
        <select
          aria-label={level.moment ? wish.whichMoment : wish.which}
          value={formula.kind}
          onChange={(event) => onChange(ofKind(formula, event.target.value as FormulaKind, level, sheet))}
        >
          <optgroup label={wish.plain}>
            {wishes.map((kind) => (
              <option key={kind} value={kind}>
                {name(kind)}
              </option>
            ))}
          </optgroup>
          {operators.length > 0 && (
            <optgroup label={wish.together}>
              {operators.map((kind) => (
                <option key={kind} value={kind}>
                  {wish.operator(kind)}
                </option>
              ))}
            </optgroup>
          )}
        </select>
      </p>
      {isPredicate(formula) ? (
        <div className="formula-fields">
          {FIELDS[formula.kind].map((field) => (
            <FieldEditor key={field.key} field={field} formula={formula} sheet={sheet} onChange={onChange} />
          ))}
        </div>
      ) : (
        <>
          <Parts formula={formula} level={level} sheet={sheet} onChange={onChange} />
          <Times formula={formula} onChange={onChange} />
        </>
      )}
    </div>
  );
}

function Parts({ formula, level, sheet, onChange }: FormulaEditorProps) {
  const { wish } = useWholeWords().builder;
  const parts = partsOf(formula);
  const inside = levelIn(level, formula.kind);
  const isList = formula.kind === 'and' || formula.kind === 'or';
  const put = (at: number, part: Clause) =>
    onChange(
      withParts(
        formula,
        parts.map((each, i) => (i === at ? part : each)),
      ),
    );
  const more = () => onChange(withParts(formula, [...parts, parts.at(-1)!]));
  const less = (at: number) =>
    onChange(
      withParts(
        formula,
        parts.filter((_, i) => i !== at),
      ),
    );
  const numbered = parts.map((part, at) => ({ part, at }));
  return (
    <div className="formula-parts">
      {numbered.map(({ part, at }) => (
        <fieldset key={at} className="formula-part">
          <legend>{wish.part(formula.kind, at)}</legend>
          <FormulaEditor formula={part} level={inside} sheet={sheet} onChange={(now) => put(at, now)} />
          {isList && parts.length > 1 && (
            <Button
              look="quiet"
              icon={<Icon of={Trash2} />}
              aria-label={wish.lessOf(at + 1)}
              onClick={() => less(at)}
            >
              {wish.less}
            </Button>
          )}
        </fieldset>
      ))}
      {isList && parts.length < MOST_PARTS && (
        <Button icon={<Icon of={Plus} />} onClick={more}>
          {wish.more}
        </Button>
      )}
    </div>
  );
}

/** When, and for how long. */
function Times({ formula, onChange }: Pick<FormulaEditorProps, 'formula' | 'onChange'>) {
  const { wish } = useWholeWords().builder;
  const seconds = { least: 0, most: LONGEST_TIME, step: 0.5, unit: wish.seconds };
  if (formula.kind === 'until')
    return (
      <NumberField
        {...seconds}
        label={wish.within}
        value={formula.within}
        empty
        onChange={(within) => onChange(withinTime(formula, within))}
      />
    );
  if (formula.kind === 'lasting')
    return (
      <div className="formula-fields">
        <Choose
          label={wish.howLong}
          quiet
          value={formula.how}
          options={(['at-least', 'at-most'] as const).map((how) => [how, wish.how(how)] as const)}
          onChange={(how) => onChange({ ...formula, how })}
        />
        <NumberField
          {...seconds}
          label={wish.inAll}
          value={formula.time}
          onChange={(time) => onChange({ ...formula, time: time ?? formula.time })}
        />
      </div>
    );
  if (formula.kind !== 'always' && formula.kind !== 'eventually') return null;
  const { window } = formula;
  const set = (now: Window) => onChange(withWindow(formula, now));
  return (
    <div className="formula-fields">
      <NumberField
        {...seconds}
        label={wish.from}
        value={window?.from ?? 0}
        onChange={(from = 0) => set({ ...window, from })}
      />
      <NumberField
        {...seconds}
        label={wish.to}
        value={window?.to}
        empty
        onChange={(to) =>
          set(to === undefined ? { from: window?.from ?? 0 } : { from: window?.from ?? 0, to })
        }
      />
    </div>
  );
}

function withinTime(formula: Until, within: number | undefined): Clause {
  const { within: _, ...rest } = formula;
  return within === undefined ? rest : { ...rest, within };
}

/** A window that leaves nothing out is none. */
function withWindow(formula: Extract<Formula, { kind: 'always' | 'eventually' }>, window: Window): Clause {
  const { window: _, ...rest } = formula;
  return window.from === 0 && window.to === undefined ? rest : { ...rest, window };
}
