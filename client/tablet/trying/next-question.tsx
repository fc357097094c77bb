import { ArrowRight, Play } from 'lucide-react';
import { useState } from 'react';
import { isYes, type NextQuestion } from '../../../shared/judge/next-question.ts';
import type { PageWording } from '../../../shared/wording/wording.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface NextProps {
  readonly questions: readonly NextQuestion[];
  /** Shows what the question is about. */
  readonly onSee: (question: NextQuestion) => void;
}

/** After all goals are met: what may be asked next, one question at a time, with the answer after a guess. */
export function Next({ questions, onSee }: NextProps) {
  const words = useWords();
  const { foretelling } = words;
  const [at, setAt] = useState(0);
  const [said, setSaid] = useState<boolean | null>(null);
  const question = questions[at % Math.max(1, questions.length)];
  if (!question) return null;
  const seen = question.kind !== 'fewer-marks' || question.spare !== null;
  const another = () => {
    setAt(at + 1);
    setSaid(null);
  };
  return (
    <section className="trying-card" role="status">
      <h2>{foretelling.next}</h2>
      <p>{foretelling.nextAsk(question.kind)}</p>
      {said === null ? (
        <div className="card-row">
          <Button onClick={() => setSaid(true)}>{foretelling.yes}</Button>
          <Button onClick={() => setSaid(false)}>{foretelling.no}</Button>
        </div>
      ) : (
        <>
          <p>
            <strong>{foretelling.youSaid(said === isYes(question))}</strong> {answerOf(question, words)}
          </p>
          <div className="card-row">
            {seen && (
              <Button icon={<Icon of={Play} size={20} />} onClick={() => onSee(question)}>
                {foretelling.seeIt}
              </Button>
            )}
            {questions.length > 1 && (
              <Button look="quiet" icon={<Icon of={ArrowRight} size={20} />} onClick={another}>
                {foretelling.another}
              </Button>
            )}
          </div>
        </>
      )}
    </section>
  );
}

function answerOf(question: NextQuestion, { foretelling }: PageWording): string {
  switch (question.kind) {
    case 'fewer-marks':
      return question.spare === null ? foretelling.noSpare : foretelling.spare;
    case 'other-end':
      return foretelling.otherEnd(question.met);
    case 'storm':
      return foretelling.storm(question.same, question.of);
  }
}
