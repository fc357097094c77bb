import type { RoomState, Team } from '../../../shared/room/state.ts';
import { emblemIcon } from '../../parts/emblem-icons.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { NoteButton } from '../notes/note-button.tsx';
import { SwapEmblem } from './swap-emblem.tsx';
import './screens.css';

/** The team's emblem, as big as can be: it is what the children look for on the board. */
export function WaitingScreen({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const words = useWords();
  const { waiting } = words.tablet;
  return (
    <main className="screen">
      <div className="screen-card emblem-card">
        <p className="quiet-words">{waiting.youAre}</p>
        <div className="emblem-huge">
          <Icon of={emblemIcon(team.emblem)} size="min(42vmin, 300px)" />
        </div>
        <h1 className="emblem-name">{words.emblems.name(team.emblem)}</h1>
        <div className="berth-row">
          <p className="berth-number">{waiting.berth(team.berth)}</p>
          <NoteButton room={room} team={team} />
        </div>
        <p className="large-words">{waiting.soon}</p>
        {room.phase === 'gather' && <SwapEmblem room={room} />}
      </div>
    </main>
  );
}
