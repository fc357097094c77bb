import type { Seconds } from '../../../shared/geometry/units.ts';

export interface WheelTurn {
  readonly dx: number;
  readonly dy: number;
  /** Whether the distances are lines or pages and not pixels. */
  readonly coarse: boolean;
  readonly control: boolean;
  readonly shift: boolean;
  readonly t: Seconds;
}

export type WheelDeed =
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'push'; readonly dx: number; readonly dy: number };

/** Turns that follow one another within this time come from one device. */
const SERIES: Seconds = 0.3;
/** A wheel's notch is at least so many pixels; two fingers on a pad begin with fewer. */
const NOTCH = 50;
/** A notch of 100 pixels makes the sheet this much larger. */
const BY_NOTCH = 1.25;
/** A pinch on a pad arrives as small turns with Control. */
const BY_PINCH = 1.01;
const LINE = 33;

/**
 * A mouse wheel and a pinch on a pad zoom; two fingers on a pad push the paper. Browsers don't say which
 * of the two a turn comes from, so the first turn of a series tells by its size.
 */
export class Wheel {
  #pad = false;
  #last: Seconds = Number.NEGATIVE_INFINITY;

  turn({ dx, dy, coarse, control, shift, t }: WheelTurn): WheelDeed {
    const [x, y] = coarse ? [dx * LINE, dy * LINE] : [dx, dy];
    if (t - this.#last > SERIES) this.#pad = !coarse && (x !== 0 || (y < NOTCH && y > -NOTCH));
    this.#last = t;
    if (control && y < NOTCH && y > -NOTCH) return { kind: 'zoom', factor: BY_PINCH ** -y };
    if (shift && !control) return { kind: 'push', dx: -(x || y), dy: 0 };
    if (this.#pad && !control) return { kind: 'push', dx: -x, dy: -y };
    return { kind: 'zoom', factor: BY_NOTCH ** (-y / 100) };
  }
}
