export interface ChoicesProps<C> {
  /** Of the group of buttons; no other one on the page has it. */
  readonly name: string;
  readonly choices: readonly C[];
  /** Key of the chosen one. */
  readonly picked: string | number | undefined;
  readonly said: (choice: C) => string;
  readonly onPick: (key: string) => void;
}

/** The answers to a question, of which one may be chosen; another tap is another answer. */
export function Choices<C extends { readonly key: string }>(props: ChoicesProps<C>) {
  const { name, choices, picked, said, onPick } = props;
  return choices.map((choice) => (
    <label key={choice.key} className="choice" data-chosen={choice.key === picked}>
      <input
        type="radio"
        className="tool-input"
        name={name}
        checked={choice.key === picked}
        onChange={() => onPick(choice.key)}
      />
      {said(choice)}
    </label>
  ));
}
