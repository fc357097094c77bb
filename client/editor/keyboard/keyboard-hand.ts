import type { PaperPoint } from '../../../shared/geometry/units.ts';
import type { Camera } from '../../canvas/use-camera.ts';
import type { Touch } from '../gesture.ts';
import { type Tool, toolsOf } from '../model.ts';
import { isPlace, snap } from '../snap.ts';
import type { Hand } from '../surface/hand.ts';
import type { DrawingSession } from '../surface/session.ts';
import { nextPlace, placesOf, REACH, stepped, type Way } from './cursor.ts';

const ARROWS: Readonly<Record<string, Way>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};
/** These do their work at one place; the others take hold, are led by the arrows, and let go. */
const AT_ONCE: readonly Tool[] = ['mark', 'rub'];
const FINE_REACH = 1;

/** Where the cursor is, and whether it holds something. */
export interface Cursor {
  readonly at: PaperPoint;
  readonly holds: boolean;
}

export interface KeyboardParts {
  readonly session: DrawingSession;
  readonly camera: Camera;
  /** One of its own: a finger on the paper has another. */
  readonly hand: Hand;
  /** Told after every key that the cursor took. */
  readonly moved: (cursor: Cursor | null) => void;
  /** A freehand stroke is the way of a hand; keys draw straights instead. */
  readonly noFreehand: () => void;
}

/** A finger that is led by keys: arrows move it, Enter puts it down and lifts it. */
export class KeyboardHand {
  readonly #parts: KeyboardParts;
  #cursor: Cursor | null = null;
  /** The last step was a fine one: only what is really there catches. */
  #fine = false;

  constructor(parts: KeyboardParts) {
    this.#parts = parts;
  }

  /** Whether the key meant something here. */
  key(key: string, shift: boolean): boolean {
    const way = ARROWS[key];
    if (way) return this.#arrow(way, shift);
    if (key === 'Enter' || key === ' ') return this.#press(shift);
    if (key === 'Escape') return this.#escape();
    if (key === 'n' || key === 'N') return this.#jump(shift);
    const { session } = this.#parts;
    const tool = toolsOf(session.context.play)[Number(key) - 1];
    if (!tool) return false;
    this.#drop();
    session.tool(tool);
    return true;
  }

  /** The focus came by keys. */
  come(): void {
    if (!this.#cursor) this.#appear();
  }

  /** The focus or another hand has gone to work elsewhere. */
  leave(): void {
    if (!this.#cursor) return;
    this.#drop();
    this.#set(null);
  }

  #set(cursor: Cursor | null): void {
    this.#cursor = cursor;
    if (cursor) this.#parts.camera.reveal(cursor.at);
    this.#parts.moved(cursor);
  }

  /** Without a cursor arrows push what is chosen, as they do after a touch. */
  #arrow(way: Way, fine: boolean): boolean {
    const { session } = this.#parts;
    if (!this.#cursor) {
      if (session.editor.selection) return false;
      this.#appear();
      return true;
    }
    this.#fine = fine;
    this.#go(stepped(this.#cursor.at, way, fine, session.context.sheet));
    return true;
  }

  #appear(): void {
    this.#fine = false;
    this.#set({ at: this.#parts.session.context.sheet.start.at, holds: false });
  }

  #go(at: PaperPoint): void {
    const holds = this.#cursor?.holds ?? false;
    this.#set({ at, holds });
    if (holds) this.#parts.hand.follow([at], this.#touch(at));
  }

  #jump(back: boolean): boolean {
    if (!this.#cursor) this.#appear();
    const { editor, context } = this.#parts.session;
    this.#fine = true;
    this.#go(nextPlace(this.#cursor!.at, placesOf(editor.design, context), back));
    return true;
  }

  #press(adds: boolean): boolean {
    if (!this.#cursor) {
      this.#appear();
      return true;
    }
    const { session, hand, noFreehand } = this.#parts;
    const { at, holds } = this.#cursor;
    if (!holds && session.editor.tool === 'freehand') {
      session.tool('straight');
      noFreehand();
    }
    const touch = { ...this.#touch(at), adds };
    if (!holds) {
      session.finger(true);
      hand.begin(touch);
    }
    const lifts = holds || adds || AT_ONCE.includes(session.editor.tool);
    if (lifts) {
      hand.finish(touch);
      session.finger(false);
    }
    this.#set({ at, holds: !lifts });
    return true;
  }

  #escape(): boolean {
    if (!this.#cursor) return false;
    const { holds, at } = this.#cursor;
    this.#drop();
    this.#set(holds ? { at, holds: false } : null);
    return holds;
  }

  #drop(): void {
    if (!this.#cursor?.holds) return;
    this.#parts.hand.drop();
    this.#parts.session.finger(false);
    this.#cursor = { ...this.#cursor, holds: false };
  }

  /** Off the grid nothing is pulled back onto it, but ends, berths and lines still catch. */
  #touch(at: PaperPoint): Touch {
    const { session, camera } = this.#parts;
    const { editor, context } = session;
    const reach = this.#fine ? FINE_REACH : REACH;
    const caught = snap(at, { design: editor.design, context, reach });
    const free = session.store.getState().free || (this.#fine && !isPlace(caught));
    return { at, reach, pixel: 1 / (camera.view()?.scale ?? 1), free };
  }
}
