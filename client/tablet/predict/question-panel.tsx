import { ChevronLeft, ChevronRight, Minus, Plus } from 'lucide-react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Question } from '../../../shared/documents/question.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { Choices } from './choices.tsx';
import type { Says } from './use-answers.ts';

export interface QuestionPanelProps {
  readonly challenge: Challenge;
  readonly questions: readonly Question[];
  /** Which of them is asked now. */
  readonly at: number;
  readonly says: Says | undefined;
  readonly onSay: (says: Says) => void;
  readonly onGo: (at: number) => void;
}

/** One question at a time, with all that may be answered. */
export function QuestionPanel({ challenge, questions, at, says, onSay, onGo }: QuestionPanelProps) {
  const words = useWords();
  const { predicting } = words.tablet;
  const question = questions[at]!;
  const asked = words.questions.ask(question, challenge.sheet);
  return (
    <section className="question" aria-label={predicting.questions}>
      <p className="quiet-words">{predicting.which(at + 1, questions.length)}</p>
      <fieldset className="question-choices">
        <legend>{asked}</legend>
        {question.kind === 'how-many' ? (
          <HowMany of={question.of} says={typeof says === 'number' ? says : undefined} onSay={onSay} />
        ) : (
          <Choices
            name={question.id}
            choices={question.choices}
            picked={says}
            said={(choice) => words.questions.choice(choice, challenge.sheet)}
            onPick={onSay}
          />
        )}
      </fieldset>
      <div className="question-steps">
        <Button icon={<Icon of={ChevronLeft} />} disabled={at === 0} onClick={() => onGo(at - 1)}>
          {predicting.before}
        </Button>
        <Button
          icon={<Icon of={ChevronRight} />}
          disabled={at === questions.length - 1}
          onClick={() => onGo(at + 1)}
        >
          {predicting.next}
        </Button>
      </div>
    </section>
  );
}

interface HowManyProps {
  readonly of: number;
  readonly says: number | undefined;
  readonly onSay: (says: number) => void;
}

/** A number of robots, by a slider or one by one. */
function HowMany({ of, says, onSay }: HowManyProps) {
  const { questions, tablet } = useWords();
  const { predicting } = tablet;
  const step = (by: number) => onSay(Math.min(of, Math.max(0, (says ?? 0) + by)));
  return (
    <div className="how-many">
      <p className="how-many-said">
        {says === undefined ? questions.notAnswered : questions.howMany(says, of)}
      </p>
      <div className="how-many-steps">
        <Button icon={<Icon of={Minus} />} aria-label={predicting.fewer} onClick={() => step(-1)} />
        <input
          type="range"
          min={0}
          max={of}
          value={says ?? 0}
          aria-label={predicting.robots}
          aria-valuetext={says === undefined ? questions.notAnswered : questions.howMany(says, of)}
          onChange={(event) => onSay(Number(event.target.value))}
        />
        <Button icon={<Icon of={Plus} />} aria-label={predicting.more} onClick={() => step(1)} />
      </div>
    </div>
  );
}
