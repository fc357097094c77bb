import { Hand } from 'lucide-react';
import type { ReactNode } from 'react';
import { Icon } from '../parts/icon.tsx';
import { useLinkState } from '../parts/use-link.tsx';
import { useWords } from '../parts/use-words.ts';

export interface HeadProps {
  readonly title: string;
  /** What stands at the right: a word, and something smaller under it. */
  readonly word?: ReactNode;
  readonly note?: ReactNode;
  /** How much of the heavy rule is drawn, 0 to 1: the time that is left. */
  readonly rule?: number | null;
}

/** The head of a scene, with the heavy rule under it. */
export function Head({ title, word, note, rule = null }: HeadProps) {
  const { board } = useWords();
  const lookHere = useLinkState((state) => state.room?.lookHere ?? false);
  return (
    <header className="board-head">
      <h1 className="board-title">{title}</h1>
      <div className="board-head-side">
        {lookHere ? (
          <p className="board-head-look">
            <Icon of={Hand} size="1.2em" />
            {board.look.title}
          </p>
        ) : (
          <>
            {word !== undefined && <p className="board-head-word">{word}</p>}
            {note !== undefined && <p className="board-head-note">{note}</p>}
          </>
        )}
      </div>
      <div className="board-rule">
        <div className="board-rule-ink" style={{ width: `${(rule ?? 1) * 100}%` }} />
      </div>
    </header>
  );
}
