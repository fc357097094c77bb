import { useId } from 'react';
import './pick-one.css';

export interface PickOneProps<T extends string> {
  readonly label: string;
  readonly value: T | null;
  /** What having none of its own comes to, where there may be none. */
  readonly usual?: string;
  readonly options: readonly (readonly [T, string])[];
  readonly onPick: (value: T | null) => void;
}

/** One of a few, or none of its own. */
export function PickOne<T extends string>({ label, value, usual, options, onPick }: PickOneProps<T>) {
  const id = useId();
  return (
    <div className="pick-one">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value ?? ''}
        onChange={(event) => onPick(options.find(([option]) => option === event.target.value)?.[0] ?? null)}
      >
        {usual !== undefined && <option value="">{usual}</option>}
        {options.map(([option, said]) => (
          <option key={option} value={option}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}
