import { type ReactNode, useEffect, useId, useState } from 'react';
import type { Mm } from '../../../shared/geometry/units.ts';
import { useDevice } from '../../parts/device-settings.ts';
import { NoNames } from '../../parts/no-names.tsx';
import { useWholeWords } from '../whole-words.ts';

/** s: as long as a file can hold. */
export const LONGEST_TIME = 3600;

/** What a form is made of: lists to choose from, numbers, lengths in the units of this device, texts. */

export interface ChooseProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [T, string])[];
  readonly onChange: (value: T) => void;
  /** The label is only read aloud: what stands around it says the same. */
  readonly quiet?: boolean;
}

export function Choose<T extends string>({ label, value, options, onChange, quiet }: ChooseProps<T>) {
  const id = useId();
  return (
    <p className="builder-field">
      <label htmlFor={id} className={quiet ? 'only-read-aloud' : undefined}>
        {label}
      </label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value as T)}>
        {options.map(([key, said]) => (
          <option key={key} value={key}>
            {said}
          </option>
        ))}
      </select>
    </p>
  );
}

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  /** Stands behind the number. */
  readonly unit?: string;
  /** It may be left empty. */
  readonly empty?: boolean;
  readonly quiet?: boolean;
}

/** A number is taken over while it is typed, as soon as it is one that may be. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, onChange, least, most, step = 1, unit, empty = false, quiet } = props;
  const id = useId();
  const shown = value === undefined ? '' : String(value);
  const [typed, setTyped] = useState(shown);
  useEffect(
    () => setTyped((before) => (Number(before) === value && before !== '' ? before : shown)),
    [shown, value],
  );
  const type = (text: string) => {
    setTyped(text);
    if (text.trim() === '') return empty ? onChange(undefined) : undefined;
    const number = Number(text);
    if (Number.isFinite(number) && number >= least && number <= most) onChange(number);
  };
  const isWrong = typed !== shown && Number(typed) !== value;
  return (
    <p className="builder-field">
      <label htmlFor={id} className={quiet ? 'only-read-aloud' : undefined}>
        {label}
      </label>
      <span className="builder-number">
        <input
          id={id}
          type="number"
          inputMode="decimal"
          min={least}
          max={most}
          step={step}
          value={typed}
          aria-invalid={isWrong}
          onChange={(event) => type(event.target.value)}
          onBlur={() => setTyped(shown)}
        />
        {unit}
      </span>
    </p>
  );
}

const MM = { cm: 10, in: 25.4 } as const;
/** Steps of the arrows, in the unit; and how fine a length is shown. */
const STEP = { cm: 0.5, in: 0.25 } as const;
const FINE = 100;

export interface LengthFieldProps {
  readonly label: string;
  readonly value: Mm | undefined;
  readonly onChange: (value: Mm | undefined) => void;
  readonly most: Mm;
  readonly least?: Mm;
  readonly empty?: boolean;
  readonly quiet?: boolean;
}

/** A length in cm or inches, held in mm. */
export function LengthField({ value, onChange, most, least = 0, ...rest }: LengthFieldProps) {
  const units = useDevice((device) => device.units);
  const { builder } = useWholeWords();
  const per = MM[units];
  const fine = (length: number) => Math.round(length * FINE) / FINE;
  const inUnit = (mm: Mm) => fine(mm / per);
  // A bound that is rounded for the field may lie beyond itself.
  const inMm = (typed: number) => fine(Math.min(Math.max(typed * per, least), most));
  return (
    <NumberField
      {...rest}
      value={value === undefined ? undefined : inUnit(value)}
      onChange={(now) => onChange(now === undefined ? undefined : inMm(now))}
      least={inUnit(least)}
      most={inUnit(most)}
      step={STEP[units]}
      unit={builder.unit(units)}
    />
  );
}

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** The thing has been typed; what follows is another change. */
  readonly onDone?: () => void;
  readonly most: number;
  readonly lines?: number;
  readonly quiet?: boolean;
  /** It may be left empty. */
  readonly empty?: boolean;
}

/** A text is taken over while it is typed; an empty one only where it may be. */
export function TextField(props: TextFieldProps) {
  const { label, value, onChange, onDone, most, lines = 1, quiet, empty = false } = props;
  const id = useId();
  const noteId = useId();
  const [typed, setTyped] = useState(value);
  useEffect(() => setTyped(value), [value]);
  const field = {
    id,
    value: typed,
    maxLength: most,
    'aria-describedby': noteId,
    onChange: ({ target }: { target: { value: string } }) => {
      setTyped(target.value);
      if (empty || target.value.trim() !== '') onChange(target.value);
    },
    onBlur: () => {
      setTyped(value);
      onDone?.();
    },
  };
  return (
    <div className="builder-field builder-text">
      <label htmlFor={id} className={quiet ? 'only-read-aloud' : undefined}>
        {label}
      </label>
      {lines > 1 ? <textarea {...field} rows={lines} /> : <input {...field} type="text" />}
      <NoNames id={noteId} />
    </div>
  );
}

export interface TickProps {
  readonly label: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

export const Tick = ({ label, checked, onChange }: TickProps) => (
  <label className="builder-tick">
    <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
    <span>{label}</span>
  </label>
);
