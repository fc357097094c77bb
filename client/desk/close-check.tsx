import { CircleCheck, MessageCircleQuestionMark, Printer } from 'lucide-react';
import { useId, useState } from 'react';
import { MOST_CLOSING_QUESTIONS, USUAL_CLOSING_QUESTIONS } from '../../shared/documents/closing-check.ts';
import { answeredBy, questionFigures } from '../../shared/evidence/check-answers.ts';
import type { RoomCheck, RoomState } from '../../shared/room/state.ts';
import { printPath } from '../../shared/wire/print.ts';
import { Button } from '../parts/button.tsx';
import { useDevice } from '../parts/device-settings.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { PaperAnswers } from './close-paper.tsx';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';
import './close-check.css';

/** The last questions: asked, followed while teams answer, ended, and shown on the board without teams. */
export function ClosingCheckPart({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords().closing;
  const last = room.checks.at(-1);
  return (
    <section className="close-check" aria-labelledby="close-check-title">
      <h2 id="close-check-title">{desk.title}</h2>
      {!last && <p className="desk-quiet">{desk.note}</p>}
      {last && (last.ended ? <Ended room={room} check={last} /> : <Asked room={room} check={last} />)}
      {last?.ended !== false && <Start room={room} again={last !== undefined} />}
    </section>
  );
}

const COUNTS = Array.from({ length: MOST_CLOSING_QUESTIONS }, (_, i) => i + 1);

function Start({ room, again }: { readonly room: RoomState; readonly again: boolean }) {
  const { desk } = useWholeWords().closing;
  const { ask, refusal, busy } = useAsk();
  const [questions, setQuestions] = useState(USUAL_CLOSING_QUESTIONS);
  const id = useId();
  return (
    <>
      <div className="close-check-start">
        <label htmlFor={id}>{desk.count}</label>
        <select id={id} value={questions} onChange={(event) => setQuestions(Number(event.target.value))}>
          {COUNTS.map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
        <Button
          icon={<Icon of={MessageCircleQuestionMark} />}
          disabled={busy || room.phase !== 'close'}
          onClick={() => void ask({ kind: 'start-check', questions })}
        >
          {busy ? desk.making : again ? desk.again : desk.start}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </>
  );
}

/** The questions to be ticked on paper, and their key: once they are asked, since later ones may be others. */
function OnPaper({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords().closing;
  const { language, units } = useDevice();
  const path = printPath({ kind: 'closing', format: 'pdf', room: room.word, language, units, key: 'yes' });
  return (
    <a className="button" href={path} download>
      <Icon of={Printer} />
      {desk.toPaper}
    </a>
  );
}

interface PartProps {
  readonly room: RoomState;
  readonly check: RoomCheck;
}

function Asked({ room, check }: PartProps) {
  const { closing, desk: atDesk } = useWholeWords();
  const { desk } = closing;
  const { askUndoable, refusal, busy } = useUndoable();
  const end = () => askUndoable({ kind: 'end-check' }, { kind: 'resume-check' }, atDesk.undo.checkEnded);
  const of = check.key?.length ?? 0;
  const done = room.teams.filter(({ id }) => answeredBy(check, id) === of);
  return (
    <>
      <p role="status">{desk.answered(done.length, room.teams.length)}</p>
      <ul className="close-check-teams">
        {room.teams.map(({ id, emblem }) => (
          <li key={id} data-done={answeredBy(check, id) === of}>
            <EmblemBadge emblem={emblem} size={18} />
            <span>{desk.ofTeam(answeredBy(check, id), of)}</span>
          </li>
        ))}
      </ul>
      <div className="close-check-start">
        <Button icon={<Icon of={CircleCheck} />} disabled={busy} onClick={() => void end()}>
          {desk.end}
        </Button>
        <OnPaper room={room} />
      </div>
      <Refused refusal={refusal} />
      <PaperAnswers room={room} check={check} />
    </>
  );
}

/** How the class did, question by question. */
function Ended({ room, check }: PartProps) {
  const { check: asked, desk } = useWholeWords().closing;
  const { ask, refusal } = useAsk();
  const document = hereOf(useDocument('closing-check', check.document));
  const questions = (document?.questions ?? []).map((question, number) => ({ ...question, number }));
  const figures = questionFigures(room, check);
  return (
    <>
      <ol className="close-check-results">
        {questions.map(({ number, sheet, ask: put }) => {
          const { right, of, mistakes } = figures[number]!;
          const choice = put.choices.find(({ key }) => key === check.key?.[number]?.right);
          return (
            <li key={number}>
              <p>
                {asked.ask(put, sheet)} <strong>{choice && asked.choice(choice, sheet)}</strong>
              </p>
              <p>{desk.right(right, of)}</p>
              {mistakes.map(({ mistake, teams }) => (
                <p key={mistake} className="desk-quiet">
                  {desk.mistake(mistake, teams)}
                </p>
              ))}
            </li>
          );
        })}
      </ol>
      <label className="close-check-show">
        <input
          type="checkbox"
          checked={check.shown !== null}
          onChange={(event) => void ask({ kind: 'show-check', on: event.target.checked })}
        />
        {desk.show}
      </label>
      <Refused refusal={refusal} />
      <PaperAnswers room={room} check={check} />
    </>
  );
}
