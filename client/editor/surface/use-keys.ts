import { useEffect } from 'react';
import type { DrawingSession } from './session.ts';

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const FAR = 5;

/** Whether a key goes to something that is typed or chosen in. */
export const typesText = ({ target }: KeyboardEvent): boolean =>
  target instanceof HTMLElement &&
  target.closest('dialog, select, textarea, input:not([type="radio"])') !== null;

/** Letters and signs alone work only on the paper, for those whose keys are pressed by speech or by chance. */
export const isOnPaper = ({ target }: KeyboardEvent): boolean =>
  target instanceof HTMLElement && target.closest('.surface') !== null;

/** A key that means something to the element that has the focus is left to it. */
function isTaken(event: KeyboardEvent): boolean {
  if (!(event.target instanceof HTMLElement)) return false;
  if (typesText(event)) return true;
  return event.key in ARROWS && event.target.closest('[role="radiogroup"]') !== null;
}

/** Undo and redo, choosing and copying all, arrows to nudge what is chosen, delete, F to flip, Escape to let go. */
export function useKeys(session: DrawingSession, resting: boolean): void {
  useEffect(() => {
    if (resting) return;
    const listen = (event: KeyboardEvent) => {
      if (event.key === 'Tab') delete document.querySelector<HTMLElement>('.surface')?.dataset.touched;
      if (event.defaultPrevented || isTaken(event) || event.altKey) return;
      const done = event.ctrlKey || event.metaKey ? withControl(session, event) : plain(session, event);
      if (done) event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [session, resting]);
}

function withControl(session: DrawingSession, event: KeyboardEvent): boolean {
  const key = event.key.toLowerCase();
  if (key === 'z' && !event.shiftKey) session.undo();
  else if (key === 'y' || key === 'z') session.redo();
  else if (key === 'a') session.chooseAll();
  else if (key === 'd') session.copy();
  else return false;
  return true;
}

function plain(session: DrawingSession, event: KeyboardEvent): boolean {
  const arrow = ARROWS[event.key];
  if (arrow && session.editor.selection) {
    const step = event.shiftKey ? FAR : 1;
    session.nudge(arrow[0] * step, arrow[1] * step);
    return true;
  }
  if (event.key === 'Delete' || event.key === 'Backspace') session.rubChosen();
  else if ((event.key === 'f' || event.key === 'F') && isOnPaper(event)) session.flip();
  else if (event.key === 'Escape') session.choose({ selection: null });
  else return false;
  return true;
}
