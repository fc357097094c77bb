import { type RefObject, useEffect, useRef } from 'react';
import type { ScreenPoint } from '../../../shared/geometry/units.ts';
import type { Camera } from '../../canvas/use-camera.ts';
import { pixelsInMm, toPaper, type View } from '../../canvas/view.ts';
import type { Touch } from '../gesture.ts';
import {
  type Contact,
  contactDown,
  contactGone,
  contactMoved,
  type Deed,
  type Hands,
  type HandsState,
  type Turn,
} from './contacts.ts';
import { Hand, type ShowProposal } from './hand.ts';
import type { DrawingSession } from './session.ts';
import { Wheel } from './wheel.ts';

type Kind = Contact['kind'];

/** How near counts as "there", CSS pixels: half a finger, the tip of a pen, an arrow. */
const REACH: Readonly<Record<Kind, number>> = { touch: 24, pen: 16, mouse: 12 };

export interface PointerOptions {
  readonly session: DrawingSession;
  readonly camera: Camera;
  /** Whether the paper can be seen yet. */
  readonly ready: boolean;
  /** While true no new stroke begins; one that is under way is finished. */
  readonly resting: boolean;
  readonly show: ShowProposal;
}

/** Fingers, a pen or a mouse on the paper: one draws, two move and enlarge it, as does the wheel. */
export function usePointer(surface: RefObject<HTMLElement | null>, options: PointerOptions): void {
  const { session, camera, ready, resting, show } = options;
  const rests = useRef(resting);
  rests.current = resting;
  useEffect(() => {
    const element = surface.current;
    if (!element || !ready) return;
    // Arrow keys move what is chosen on the paper, so it takes the focus.
    element.tabIndex = 0;
    const paper = new Paper(element, session, camera, new Hand(session, show));
    const stop = paper.listen(() => rests.current);
    return stop;
  }, [surface, session, camera, ready, show]);
}

/** Turns what a browser says of its pointers into what hands do on the paper. */
class Paper {
  readonly #element: HTMLElement;
  readonly #session: DrawingSession;
  readonly #camera: Camera;
  readonly #hand: Hand;
  readonly #wheel = new Wheel();
  #hands: Hands = { kind: 'none' };
  #kind: Kind = 'mouse';

  constructor(element: HTMLElement, session: DrawingSession, camera: Camera, hand: Hand) {
    this.#element = element;
    this.#session = session;
    this.#camera = camera;
    this.#hand = hand;
  }

  /** Until the returned function is called. */
  listen(resting: () => boolean): () => void {
    const element = this.#element;
    const end = new AbortController();
    const { signal } = end;
    const down = (event: PointerEvent) => {
      if (!resting()) this.#down(event);
    };
    const cancelled = (event: PointerEvent) => this.#gone(event, 'cancelled');
    element.addEventListener('pointerdown', down, { signal });
    element.addEventListener('pointermove', (event) => this.#moved(event), { signal });
    element.addEventListener('pointerup', (event) => this.#gone(event, 'up'), { signal });
    element.addEventListener('pointercancel', cancelled, { signal });
    // After an up or a cancel its contact is known no more, so that this finds only what was lost.
    element.addEventListener('lostpointercapture', cancelled, { signal });
    element.addEventListener('wheel', (event) => this.#turned(event), { signal, passive: false });
    // Safari enlarges the page by two fingers unless its own events are refused. And after a stroke that
    // ends fast a browser takes the next tap, on a button elsewhere, for the end of a scroll, unless it
    // has been told that it has no part in the touch.
    const refuse = (event: Event) => event.preventDefault();
    for (const name of ['gesturestart', 'gesturechange', 'touchstart'])
      element.addEventListener(name, refuse, { signal, passive: false });
    return () => {
      end.abort();
      this.#hand.break();
    };
  }

  #down(event: PointerEvent): void {
    const pushes = event.button === 1;
    if (event.button !== 0 && !pushes) return;
    event.preventDefault();
    // Arrow keys now move what is chosen, and no longer the tool that was chosen before.
    this.#element.dataset.touched = '';
    this.#element.focus({ preventScroll: true });
    this.#element.setPointerCapture(event.pointerId);
    const kind = kindOf(event);
    const contact: Contact = {
      id: event.pointerId,
      kind,
      at: this.#placeOf(event),
      t: event.timeStamp / 1000,
      size: Math.max(event.width, event.height),
      pushes,
    };
    this.#take(contactDown(this.#state, contact), event);
  }

  #moved(event: PointerEvent): void {
    this.#take(contactMoved(this.#state, event.pointerId, this.#placeOf(event)), event);
  }

  #gone(event: PointerEvent, how: 'up' | 'cancelled'): void {
    this.#take(contactGone(this.#state, event.pointerId, how), event);
  }

  get #state(): HandsState {
    return { hands: this.#hands, pen: this.#session.store.getState().pen };
  }

  #take({ state, deed }: Turn, event: PointerEvent): void {
    this.#hands = state.hands;
    this.#session.usesPen(state.pen);
    this.#do(deed, event);
    this.#session.finger(state.hands.kind !== 'none');
  }

  #do(deed: Deed, event: PointerEvent): void {
    const view = this.#camera.view();
    if (!view) return;
    switch (deed.kind) {
      case 'pull':
        this.#camera.pull(deed.before, deed.now);
        break;
      case 'begin':
        this.#kind = kindOf(event);
        this.#hand.drop();
        this.#hand.begin(this.#touchOf(event, view));
        break;
      case 'follow':
        this.#follow(event, view);
        break;
      case 'finish':
        this.#hand.finish(this.#touchOf(event, view));
        break;
      case 'break':
        this.#hand.break();
        break;
      case 'drop':
        this.#hand.drop();
        break;
      case 'nothing':
    }
  }

  /** Through every place that the browser has gathered since its last word. */
  #follow(event: PointerEvent, view: View): void {
    const all = event.getCoalescedEvents?.() ?? [];
    const passed = all.length > 0 ? all : [event];
    const points = passed.map((each) => toPaper(view, this.#placeOf(each)));
    this.#hand.follow(points, this.#touchOf(event, view));
  }

  #turned(event: WheelEvent): void {
    event.preventDefault();
    const deed = this.#wheel.turn({
      dx: event.deltaX,
      dy: event.deltaY,
      coarse: event.deltaMode !== 0,
      control: event.ctrlKey,
      shift: event.shiftKey,
      t: event.timeStamp / 1000,
    });
    const at = this.#placeOf(event);
    if (deed.kind === 'zoom') this.#camera.zoom(deed.factor, at);
    else this.#camera.pull([at], [{ px: at.px + deed.dx, py: at.py + deed.dy }]);
  }

  #placeOf(event: MouseEvent): ScreenPoint {
    const box = this.#element.getBoundingClientRect();
    return { px: event.clientX - box.left, py: event.clientY - box.top };
  }

  #touchOf(event: PointerEvent, view: View): Touch {
    return {
      at: toPaper(view, this.#placeOf(event)),
      reach: pixelsInMm(view, REACH[this.#kind]),
      pixel: pixelsInMm(view, 1),
      free: event.altKey || this.#session.store.getState().free,
      adds: event.shiftKey,
      hides: this.#kind === 'touch',
    };
  }
}

const kindOf = ({ pointerType }: PointerEvent): Kind =>
  pointerType === 'touch' || pointerType === 'pen' ? pointerType : 'mouse';
