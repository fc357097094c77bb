import { type KeyboardEvent, type RefObject, useRef, useState } from 'react';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';

/** Opens the row of scenes: the next digit chooses one. Digits alone are teams. */
export const SCENES_KEY = 'A';
export const STILL_KEY = 'Z';
/** What goes on with the chosen scene: once more, the next page, over the next mark. */
export const GO_ON_KEY = 'D';

export function useGoOn(work: (() => void) | undefined): void {
  const keysOn = useDesk((state) => state.keysOn);
  useKeys({ [GO_ON_KEY.toLowerCase()]: work }, keysOn);
}

export interface SceneKeys {
  readonly row: RefObject<HTMLDivElement | null>;
  /** The row waits for a digit. */
  readonly open: boolean;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onBlur: () => void;
}

/** One key takes the focus to the row; then a digit chooses, arrows walk, and Esc goes back. */
export function useSceneKeys(choose: (place: number) => void): SceneKeys {
  const row = useRef<HTMLDivElement>(null);
  const keysOn = useDesk((state) => state.keysOn);
  const [open, setOpen] = useState(false);
  const buttons = () => [...(row.current?.querySelectorAll<HTMLButtonElement>('button:enabled') ?? [])];
  useKeys(
    {
      [SCENES_KEY.toLowerCase()]: () => {
        const all = buttons();
        (all.find((each) => each.ariaPressed === 'true') ?? all[0])?.focus();
        setOpen(true);
      },
    },
    keysOn,
  );
  const leave = () => {
    setOpen(false);
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  };
  const walk = (by: 1 | -1) => {
    const all = buttons();
    const at = all.indexOf(document.activeElement as HTMLButtonElement);
    all[(at + by + all.length) % all.length]?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const { key } = event;
    if (!open) return;
    if (/^[1-9]$/.test(key)) {
      choose(Number(key) - 1);
      leave();
    } else if (key === 'ArrowRight') walk(1);
    else if (key === 'ArrowLeft') walk(-1);
    else if (key === 'Escape') leave();
    else return;
    event.preventDefault();
  };
  return { row, open, onKeyDown, onBlur: () => setOpen(false) };
}
