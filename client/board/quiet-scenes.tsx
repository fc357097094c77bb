import { Hand, Pause } from 'lucide-react';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
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
