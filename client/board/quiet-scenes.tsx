import { Hand, Pause } from 'lucide-react';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { classFigures } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { IDLE_DRAWING, IDLE_SHEET } from './idle-sheet.ts';
import { SheetPicture } from './sheet-picture.tsx';
import { HarbourWall } from './wall-scene.tsx';
import './quiet-scenes.css';

/** Before any room is open. */
export function NoRoom() {
  const { board } = useWords();
  return (
    <>
      <Head title={board.title} />
      <div className="no-room">
        <SheetPicture
          challenge={{ sheet: IDLE_SHEET, kit: DEMO_KIT }}
          drawing={IDLE_DRAWING}
          label={board.title}
        />
        <div>
          <h2>{board.noRoom.title}</h2>
          <p>{board.noRoom.next}</p>
        </div>
      </div>
    </>
  );
}

export function LookHere() {
  const { board } = useWords();
  return (
    <div className="look-here">
      <Icon of={Hand} size="7rem" />
      <h1>{board.look.title}</h1>
      <p>{board.look.note}</p>
    </div>
  );
}

export function Paused() {
  const { board } = useWords();
  return (
    <div className="look-here">
      <Icon of={Pause} size="7rem" />
      <h1>{board.paused.title}</h1>
      <p>{board.paused.note}</p>
    </div>
  );
}

/** The end: what the class did together, and everybody in their berths. */
export function Together({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  return (
    <>
      <Head title={board.close.title} word={room.word} />
      <div className="together">
        <div>
          <ul className="together-lines">
            {board.together(classFigures(room)).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p className="together-count">{board.close.count}</p>
        </div>
        <HarbourWall teams={room.teams} berths={room.teams.length} />
      </div>
    </>
  );
}
