import type { Drive } from '../../shared/prep/driving-rota.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { turnsOf } from '../parts/driving.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { MemberBadge } from './team-badge.tsx';
import './driving-scene.css';

/** Whose turn it is, with which robot, and who comes after. What robots did is not told here. */
export function DrivingScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const { turn } = room.driving;
  // Who would rather not be on the wall learns of its turn on its tablet.
  const turns = turnsOf(room).map((drives) => drives.filter(({ team }) => team.wall !== 'not-at-all'));
  const now = turns[turn];
  const size = sizeFor(now?.length ?? 0);
  // Beside a long list there is no room for the next one.
  const next = size === 'large' ? turns[turn + 1] : undefined;
  return (
    <>
      <Head title={board.drive.title} word={now ? board.drive.turn(turn + 1) : ''} />
      {now ? (
        <div className="driving" data-size={size}>
          <Drives drives={now} numberAlone={size === 'small'} />
          {next && (
            <section className="driving-next">
              <h2>{board.drive.next}</h2>
              <Drives drives={next} numberAlone={false} />
            </section>
          )}
        </div>
      ) : (
        <p className="driving-none">{board.drive.none}</p>
      )}
    </>
  );
}

const sizeFor = (drives: number) => (drives <= 6 ? 'large' : drives <= 14 ? 'middle' : 'small');

interface DrivesProps {
  readonly drives: readonly Drive<Team>[];
  /** Without the word, where many stand side by side. */
  readonly numberAlone: boolean;
}

function Drives({ drives, numberAlone }: DrivesProps) {
  const { board } = useWords();
  return (
    <ul className="driving-list">
      {drives.map(({ team, robot }) => (
        <li key={team.id}>
          <MemberBadge team={team} size="1.2em" />
          <strong>{numberAlone ? robot : board.drive.robot(robot)}</strong>
        </li>
      ))}
    </ul>
  );
}
