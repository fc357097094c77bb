import { toScreen, type View } from '../../canvas/view.ts';
import type { Cursor } from './keyboard-hand.ts';
import './keyboard.css';

/** A crosshair; a ring round it while it holds something. */
export function KeyCursor({ cursor, view }: { readonly cursor: Cursor; readonly view: View }) {
  const { px, py } = toScreen(view, cursor.at);
  return (
    <div className="key-cursor" data-holds={cursor.holds} style={{ left: px, top: py }} aria-hidden="true">
      <i />
      <i />
    </div>
  );
}
