import { createContext, type ReactNode, useCallback, useContext, useState } from 'react';

const Announcing = createContext<(sentence: string) => void>(() => {});

/** A polite live region for the whole page. A sentence said twice is read twice. */
export function Announcer({ children }: { readonly children: ReactNode }) {
  const [said, setSaid] = useState({ sentence: '', turn: 0 });
  const say = useCallback(
    (sentence: string) => setSaid((before) => ({ sentence, turn: before.turn + 1 })),
    [],
  );
  return (
    <Announcing value={say}>
      {children}
      <div className="only-read-aloud" role="status" aria-live="polite">
        <span key={said.turn}>{said.sentence}</span>
      </div>
    </Announcing>
  );
}

/** Says a sentence to whoever listens to the page instead of looking at it. */
export const useAnnounce = (): ((sentence: string) => void) => useContext(Announcing);
