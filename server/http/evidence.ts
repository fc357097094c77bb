import { type ClassEvidence, EVIDENCE_KINDS, type EvidenceOf } from '../../shared/evidence/evidence.ts';
import { POINTS_TO } from '../../shared/evidence/frameworks.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { type Cell, csv } from './csv.ts';

const COLUMNS = ['room', 'date', 'berth', 'team', 'evidence', 'shown', 'of', 'points to'] as const;

const MINUTE_MS = 60_000;

/** The day on which a room was opened, ISO 8601, by a clock that is so many minutes ahead of UTC. */
export const dateOf = ({ openedAt }: Pick<RoomState, 'openedAt'>, offset = '0'): string =>
  new Date(openedAt + Number(offset) * MINUTE_MS).toISOString().slice(0, 10);

/**
 * One row a kind of evidence: of the class first, where it counts teams, then of each team in the order of the
 * berths. A team is its emblem.
 */
export function evidenceCsv(state: RoomState, { together, teams }: ClassEvidence, offset?: string): string {
  const lesson: Cell[] = [state.word, dateOf(state, offset)];
  const rowsOf = (whose: Cell[], evidence: EvidenceOf): Cell[][] =>
    EVIDENCE_KINDS.map((kind) => {
      const { shown, of } = evidence[kind];
      return [...lesson, ...whose, kind, shown, of, POINTS_TO[kind].join('; ')];
    });
  const ofTeams = teams.flatMap(({ team, evidence }) => {
    const known = state.teams.find(({ id }) => id === team);
    return rowsOf([known?.berth ?? null, known?.emblem ?? null], evidence);
  });
  return csv([COLUMNS, ...rowsOf([null, 'class'], together), ...ofTeams]);
}
