import type { RoomState, Team, TeamId } from '../../shared/room/state.ts';
import type { TeamStanding } from '../parts/figures.ts';
import { useWords } from '../parts/use-words.ts';
import { PointsLine } from './points-line.tsx';
import { MemberBadge, standingsOnWall } from './team-badge.tsx';
import { useFittedRows } from './use-rows.ts';
import './standings.css';

/** Height of a row at the side, rem; the style sheet says the same. */
const ROW = 1.72;

export interface StandingsSideProps {
  readonly room: RoomState;
  /** The team whose drawing is being shown: its row is marked once it has agreed to be named there. */
  readonly onStage?: Team;
}

/** The table at the side of a scene, with the points line under it. What does not fit is only counted. */
export function StandingsSide({ room, onStage }: StandingsSideProps) {
  const { board } = useWords();
  const { box, fit } = useFittedRows(ROW);
  const all = standingsOnWall(room);
  const shown = all.length > fit ? all.slice(0, Math.max(0, fit - 1)) : all;
  return (
    <section className="standings">
      <header className="standings-head">
        <h2>{board.standings.title}</h2>
        <span>{board.standings.points}</span>
      </header>
      <div className="standings-box" ref={box}>
        <StandingsRows rows={shown} marked={onStage?.wall === 'shown' ? onStage.id : null} />
        {all.length > shown.length && (
          <p className="standings-more">{board.standings.more(all.length - shown.length)}</p>
        )}
      </div>
      <PointsLine rows={all} most={100 * Math.max(1, room.rounds.length)} levels={2} />
    </section>
  );
}

export interface StandingsRowsProps {
  readonly rows: readonly TeamStanding[];
  readonly marked?: TeamId | null;
}

export function StandingsRows({ rows, marked = null }: StandingsRowsProps) {
  return (
    <ol className="standings-rows">
      {rows.map(({ team, points, rank }) => (
        <li key={team.id} className="standing" data-on={team.id === marked}>
          <span className="standing-rank">{rank ?? '–'}</span>
          <MemberBadge team={team} size="1.25em" />
          <strong className="standing-points">{rank === null ? '' : points}</strong>
        </li>
      ))}
    </ol>
  );
}
