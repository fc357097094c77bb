import { useEffect, useRef } from 'react';
import { keepText, keptText } from '../parts/kept-text.ts';

/** What a key does; undefined where it does nothing now. */
export type KeyMap = Readonly<Record<string, (() => void) | undefined>>;

const KEPT = 'harbour-lines.desk.keys';

/** Single keys can be switched off: speech input and shaky hands press them by accident. */
export const keysAreOn = (): boolean => keptText(KEPT) !== 'off';
export const switchKeys = (on: boolean): void => keepText(KEPT, on ? 'on' : 'off');

const takesText = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName)) &&
  !(target instanceof HTMLInputElement && /^(checkbox|radio|button|range|file)$/.test(target.type));

/** A range input and radio buttons use the arrows themselves. */
const usesArrows = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && /^(radio|range)$/.test(target.type);

/** `n`, `?`, `Shift+3`, `ArrowLeft`: letters without their shift, digits by their place on the keyboard. */
export function keyName(event: Pick<KeyboardEvent, 'key' | 'code' | 'shiftKey'>): string {
  const digit = /^(?:Digit|Numpad)(\d)$/.exec(event.code)?.[1];
  if (digit !== undefined && (event.shiftKey || event.key === digit))
    return event.shiftKey ? `Shift+${digit}` : digit;
  return event.key.length === 1 ? event.key.toLowerCase() : event.key;
}

/** Listens for single keys on the whole page, while nothing is being typed and no dialog is open. */
export function useKeys(map: KeyMap, on: boolean): void {
  const newest = useRef(map);
  newest.current = map;
  useEffect(() => {
    if (!on) return;
    const pressed = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (takesText(event.target) || document.querySelector('dialog[open]')) return;
      const name = keyName(event);
      if (name.startsWith('Arrow') && usesArrows(event.target)) return;
      const work = newest.current[name];
      if (!work) return;
      event.preventDefault();
      work();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [on]);
}
