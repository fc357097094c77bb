import { Hand, Pause } from 'lucide-react';
import type { RoomState } from '../../shared/room/state.ts';
import { classFigures } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { HarbourWall } from './wall-scene.tsx';
import './quiet-scenes.css';

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
