import { CircleCheck, Search } from 'lucide-react';
import type { ClosingAnswer, ClosingQuestion } from '../../../shared/documents/closing-check.ts';
import { Icon } from '../../parts/icon.tsx';
import { useInkNames } from '../../parts/ink-names.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface KnownProps {
  readonly question: ClosingQuestion;
  readonly answer: ClosingAnswer;
  /** The team's own answer. */
  readonly picked: string | undefined;
}

/** What the team said, what is right and why, and why its own answer can't be. */
export function Known({ question, answer, picked }: KnownProps) {
  const { ask, sheet, kit } = question;
  const words = useWords().closing.check;
  const inks = useInkNames(kit, answer.word ?? '');
  const said = (key: string) => {
    const choice = ask.choices.find((one) => one.key === key);
    return choice ? words.choice(choice, sheet) : key;
  };
  const isRight = picked === answer.right;
  const mistake = answer.mistakes.find(({ choice }) => choice === picked)?.mistake;
  return (
    <div className="closing-known">
      <h2>{words.ask(ask, sheet)}</h2>
      {picked === undefined ? <p>{words.nothingSaid}</p> : <p>{words.said(said(picked))}</p>}
      <p className="closing-right" data-right={isRight}>
        <Icon of={isRight ? CircleCheck : Search} size={26} />
        {isRight ? words.yes : words.right(said(answer.right))}
      </p>
      {answer.word !== undefined && <MarkPicture kit={kit} word={answer.word} size={34} />}
      <p>{words.because(ask, answer, inks)}</p>
      {mistake && <p>{words.but(mistake)}</p>}
    </div>
  );
}
