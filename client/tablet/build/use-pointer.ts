import { type RefObject, useEffect } from 'react';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { pixelsInMm, toPaper, type View } from '../../canvas/view.ts';
import { begin, type Touch } from '../editor/gesture.ts';
import { finish, follow, type Progress, type Proposal, propose, start } from '../editor/propose.ts';
import type { DrawingSession } from './session.ts';

/** How near counts as "there", CSS pixels: half a finger, the tip of a pen, an arrow. */
const REACH: Readonly<Record<string, number>> = { touch: 24, pen: 16, mouse: 12 };

/** Shows what would come of a gesture; null when none is under way. */
export type ShowProposal = (proposal: Proposal | null, progress: Progress | null) => void;

export interface PointerOptions {
  readonly session: DrawingSession;
  readonly view: View | null;
  /** While true no new stroke begins; one that is under way is finished. */
  readonly resting: boolean;
  readonly show: ShowProposal;
}

/**
 * One finger, pen or mouse at a time on the paper. What it does is worked out once a frame past React
 * and committed once, when it goes up. A stroke that the system breaks off is kept as far as it came.
 */
export function usePointer(surface: RefObject<HTMLElement | null>, options: PointerOptions): void {
  const { session, view, resting, show } = options;
  useEffect(() => {
    const element = surface.current;
    if (!element || !view) return;
    // Arrow keys move what is chosen on the paper, so it takes the focus.
    element.tabIndex = 0;
    const hand = new Hand(element, session, view, show);
    const down = (event: PointerEvent) => {
      if (!resting) hand.down(event);
    };
    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', hand.move);
    element.addEventListener('pointerup', hand.up);
    element.addEventListener('pointercancel', hand.cancel);
    return () => {
      element.removeEventListener('pointerdown', down);
      // A stroke in progress goes on to its end with the hand that began it.
      hand.leaveWhenFree(() => {
        element.removeEventListener('pointermove', hand.move);
        element.removeEventListener('pointerup', hand.up);
        element.removeEventListener('pointercancel', hand.cancel);
      });
    };
  }, [surface, session, view, resting, show]);
}

class Hand {
  readonly #element: HTMLElement;
  readonly #session: DrawingSession;
  readonly #view: View;
  readonly #show: ShowProposal;
  #pointer: number | null = null;
  #progress: Progress | null = null;
  #touch: Touch | null = null;
  #frame = 0;
  #left: (() => void) | null = null;

  constructor(element: HTMLElement, session: DrawingSession, view: View, show: ShowProposal) {
    this.#element = element;
    this.#session = session;
    this.#view = view;
    this.#show = show;
  }

  readonly down = (event: PointerEvent): void => {
    if (this.#pointer !== null || event.button !== 0) return;
    event.preventDefault();
    this.#element.setPointerCapture(event.pointerId);
    // Arrow keys now move what is chosen, and no longer the tool that was chosen before.
    this.#element.dataset.touched = '';
    this.#element.focus({ preventScroll: true });
    this.#pointer = event.pointerId;
    const touch = this.#touchOf(event, this.#paperOf(event));
    this.#touch = touch;
    const { editor, context } = this.#session;
    this.#progress = start(begin(editor, context, touch), editor, context, touch);
    this.#session.finger(true);
    this.#draw();
  };

  readonly move = (event: PointerEvent): void => {
    if (event.pointerId !== this.#pointer || !this.#progress) return;
    const all = event.getCoalescedEvents?.() ?? [];
    const points = (all.length > 0 ? all : [event]).map((each) => this.#paperOf(each));
    this.#touch = this.#touchOf(event, points.at(-1)!);
    const { editor, context } = this.#session;
    this.#progress = follow(this.#progress, editor, context, points, this.#touch.reach);
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#draw());
  };

  readonly up = (event: PointerEvent): void => {
    if (event.pointerId === this.#pointer) this.#end(this.#touchOf(event, this.#paperOf(event)), true);
  };

  readonly cancel = (event: PointerEvent): void => {
    if (event.pointerId !== this.#pointer || !this.#touch) return;
    this.#end(this.#touch, this.#progress?.gesture.kind === 'stroke');
  };

  /** Calls `leave` at once, or when the stroke in progress has ended. */
  leaveWhenFree(leave: () => void): void {
    if (this.#pointer === null) leave();
    else this.#left = leave;
  }

  #end(touch: Touch, keep: boolean): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    const progress = this.#progress;
    this.#pointer = null;
    this.#progress = null;
    this.#show(null, null);
    const { editor, context } = this.#session;
    if (progress && keep) this.#session.take(finish(progress, editor, context, touch));
    this.#session.finger(false);
    this.#left?.();
    this.#left = null;
  }

  #draw(): void {
    this.#frame = 0;
    if (!this.#progress || !this.#touch) return;
    const { editor, context } = this.#session;
    this.#show(propose(this.#progress, editor, context, this.#touch), this.#progress);
  }

  #paperOf(event: PointerEvent): PaperPoint {
    const box = this.#element.getBoundingClientRect();
    return toPaper(this.#view, { px: event.clientX - box.left, py: event.clientY - box.top });
  }

  #touchOf(event: PointerEvent, at: PaperPoint): Touch {
    return { at, reach: pixelsInMm(this.#view, REACH[event.pointerType] ?? 16) };
  }
}
