import type { ScreenPoint, Seconds } from '../../../shared/geometry/units.ts';

/** A finger, pen or mouse button that is down on the paper. */
export interface Contact {
  readonly id: number;
  readonly kind: 'touch' | 'pen' | 'mouse';
  readonly at: ScreenPoint;
  readonly t: Seconds;
  /** The longer side of what touches, CSS pixels. */
  readonly size: number;
  /** Held to push the paper instead of drawing, as with a mouse's middle button. */
  readonly pushes?: boolean;
}

/** What the hands on the paper are at. One draws, or one or two move the paper. */
export type Hands =
  | { readonly kind: 'none' }
  | { readonly kind: 'drawing'; readonly by: Contact; readonly moved: boolean }
  | { readonly kind: 'viewing'; readonly fingers: readonly Contact[] };

export interface HandsState {
  readonly hands: Hands;
  /** A pen draws here: fingers only move the paper. */
  readonly pen: boolean;
}

export const NO_HANDS: HandsState = { hands: { kind: 'none' }, pen: false };

/** What is to be done about an event. `drop` leaves nothing of what was begun; so does another `begin`. */
export type Deed =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'begin' }
  | { readonly kind: 'follow' }
  | { readonly kind: 'finish' }
  | { readonly kind: 'break' }
  | { readonly kind: 'drop' }
  | { readonly kind: 'pull'; readonly before: readonly ScreenPoint[]; readonly now: readonly ScreenPoint[] };

export interface Turn {
  readonly state: HandsState;
  readonly deed: Deed;
}

/** A second finger that comes down this soon means to move the paper. Chosen. */
const MOMENT: Seconds = 0.25;
/** A finger that has not gone so far has not begun to draw, CSS pixels. Chosen. */
const STILL = 10;
/** What touches so widely is no fingertip, CSS pixels. Chosen: a fingertip makes 20 to 45. */
const PALM = 60;

const NOTHING: Deed = { kind: 'nothing' };
const stay = (state: HandsState): Turn => ({ state, deed: NOTHING });
const hands = (state: HandsState, now: Hands, deed: Deed): Turn => ({
  state: { ...state, hands: now },
  deed,
});

export function contactDown(state: HandsState, contact: Contact): Turn {
  if (contact.kind === 'pen') return penDown(state, contact);
  const now = state.hands;
  if (contact.kind === 'touch' && state.pen && contact.size > PALM) return stay(state);
  if (now.kind === 'none') {
    const pushes = contact.pushes || (contact.kind === 'touch' && state.pen);
    return pushes
      ? hands(state, { kind: 'viewing', fingers: [contact] }, NOTHING)
      : hands(state, { kind: 'drawing', by: contact, moved: false }, { kind: 'begin' });
  }
  if (contact.kind !== 'touch') return stay(state);
  if (now.kind === 'viewing')
    return now.fingers.length > 1
      ? stay(state)
      : hands(state, { kind: 'viewing', fingers: [...now.fingers, contact] }, NOTHING);
  const soon = now.by.kind === 'touch' && (!now.moved || contact.t - now.by.t < MOMENT);
  return soon ? hands(state, { kind: 'viewing', fingers: [now.by, contact] }, { kind: 'drop' }) : stay(state);
}

/** A pen takes over from whatever fingers and palms were at. */
function penDown(state: HandsState, contact: Contact): Turn {
  const { hands: now } = state;
  if (now.kind === 'drawing' && now.by.kind !== 'touch') return stay(state);
  return {
    state: { pen: true, hands: { kind: 'drawing', by: contact, moved: false } },
    deed: { kind: 'begin' },
  };
}

const far = (a: ScreenPoint, b: ScreenPoint): boolean =>
  (a.px - b.px) * (a.px - b.px) + (a.py - b.py) * (a.py - b.py) > STILL * STILL;

export function contactMoved(state: HandsState, id: number, at: ScreenPoint): Turn {
  const now = state.hands;
  if (now.kind === 'drawing' && now.by.id === id) {
    const moved = now.moved || far(now.by.at, at);
    return hands(state, { ...now, moved }, { kind: 'follow' });
  }
  if (now.kind !== 'viewing' || !now.fingers.some((finger) => finger.id === id)) return stay(state);
  const fingers = now.fingers.map((finger) => (finger.id === id ? { ...finger, at } : finger));
  const places = (of: readonly Contact[]) => of.map((finger) => finger.at);
  const deed: Deed = { kind: 'pull', before: places(now.fingers), now: places(fingers) };
  return hands(state, { kind: 'viewing', fingers }, deed);
}

/** It went up, or the system took it away. */
export function contactGone(state: HandsState, id: number, how: 'up' | 'cancelled'): Turn {
  const now = state.hands;
  if (now.kind === 'drawing' && now.by.id === id)
    return hands(state, { kind: 'none' }, { kind: how === 'up' ? 'finish' : 'break' });
  if (now.kind !== 'viewing') return stay(state);
  const fingers = now.fingers.filter((finger) => finger.id !== id);
  return hands(state, fingers.length > 0 ? { kind: 'viewing', fingers } : { kind: 'none' }, NOTHING);
}
