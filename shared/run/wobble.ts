import type { Mm } from '../geometry/units.ts';
import { PIXELS_PER_MM } from './coverage.ts';
import { TOLERANCES } from './model.ts';
import { NOISE, NOISE_BITS } from './random.ts';
import type { RobotState } from './robot.ts';

/**
 * A line that was drawn by hand strays from the ideal one. The ink field is built once, so it is the robot's
 * look that strays: each robot has one smooth field of offsets over the whole sheet, from random offsets on a
 * grid, so that it finds the same ink where it comes twice.
 */
const GRID: Mm = 10;

/** Between the places of the grid offsets are mixed, which makes them smaller: two thirds, over a cell. */
const MIXED = 1.5;

/** Steps between two looks at the field: at 80 mm/s a robot comes on by 1.3 mm, of 10 to the next place. */
export const STEPS_A_STRAY = 8;

/** Finds out how far the ink under the bar lies off, and how that changes from one sensor to the next. */
export function strayHere(r: RobotState, barAhead: Mm, pitch: Mm): void {
  const x = (r.x + barAhead * r.cos) / GRID;
  const y = (r.y + barAhead * r.sin) / GRID;
  const column = Math.floor(x);
  const row = Math.floor(y);
  const right = x - column;
  const down = y - row;
  const seed = r.wobbleSeed;
  const a = placeOf(seed, column, row);
  const b = placeOf(seed, column + 1, row);
  const c = placeOf(seed, column, row + 1);
  const d = placeOf(seed, column + 1, row + 1);
  const size = r.wobble * TOLERANCES.inkWobble * MIXED * PIXELS_PER_MM;
  // To the sensor on the right, in cells.
  const stepX = (-pitch * r.sin) / GRID;
  const stepY = (pitch * r.cos) / GRID;
  for (let axis = 0; axis < 2; axis++) {
    const upper = NOISE[b + axis]! - NOISE[a + axis]!;
    const lower = NOISE[d + axis]! - NOISE[c + axis]!;
    const start = NOISE[a + axis]! + upper * right;
    const alongY = NOISE[c + axis]! + lower * right - start;
    const stray = size * (start + alongY * down);
    const skew = size * ((upper + (lower - upper) * down) * stepX + alongY * stepY);
    if (axis === 0) {
      r.strayU = stray;
      r.skewU = skew;
    } else {
      r.strayV = stray;
      r.skewV = skew;
    }
  }
}

/** A place in the table of normal numbers for a place of the grid; its neighbour is for the other axis. */
function placeOf(seed: number, column: number, row: number): number {
  let h = seed ^ Math.imul(column, 0x9e3779b1) ^ Math.imul(row, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return (h ^ (h >>> 15)) >>> (32 - NOISE_BITS);
}

/**
 * How far along the bar a sensor at `place` has to look aside so that a line whose middle is at `offset` seems
 * wider by twice `widen`: towards the line, or away from it where it is narrower. For the middle sensor, which
 * reads bands at their edges too; for the bar as a whole it is enough that it looks narrower.
 */
export function lookAside(place: Mm, offset: Mm, widen: Mm): Mm {
  const off = place - offset;
  if (off > 0) return off < widen ? -off : -widen;
  return -off < widen ? -off : widen;
}
