export interface WholeNumberProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}

/** A field for a whole number within limits. What is half typed is left alone until the field is left. */
export function WholeNumber({ label, value, least, most, onChange }: WholeNumberProps) {
  const settle = (typed: number): number => {
    const whole = Math.max(least, Math.min(most, Math.round(Number.isFinite(typed) ? typed : value)));
    onChange(whole);
    return whole;
  };
  return (
    <label>
      {label}
      <input
        type="number"
        min={least}
        max={most}
        defaultValue={value}
        onChange={({ target }) => target.validity.valid && settle(target.valueAsNumber)}
        onBlur={({ target }) => {
          target.value = String(settle(target.valueAsNumber));
        }}
      />
    </label>
  );
}
