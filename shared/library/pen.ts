import type { Line, Piece } from '../documents/design.ts';
import { cos, radians, sin } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** One move of the pen: straight ahead, along an arc (positive turns right), or a turn on the spot. */
export type Step =
  | { readonly ahead: Mm }
  | { readonly bend: number; readonly radius: Mm }
  | { readonly turn: number };

export const ahead = (mm: Mm): Step => ({ ahead: mm });
/** An arc of so many degrees, positive to the right. */
export const bend = (angle: number, radius: Mm): Step => ({ bend: angle, radius });
export const turn = (angle: number): Step => ({ turn: angle });

export interface PenStart {
  readonly id: string;
  readonly from: PaperPoint;
  /** Degrees from +x, clockwise on the sheet. */
  readonly heading: number;
  readonly width: Mm;
}

/** Draws a line move by move, in numbers that a file holds exactly. */
export function drawLine({ id, from, heading, width }: PenStart, steps: readonly Step[]): Line {
  let at = from;
  let angle = heading;
  const pieces: Piece[] = [];
  const move = (distance: Mm, direction: number, bulge: number) => {
    const a = radians(direction);
    at = { x: hundredth(at.x + distance * cos(a)), y: hundredth(at.y + distance * sin(a)) };
    pieces.push({ to: at, bulge });
  };
  for (const step of steps) {
    if ('turn' in step) angle += step.turn;
    else if ('ahead' in step) move(step.ahead, angle, 0);
    else {
      const half = radians(step.bend / 2);
      const chord = 2 * step.radius * sin(half < 0 ? -half : half);
      move(chord, angle + step.bend / 2, millionth(sin(half / 2) / cos(half / 2)));
      angle += step.bend;
    }
  }
  return { id, width, from, pieces };
}

const hundredth = (value: number): number => Math.round(value * 100) / 100;
const millionth = (value: number): number => Math.round(value * 1e6) / 1e6;
