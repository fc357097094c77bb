import { type RefObject, useEffect, useRef, useState } from 'react';
import { actionOf } from '../../../shared/documents/kit.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { Camera } from '../../canvas/use-camera.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { Hand, type ShowProposal } from '../surface/hand.ts';
import type { DrawingSession } from '../surface/session.ts';
import { type Under, underCursor } from './cursor.ts';
import { type Cursor, KeyboardHand } from './keyboard-hand.ts';

export interface KeyboardOptions {
  readonly session: DrawingSession;
  readonly camera: Camera;
  /** Whether the paper can be seen yet. */
  readonly ready: boolean;
  readonly resting: boolean;
  readonly show: ShowProposal;
  /** Keys that do something beside the cursor, by the letter. */
  readonly others: Readonly<Record<string, () => void>>;
}

/** A cursor on the paper for those who draw with keys, while the paper has the focus. */
export function useKeyboard(surface: RefObject<HTMLElement | null>, options: KeyboardOptions): Cursor | null {
  const { session, camera, ready, resting, show } = options;
  const [cursor, setCursor] = useState<Cursor | null>(null);
  const told = useTold(session);
  const newest = useRef({ told, others: options.others });
  newest.current = { told, others: options.others };
  useEffect(() => {
    const element = surface.current;
    if (!element || !ready || resting) return;
    const moved = (now: Cursor | null) => {
      setCursor(now);
      if (now) newest.current.told.at(now);
    };
    const hand = new KeyboardHand({
      session,
      camera,
      hand: new Hand(session, show),
      moved,
      noFreehand: () => newest.current.told.noFreehand(),
    });
    const end = new AbortController();
    const { signal } = end;
    const pressed = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const other = newest.current.others[event.key.toLowerCase()];
      if (other) other();
      else if (!hand.key(event.key, event.shiftKey)) return;
      event.preventDefault();
    };
    element.addEventListener('keydown', pressed, { signal });
    const come = () => {
      if (element.matches(':focus-visible') && element.dataset.touched === undefined) hand.come();
    };
    element.addEventListener('focusin', come, { signal });
    element.addEventListener('focusout', () => hand.leave(), { signal });
    element.addEventListener('pointerdown', () => hand.leave(), { signal });
    return () => {
      hand.leave();
      end.abort();
    };
  }, [surface, session, camera, ready, resting, show]);
  return cursor;
}

/** Says where the cursor is, and what is there. */
function useTold(session: DrawingSession) {
  const words = useWords();
  const locale = useLocale();
  const announce = useAnnounce();
  const { keys, numbers, actions } = words;
  const { sheet, kit } = session.context;
  const thing = (under: Under): string => {
    if (under.kind === 'berth')
      return textIn((under.which === 'finish' && sheet.finish ? sheet.finish : sheet.start).name, locale);
    if (under.kind === 'box') return keys.inBox(textIn(under.name, locale));
    if (under.kind !== 'mark') return keys.under(under.kind);
    const action = actionOf(kit, under.bands.join(''));
    return keys.mark(action ? actions.name(action) : actions.unknown);
  };
  return {
    at: ({ at, holds }: Cursor) => {
      const { design } = session.editor;
      const things = underCursor(at, design, session.context).map(thing);
      const place = keys.place(numbers.centimetres(at.x), numbers.centimetres(at.y));
      announce([place, ...things, ...(holds ? [keys.holds] : [])].join(', '));
    },
    noFreehand: () => announce(keys.noFreehand),
  };
}
