import { Check, X } from 'lucide-react';
import { useMemo } from 'react';
import type { Answers, AnswersVerdict } from '../../shared/documents/answers.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Question } from '../../shared/documents/question.ts';
import { questionsOf } from '../../shared/judge/questions.ts';
import type { PageWording } from '../../shared/wording/wording.ts';
import { Icon } from './icon.tsx';
import { useWords } from './use-words.ts';
import './answer-rows.css';

export interface AnswerRowsProps {
  readonly challenge: Challenge;
  readonly answers: Answers;
  /** Absent: it is not told yet which are right. */
  readonly verdict?: AnswersVerdict | undefined;
  readonly iconSize?: number | string;
  /** A few words in the place of each question. */
  readonly short?: boolean;
}

/** Each question, what was said, and whether that is right. */
export function AnswerRows({ challenge, answers, verdict, iconSize = 18, short = false }: AnswerRowsProps) {
  const words = useWords();
  const questions = useMemo(() => questionsOf(challenge), [challenge]);
  return (
    <ol className="answer-rows">
      {questions.map((question) => {
        const says = answers.answers.find((answer) => answer.question === question.id)?.says;
        const line = verdict?.lines.find((each) => each.question === question.id);
        return (
          <li key={question.id} data-stand={line ? (line.right ? 'right' : 'wrong') : 'open'}>
            {line && (
              <Icon
                of={line.right ? Check : X}
                size={iconSize}
                label={line.right ? words.questions.right : words.questions.wrong}
              />
            )}
            <span>
              <span className="answer-asked">
                {words.questions[short ? 'short' : 'ask'](question, challenge.sheet)}
              </span>{' '}
              <strong>{saidOf(question, says, challenge, words)}</strong>
            </span>
          </li>
        );
      })}
    </ol>
  );
}

/** An answer in words. */
export function saidOf(
  question: Question,
  says: string | number | undefined,
  challenge: Challenge,
  { questions }: PageWording,
): string {
  if (says === undefined) return questions.notAnswered;
  if (question.kind === 'how-many') return questions.howMany(Number(says), question.of);
  const choice = question.choices.find(({ key }) => key === says);
  return choice ? questions.choice(choice, challenge.sheet) : questions.notAnswered;
}
