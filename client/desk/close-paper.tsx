import { useId, useState } from 'react';
import { ANSWER_LETTERS } from '../../shared/evidence/letters.ts';
import type { RoomCheck, RoomState, TeamId } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useWholeWords } from './whole-words.ts';

export interface PaperAnswersProps {
  readonly room: RoomState;
  readonly check: RoomCheck;
}

/** Answers that a team ticked on paper, typed in at the desk. */
export function PaperAnswers({ room, check }: PaperAnswersProps) {
  const { closing, emblems } = useWholeWords();
  const [team, setTeam] = useState<TeamId | null>(null);
  const id = useId();
  const chosen = room.teams.find((one) => one.id === team) ?? room.teams[0];
  if (!chosen) return null;
  return (
    <details className="close-paper">
      <summary>{closing.desk.paper}</summary>
      <p className="desk-quiet">{closing.desk.paperHow}</p>
      <p className="close-check-start">
        <label htmlFor={id}>{closing.desk.paperTeam}</label>
        <select id={id} value={chosen.id} onChange={(event) => setTeam(event.target.value)}>
          {room.teams.map((one) => (
            <option key={one.id} value={one.id}>
              {emblems.name(one.emblem)}
            </option>
          ))}
        </select>
      </p>
      <TeamPaper key={chosen.id} room={room} check={check} team={chosen.id} />
    </details>
  );
}

function TeamPaper({ room, check, team }: PaperAnswersProps & { readonly team: TeamId }) {
  const words = useWholeWords().closing.check;
  const { ask, refusal } = useAsk();
  const document = hereOf(useDocument('closing-check', check.document));
  const questions = (document?.questions ?? []).map((question, number) => ({ ...question, number }));
  return (
    <>
      <div className="close-paper-questions">
        {questions.map(({ ask: asked, sheet, number }) => (
          <fieldset key={number} className="close-paper-question">
            <legend>{words.which(number + 1, questions.length)}</legend>
            {asked.choices.map((choice, i) => (
              <label key={choice.key}>
                <input
                  type="radio"
                  name={`${team} ${number}`}
                  checked={check.answers.some(
                    (one) => one.team === team && one.question === number && one.picked === choice.key,
                  )}
                  onChange={() =>
                    void ask({
                      kind: 'note-answer',
                      check: room.checks.length - 1,
                      team,
                      question: number,
                      picked: choice.key,
                    })
                  }
                />
                <strong>{ANSWER_LETTERS[i]}</strong> {words.choice(choice, sheet)}
              </label>
            ))}
          </fieldset>
        ))}
      </div>
      <Refused refusal={refusal} />
    </>
  );
}
