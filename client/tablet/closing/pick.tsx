import type { ClosingChoice, ClosingQuestion } from '../../../shared/documents/closing-check.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { Choices } from '../predict/choices.tsx';

export interface PickProps {
  readonly question: ClosingQuestion;
  readonly picked: string | undefined;
  readonly onPick: (choice: string) => void;
}

/** One question with its answers. */
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
      <Choices<ClosingChoice>
        name={ask.kind}
        choices={ask.choices}
        picked={picked}
        said={(choice) => words.choice(choice, sheet)}
        onPick={onPick}
      />
      <p className="quiet-words closing-how">{words.how}</p>
    </fieldset>
  );
}
