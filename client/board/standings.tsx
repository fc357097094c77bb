import type { RoomState } from '../../shared/room/state.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { standingsOf, type TeamStanding } from '../parts/figures.ts';
import { useWords } from '../parts/use-words.ts';
import { PointsLine } from './points-line.tsx';
import './standings.css';

/** Rows beside something else that is shown; what does not fit is only counted. */
const ROWS_AT_SIDE = 8;

/** The table at the side of a scene, with the points line under it. */
export function StandingsSide({
  room,
  onStage = [],
}: {
  readonly room: RoomState;
  readonly onStage?: readonly string[];
}) {
  const { board } = useWords();
  const all = standingsOf(room);
  const shown = all.length > ROWS_AT_SIDE + 1 ? all.slice(0, ROWS_AT_SIDE) : all;
  return (
    <section className="standings">
      <header className="standings-head">
        <h2>{board.standings.title}</h2>
        <span>{board.standings.points}</span>
      </header>
      <StandingsRows rows={shown} onStage={onStage} />
      {all.length > shown.length && (
        <p className="standings-more">{board.standings.more(all.length - shown.length)}</p>
      )}
      <PointsLine rows={all} most={100 * Math.max(1, room.rounds.length)} />
    </section>
  );
}

export interface StandingsRowsProps {
  readonly rows: readonly TeamStanding[];
  /** Teams whose drawing is being shown. */
  readonly onStage?: readonly string[];
}

export function StandingsRows({ rows, onStage = [] }: StandingsRowsProps) {
  return (
    <ol className="standings-rows">
      {rows.map(({ team, points, rank }) => (
        <li key={team.id} className="standing" data-on={onStage.includes(team.id)}>
          <span className="standing-rank">{rank ?? '–'}</span>
          <EmblemBadge emblem={team.emblem} size="1.25em" />
          <strong className="standing-points">{rank === null ? '' : points}</strong>
        </li>
      ))}
    </ol>
  );
}
