import type { RoomState } from '../../shared/room/state.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { PointsLine } from './points-line.tsx';
import { StandingsRows } from './standings.tsx';
import { standingsOnWall } from './team-badge.tsx';
import './standings-scene.css';

/** What fits on the whole board, three columns of twelve. */
const MOST = 36;

const sizeFor = (teams: number) => (teams <= 10 ? 'large' : teams <= 18 ? 'middle' : 'small');

/** The table alone, as large as it can be. */
export function StandingsScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const all = standingsOnWall(room);
  const none = all.every((row) => row.rank === null);
  const size = sizeFor(all.length);
  return (
    <>
      <Head title={board.standings.title} word={board.standings.points} />
      {none ? (
        <p className="standings-none">{board.standings.none}</p>
      ) : (
        <div className="standings-all" data-size={size}>
          <StandingsRows rows={all.slice(0, MOST)} />
          {all.length > MOST && <p>{board.standings.more(all.length - MOST)}</p>}
          <PointsLine
            rows={all}
            most={100 * Math.max(1, room.rounds.length)}
            levels={size === 'large' ? 3 : 2}
          />
        </div>
      )}
    </>
  );
}
