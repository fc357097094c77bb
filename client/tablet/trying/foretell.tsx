import { CircleCheck, CircleHelp, CircleX } from 'lucide-react';
import { type PointerEvent, useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Drawing } from '../../../shared/documents/design.ts';
import { GUESSES, type Guess } from '../../../shared/documents/reason.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { SheetView } from '../../canvas/sheet-view.tsx';
import { shownPicture } from '../../canvas/shown-picture.ts';
import { useFitted } from '../../canvas/use-fitted.ts';
import { toPaper } from '../../canvas/view.ts';
import { Button } from '../../parts/button.tsx';
import { Icon, type IconShape } from '../../parts/icon.tsx';
import { useKitOnScreen } from '../../parts/kit-on-screen.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';

export interface ForetellProps {
  readonly challenge: Challenge;
  readonly drawing: Drawing;
  readonly onSay: (guess: Guess, at: PaperPoint | null) => void;
}

const ICONS: Readonly<Record<Guess, IconShape>> = {
  'makes-it': CircleCheck,
  fails: CircleX,
  'not-sure': CircleHelp,
};

/** Before the first try of a changed drawing: whether it makes it, and if not, where. One or two taps. */
export function Foretell({ challenge, drawing, onSay }: ForetellProps) {
  const { foretelling } = useWords();
  const [asksWhere, setAsksWhere] = useState(false);
  const say = (guess: Guess) => (guess === 'fails' ? setAsksWhere(true) : onSay(guess, null));
  return (
    <>
      <GivenDrawing
        challenge={challenge}
        drawing={drawing}
        label={foretelling.where}
        onPlace={asksWhere ? (at) => onSay('fails', at) : null}
      />
      <aside className="trying-side foretell">
        <h2>{asksWhere ? foretelling.askWhere : foretelling.ask}</h2>
        {asksWhere ? (
          <Button onClick={() => onSay('fails', null)}>{foretelling.noIdea}</Button>
        ) : (
          GUESSES.map((guess) => (
            <Button key={guess} icon={<Icon of={ICONS[guess]} size={26} />} onClick={() => say(guess)}>
              {foretelling.guess(guess)}
            </Button>
          ))
        )}
      </aside>
    </>
  );
}

interface GivenDrawingProps {
  readonly challenge: Challenge;
  readonly drawing: Drawing;
  readonly label: string;
  /** Asks for a place, where there is one to ask for. */
  readonly onPlace: ((at: PaperPoint) => void) | null;
}

const TEXT_SIZE = 16;

function GivenDrawing({ challenge, drawing, label, onPlace }: GivenDrawingProps) {
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, 12);
  const picture = useMemo(
    () => shownPicture({ sheet, kit, layout: layOut(sheet, drawing), language }, TEXT_SIZE, view),
    [sheet, kit, drawing, language, view],
  );
  // Not its click: a browser makes none of a touch that rests, and a key has no place.
  const place = (event: PointerEvent<HTMLButtonElement>) => {
    if (!view || !onPlace) return;
    const rect = event.currentTarget.getBoundingClientRect();
    const { x, y } = toPaper(view, { px: event.clientX - rect.left, py: event.clientY - rect.top });
    onPlace({ x: whole(x, sheet.w), y: whole(y, sheet.h) });
  };
  return (
    <div className="trying-sheet" ref={frame}>
      {box && view && (
        <SheetView picture={picture} box={box} view={view} textSize={TEXT_SIZE} label={label}>
          {onPlace && (
            <button type="button" className="foretell-where" aria-label={label} onPointerUp={place} />
          )}
        </SheetView>
      )}
    </div>
  );
}

const whole = (mm: number, most: number): number => Math.round(Math.max(0, Math.min(most, mm)));
