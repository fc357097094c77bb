import type { ClosingAnswer, ClosingMistake } from '../documents/closing-check.ts';
import type { RoomCheck, RoomState, TeamId } from '../room/state.ts';
import type { Shown } from './record.ts';

/** What was answered in a closing check, held against its key. */

export interface Answered {
  readonly picked: string;
  readonly answer: ClosingAnswer;
}

export const isRight = ({ picked, answer }: Answered): boolean => picked === answer.right;

/** A team's answers in the order of the questions; none where what is right is not known here. */
export const answersOf = ({ key, answers }: RoomCheck, team: TeamId): Answered[] =>
  (key ?? []).flatMap((answer, question) => {
    const given = answers.find((one) => one.team === team && one.question === question);
    return given ? [{ picked: given.picked, answer }] : [];
  });

export function rightIn(check: RoomCheck, team: TeamId): Shown {
  const given = answersOf(check, team);
  return { shown: given.filter(isRight).length, of: given.length };
}

/** How a class answered one question. */
export interface QuestionFigures {
  /** Teams that were right, of those that answered. */
  readonly right: number;
  readonly of: number;
  /** What the others may have had in mind, that of most teams first. */
  readonly mistakes: readonly { readonly mistake: ClosingMistake; readonly teams: number }[];
}

/** By question, of the teams that play. */
export const questionFigures = ({ teams }: RoomState, { key, answers }: RoomCheck): QuestionFigures[] =>
  (key ?? []).map((answer, question) => {
    const given = answers.filter(
      (one) => one.question === question && teams.some(({ id }) => id === one.team),
    );
    const right = given.filter(({ picked }) => picked === answer.right).length;
    const mistakes = new Map<ClosingMistake, number>();
    for (const { picked } of given) {
      const made = answer.mistakes.find(({ choice }) => choice === picked)?.mistake;
      if (made) mistakes.set(made, (mistakes.get(made) ?? 0) + 1);
    }
    return {
      right,
      of: given.length,
      mistakes: [...mistakes]
        .map(([mistake, count]) => ({ mistake, teams: count }))
        .sort((a, b) => b.teams - a.teams),
    };
  });

/** How many of a check's questions a team has answered. */
export const answeredBy = ({ answers }: RoomCheck, team: TeamId): number =>
  answers.filter((one) => one.team === team).length;
