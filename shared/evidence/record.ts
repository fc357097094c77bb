import type { AnswersVerdict } from '../documents/answers.ts';
import type { Challenge } from '../documents/challenge.ts';
import type { Finding, Verdict } from '../documents/verdict.ts';
import { counts, type DocumentId, type Entry, type RoomState, type TeamId } from '../room/state.ts';

/**
 * What a lesson leaves behind: its room as the desk knows it, and those of its documents that tell more
 * than the room does, by their ids. A document that is missing counts as if it told nothing.
 */
export interface LessonRecord {
  readonly room: RoomState;
  /** Of entries that are drawings. */
  readonly verdicts: ReadonlyMap<DocumentId, Verdict>;
  /** Of entries that are answers. */
  readonly answers: ReadonlyMap<DocumentId, AnswersVerdict>;
  /** Of the rounds. */
  readonly challenges: ReadonlyMap<DocumentId, Challenge>;
}

/** A team's judged entries of a round that count, oldest first. */
export const judgedEntries = ({ entries }: RoomState, team: TeamId, round: number): Entry[] =>
  entries.filter(
    (entry) => entry.team === team && entry.round === round && entry.verdict !== null && counts(entry),
  );

/** What was found in an entry that robots fail by; what is only untidy is left out. */
export const graveFindings = ({ verdicts }: LessonRecord, { verdict }: Entry): readonly Finding[] =>
  ((verdict && verdicts.get(verdict.document)?.findings) ?? []).filter(
    ({ severity }) => severity !== 'untidy',
  );

/** How often something was shown, of how many chances there were to show it. */
export interface Shown {
  readonly shown: number;
  readonly of: number;
}
