import { Eraser } from 'lucide-react';
import { textIn } from '../../../shared/documents/values.ts';
import { Icon } from '../../parts/icon.tsx';
import { useKitOnScreen } from '../../parts/kit-on-screen.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from './session.ts';
import { useSessionState } from './use-session-state.ts';

/** The inks that bands are painted with, and the line's own colour, which takes them away. */
export function InkChoice({ session }: { readonly session: DrawingSession }) {
  const words = useWords().tablet.building;
  const locale = useLocale();
  const chosen = useSessionState(session, ({ editor }) => editor.ink);
  const kit = useKitOnScreen(session.context.kit);
  return (
    <div className="hint-choice" role="radiogroup" aria-label={words.inks}>
      {[...kit.inks, null].map((ink) => (
        <label key={ink?.id ?? ''} className="choice" data-chosen={(ink?.id ?? null) === chosen}>
          <input
            type="radio"
            name="ink"
            className="tool-input"
            checked={(ink?.id ?? null) === chosen}
            onChange={() => session.choose({ ink: ink?.id ?? null })}
          />
          {ink ? <MarkPicture kit={session.context.kit} word={ink.id} /> : <Icon of={Eraser} />}
          {ink ? textIn(ink.name, locale) : words.noBand}
        </label>
      ))}
    </div>
  );
}
