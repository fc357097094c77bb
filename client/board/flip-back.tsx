import { useEffect, useState } from 'react';
import { useWords } from '../parts/use-words.ts';
import './flip-back.css';

const asked = new URLSearchParams(location.search);
/** On the one screen of a laptop the desk has led here, and a key leads back. */
const FLIPPED = asked.get('flip') === '1';
const room = asked.get('room');
const DESK = room === null ? '/desk' : `/desk?room=${encodeURIComponent(room)}`;
/** The sign for it is only there while somebody moves the mouse, ms. */
const SHOWN_FOR = 3000;

export function FlipBack() {
  return FLIPPED ? <Flip /> : null;
}

function Flip() {
  const { board } = useWords();
  const [shown, setShown] = useState(true);
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
      if (plain && event.key.toLowerCase() === 'b') location.assign(DESK);
    };
    let timer = setTimeout(() => setShown(false), SHOWN_FOR);
    const moved = () => {
      clearTimeout(timer);
      setShown(true);
      timer = setTimeout(() => setShown(false), SHOWN_FOR);
    };
    window.addEventListener('keydown', pressed);
    window.addEventListener('pointermove', moved);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('keydown', pressed);
      window.removeEventListener('pointermove', moved);
    };
  }, []);
  return (
    <a className="flip-back" href={DESK} data-shown={shown}>
      {board.flipBack} <kbd>B</kbd>
    </a>
  );
}
