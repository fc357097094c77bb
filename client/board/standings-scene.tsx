import type { RoomState } from '../../shared/room/state.ts';
import { standingsOf } from '../parts/figures.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { PointsLine } from './points-line.tsx';
import { StandingsRows } from './standings.tsx';
import './standings-scene.css';

/** What fits on the whole board, three columns of twelve. */
const MOST = 36;

/** The table alone, as large as it can be. */
export function StandingsScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const all = standingsOf(room);
  const none = all.every((row) => row.rank === null);
  return (
    <>
      <Head title={board.standings.title} word={board.standings.points} />
      <div className="standings-all" data-many={all.length > 16}>
        {none ? (
          <p className="standings-none">{board.standings.none}</p>
        ) : (
          <StandingsRows rows={all.slice(0, MOST)} />
        )}
        {all.length > MOST && <p>{board.standings.more(all.length - MOST)}</p>}
        {!none && <PointsLine rows={all} most={100 * Math.max(1, room.rounds.length)} />}
      </div>
    </>
  );
}
