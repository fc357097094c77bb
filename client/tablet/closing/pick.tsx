import type { ClosingQuestion } from '../../../shared/documents/closing-check.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';

export interface PickProps {
  readonly question: ClosingQuestion;
  readonly picked: string | undefined;
  readonly onPick: (choice: string) => void;
}

/** One question with its answers; another tap is another answer. */
export function Pick({ question, picked, onPick }: PickProps) {
  const { ask, sheet, sentence } = question;
  const words = useWords().closing.check;
  const locale = useLocale();
  return (
    <fieldset className="question-choices" data-ask={ask.kind}>
      <legend>
        {words.ask(ask, sheet)}
        {ask.kind === 'why' && (
          <span className="closing-should">{words.should(textIn(sentence, locale))}</span>
        )}
      </legend>
      {ask.choices.map((choice) => (
        <label key={choice.key} className="choice" data-chosen={choice.key === picked}>
          <input
            type="radio"
            className="tool-input"
            name={ask.kind}
            checked={choice.key === picked}
            onChange={() => onPick(choice.key)}
          />
          {words.choice(choice, sheet)}
        </label>
      ))}
      <p className="quiet-words closing-how">{words.how}</p>
    </fieldset>
  );
}
