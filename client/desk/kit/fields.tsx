import { createContext, type ReactNode, useContext, useId, useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { KitPath, KitProblem } from '../../../shared/kit/kit-problem.ts';
import { NoNames } from '../../parts/no-names.tsx';
import { useWholeWords } from '../whole-words.ts';
import { numberAt, SCALES, typedNumber, type Unit, withNumber } from './numbers.ts';

/** What the parts of the editor share: the kit, what is wrong with it, and how it is changed. */
export interface Editing {
  readonly kit: Kit;
  readonly problems: readonly KitProblem[];
  /** `place` names what is changed: more at the same place belong to one step of undo. */
  readonly change: (place: string, kit: Kit) => void;
}

export const EditingContext = createContext<Editing | null>(null);

export function useEditing(): Editing {
  const editing = useContext(EditingContext);
  if (!editing) throw new Error('a kit is edited inside of its editor');
  return editing;
}

const isAt = (problem: KitProblem, path: KitPath): boolean => problem.path.join('.') === path.join('.');

/** What is wrong at a place, as sentences; empty where nothing is. */
export function useProblemsAt(path: KitPath): string[] {
  const { judging } = useWholeWords();
  const { problems } = useEditing();
  return [
    ...new Set(problems.filter((one) => isAt(one, path)).map(({ code }) => judging.challengeProblem(code))),
  ];
}

export function ProblemsAt({ id, said }: { readonly id: string; readonly said: readonly string[] }) {
  if (said.length === 0) return null;
  return (
    <span id={id} className="kit-problem">
      {said.join(' ')}
    </span>
  );
}

/**
 * What is being typed, as long as the value is the one that it gives: after undo the field shows what came back.
 * Returned are the text (null: none), how to set it with the value that it gives, and how to end it.
 */
export function useTyped<T>(value: T): [string | null, (text: string, gives: T) => void, () => void] {
  const [typed, setTyped] = useState<{ readonly text: string; readonly gives: T } | null>(null);
  const text = typed !== null && typed.gives === value ? typed.text : null;
  return [text, (text, gives) => setTyped({ text, gives }), () => setTyped(null)];
}

export interface NumberFieldProps {
  readonly label: string;
  /** Its label stands elsewhere, and is only said. */
  readonly labelHidden?: boolean;
  readonly unit: Unit;
  readonly value: number;
  readonly said: readonly string[];
  readonly onChange: (value: number) => void;
}

/** A number with its unit. What is no number yet stays in the field until it is left, and changes nothing. */
export function NumberField({ label, labelHidden = false, unit, value, said, onChange }: NumberFieldProps) {
  const { numbers, kit: words } = useWholeWords();
  const [typed, setTyped, leave] = useTyped(value);
  const problemId = useId();
  const { shown, least, most } = SCALES[unit];
  const unfit = typed !== null && typedNumber(typed, unit) === null;
  const sentences = unfit ? [words.editor.between(String(least), String(most))] : said;
  const type = (text: string) => {
    const number = typedNumber(text, unit);
    setTyped(text, number ?? value);
    if (number !== null) onChange(number);
  };
  return (
    <div className="kit-number">
      <label>
        <span className={labelHidden ? 'only-read-aloud' : undefined}>{label}</span>
        <span className="kit-number-in">
          <input
            type="text"
            inputMode="decimal"
            value={typed ?? numbers.short(shown(value), 2)}
            aria-invalid={sentences.length > 0}
            aria-describedby={sentences.length > 0 ? problemId : undefined}
            onChange={(event) => type(event.target.value)}
            onBlur={leave}
          />
          {unit !== '' && <span className="kit-unit">{unit}</span>}
        </span>
      </label>
      <ProblemsAt id={problemId} said={sentences} />
    </div>
  );
}

export interface KitNumberProps extends Pick<NumberFieldProps, 'label' | 'labelHidden' | 'unit'> {
  readonly path: KitPath;
}

/** A number that stands at a place of the kit. */
export function KitNumber({ path, ...look }: KitNumberProps) {
  const { kit, change } = useEditing();
  const said = useProblemsAt(path);
  const onChange = (value: number) => change(path.join('.'), withNumber(kit, path, value));
  return <NumberField {...look} value={numberAt(kit, path)} said={said} onChange={onChange} />;
}

export interface KitTextProps {
  readonly label: string;
  readonly value: string;
  /** The line that asks for no names, where one stands for several fields. */
  readonly noNames?: string;
  readonly onChange: (value: string) => void;
}

const LONGEST_NAME = 60;

/** A free text of at least one letter; people's names do not belong there. */
export function KitText({ label, value, noNames, onChange }: KitTextProps) {
  const [typed, setTyped, leave] = useTyped(value);
  const noteId = useId();
  const type = (text: string) => {
    const name = text.trim();
    setTyped(text, name === '' ? value : name);
    if (name !== '') onChange(name);
  };
  return (
    <div className="kit-text">
      <label>
        <span>{label}</span>
        <input
          type="text"
          maxLength={LONGEST_NAME}
          value={typed ?? value}
          aria-describedby={noNames ?? noteId}
          onChange={(event) => type(event.target.value)}
          onBlur={leave}
        />
      </label>
      {noNames === undefined && <NoNames id={noteId} />}
    </div>
  );
}

export interface SelectProps<T extends string> {
  readonly label: string;
  readonly labelHidden?: boolean;
  readonly value: T;
  readonly options: readonly (readonly [T, string])[];
  readonly onPick: (value: T) => void;
}

export function Select<T extends string>({
  label,
  labelHidden = false,
  value,
  options,
  onPick,
}: SelectProps<T>) {
  return (
    <label className="kit-pick">
      <span className={labelHidden ? 'only-read-aloud' : undefined}>{label}</span>
      <select value={value} onChange={(event) => onPick(event.target.value as T)}>
        {options.map(([key, said]) => (
          <option key={key} value={key}>
            {said}
          </option>
        ))}
      </select>
    </label>
  );
}

export function Fields({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <fieldset className="kit-fields">
      <legend>{title}</legend>
      <div>{children}</div>
    </fieldset>
  );
}
