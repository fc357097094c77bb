import { useEffect, useState } from 'react';
import { DeviceSettingsButton, openDeviceSettings } from '../parts/device-settings-dialog.tsx';
import { useWords } from '../parts/use-words.ts';
import './signs.css';

const asked = new URLSearchParams(location.search);
/** On the one screen of a laptop the desk has led here, and a key leads back. */
const FLIPPED = asked.get('flip') === '1';
const room = asked.get('room');
const DESK = room === null ? '/desk' : `/desk?room=${encodeURIComponent(room)}`;
/** Signs are only there while somebody moves the mouse, ms. */
const SHOWN_FOR = 3000;

const KEYS: Readonly<Record<string, () => void>> = {
  l: openDeviceSettings,
  ...(FLIPPED ? { b: () => location.assign(DESK) } : {}),
};

/** What can be pressed on a page that is only looked at. Keys do the same. */
export function Signs() {
  const { board } = useWords();
  const shown = useMouseMoved();
  useBoardKeys();
  return (
    <div className="board-signs" data-shown={shown}>
      <DeviceSettingsButton shortcut="L" />
      {FLIPPED && (
        <a className="flip-back" href={DESK}>
          {board.flipBack} <kbd>B</kbd>
        </a>
      )}
    </div>
  );
}

function useBoardKeys(): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || document.querySelector('dialog[open]')) return;
      KEYS[event.key.toLowerCase()]?.();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, []);
}

/** True while the mouse moves; on the one screen at the beginning too. */
function useMouseMoved(): boolean {
  const [shown, setShown] = useState(FLIPPED);
  useEffect(() => {
    let timer = setTimeout(() => setShown(false), SHOWN_FOR);
    const moved = () => {
      clearTimeout(timer);
      setShown(true);
      timer = setTimeout(() => setShown(false), SHOWN_FOR);
    };
    window.addEventListener('pointermove', moved);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('pointermove', moved);
    };
  }, []);
  return shown;
}
