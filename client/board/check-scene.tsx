import type { ClosingQuestion } from '../../shared/documents/closing-check.ts';
import type { CheckResult, RoomCheck, RoomState } from '../../shared/room/state.ts';
import { MarkPicture } from '../parts/mark-picture.tsx';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { useRem } from './use-rem.ts';
import './check-scene.css';

/** The closing check: that it is asked; and where the desk wishes it, how the class did, without teams. */
export function CheckScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords().closing;
  const check = room.checks.at(-1);
  if (check?.shown) return <Result room={room} check={check} shown={check.shown} />;
  return (
    <>
      <Head title={board.asked} word={room.word} />
      <p className="check-open">{board.open}</p>
    </>
  );
}

interface ResultProps {
  readonly room: RoomState;
  readonly check: RoomCheck;
  readonly shown: CheckResult;
}

function Result({ room, check, shown }: ResultProps) {
  const { board } = useWords().closing;
  const document = hereOf(useDocument('closing-check', check.document));
  const questions = (document?.questions ?? []).map((question, number) => ({ question, number }));
  return (
    <>
      <Head title={board.result} word={room.word} />
      <ol className="check-rows" data-many={questions.length > 3}>
        {questions.map(({ question, number }) => (
          <li key={number}>
            <Said question={question} check={check} number={number} />
            <span className="check-count">{board.right(shown.right[number] ?? 0, shown.teams)}</span>
            <span className="check-bar" aria-hidden="true">
              <span style={{ width: `${shareOf(shown, number)}%` }} />
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

const shareOf = ({ right, teams }: CheckResult, number: number): number =>
  teams === 0 ? 0 : (100 * (right[number] ?? 0)) / teams;

interface SaidProps {
  readonly question: ClosingQuestion;
  readonly check: RoomCheck;
  readonly number: number;
}

/** What was asked and what is right, with the mark as the robot met it. */
function Said({ question: { ask, sheet, kit }, check, number }: SaidProps) {
  const { closing } = useWords();
  const rem = useRem();
  const answer = check.key?.[number];
  const choice = ask.choices.find(({ key }) => key === answer?.right);
  return (
    <>
      <span className="check-mark">
        {answer?.word !== undefined && <MarkPicture kit={kit} word={answer.word} size={1.4 * rem} />}
      </span>
      <span>
        {closing.board.short(ask, sheet)} <strong>{choice && closing.check.choice(choice, sheet)}</strong>
      </span>
    </>
  );
}
