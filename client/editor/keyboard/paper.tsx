import { type RefObject, useId } from 'react';
import type { View } from '../../canvas/view.ts';
import { useWords } from '../../parts/use-words.ts';
import { KeyCursor } from './key-cursor.tsx';
import type { Cursor } from './keyboard-hand.ts';

export interface PaperProps {
  readonly surface: RefObject<HTMLDivElement | null>;
  readonly label: string;
  readonly cursor: Cursor | null;
  readonly view: View;
}

/** What hands and keys draw on: it takes the focus, and says how keys draw. */
export function Paper({ surface, label, cursor, view }: PaperProps) {
  const { keys } = useWords();
  const howId = useId();
  return (
    <>
      <div className="surface" ref={surface} role="application" aria-label={label} aria-describedby={howId} />
      <p id={howId} className="only-read-aloud">
        {keys.how}
      </p>
      {cursor && <KeyCursor cursor={cursor} view={view} />}
    </>
  );
}
