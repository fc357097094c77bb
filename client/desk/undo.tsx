import { Undo2 } from 'lucide-react';
import { useEffect } from 'react';
import { UNDO_MS } from '../../shared/wire/desks.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { useWholeWords } from './whole-words.ts';
import './undo.css';

/** Says what was just removed or ended, with the way back. It stands beside the page, never over it. */
export function UndoBar() {
  const { desk } = useWholeWords();
  const { undoable, offerUndo, keysOn } = useDesk();
  const announce = useAnnounce();
  useEffect(() => {
    if (!undoable) return;
    announce(`${undoable.said} ${desk.undo.back}: U`);
    const timer = setTimeout(() => offerUndo(null), UNDO_MS);
    return () => clearTimeout(timer);
  }, [undoable, offerUndo, announce, desk]);
  const takeBack = () => {
    undoable?.back();
    offerUndo(null);
  };
  useKeys({ u: undoable ? takeBack : undefined }, keysOn);
  if (!undoable) return null;
  return (
    <section className="undo-bar" aria-label={undoable.said}>
      <p>{undoable.said}</p>
      <Button icon={<Icon of={Undo2} />} shortcut="U" onClick={takeBack}>
        {desk.undo.back}
      </Button>
    </section>
  );
}
