import { Route } from 'lucide-react';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { turnsOf } from '../../parts/driving.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { NoteButton } from '../notes/note-button.tsx';
import './screens.css';

/** Robots drive on paper: when it is this team's turn, and which robot it takes. */
export function DriveScreen({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { onPaper } = useWords();
  const { turn } = room.driving;
  const turns = turnsOf(room).map((drives) => drives.find((drive) => drive.team.id === team.id));
  const at = turns.findIndex((drive, place) => place >= turn && drive);
  const drive = turns[at];
  return (
    <main className="screen">
      <div className="screen-card">
        <EmblemBadge emblem={team.emblem} size={48} />
        <NoteButton room={room} team={team} />
        <h1>
          <Icon of={Route} size={40} /> {onPaper.title}
        </h1>
        <p className="large-words" role="status">
          {drive
            ? at === turn
              ? onPaper.now(drive.robot)
              : onPaper.later(at + 1, drive.robot)
            : onPaper.noRobot}
        </p>
        <p>{onPaper.look}</p>
      </div>
    </main>
  );
}
