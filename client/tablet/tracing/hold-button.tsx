import { LockOpen } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

/** As the words of the button say. */
const HOLD_MS = 2000;
const KEYS: readonly string[] = ['Escape', 'Enter', ' '];

/** Does something after it has been held for 2 seconds, by finger or by key; nothing when it is let go. */
export function HoldButton({ onHeld }: { readonly onHeld: () => void }) {
  const { tracing } = useWords();
  const [held, setHeld] = useState(false);
  const end = useRef(onHeld);
  end.current = onHeld;
  useEffect(() => {
    if (!held) return;
    const timer = setTimeout(() => end.current(), HOLD_MS);
    return () => clearTimeout(timer);
  }, [held]);
  useHeldKeys(setHeld);
  const letGo = () => setHeld(false);
  return (
    <>
      <Button
        autoFocus
        className="tracing-hold"
        data-held={held}
        icon={<Icon of={LockOpen} size={22} />}
        onPointerDown={() => setHeld(true)}
        onPointerUp={letGo}
        onPointerLeave={letGo}
        onPointerCancel={letGo}
      >
        {tracing.hold}
      </Button>
      <span className="quiet-words">{tracing.holdKey}</span>
    </>
  );
}

/** Wherever the focus is: before the browser takes Escape for closing the dialog. */
function useHeldKeys(setHeld: (held: boolean) => void): void {
  useEffect(() => {
    const down = (event: KeyboardEvent) => KEYS.includes(event.key) && setHeld(true);
    const up = (event: KeyboardEvent) => KEYS.includes(event.key) && setHeld(false);
    const away = () => setHeld(false);
    window.addEventListener('keydown', down, true);
    window.addEventListener('keyup', up, true);
    window.addEventListener('blur', away);
    return () => {
      window.removeEventListener('keydown', down, true);
      window.removeEventListener('keyup', up, true);
      window.removeEventListener('blur', away);
    };
  }, [setHeld]);
}
