import { dropWord, takeWord } from './actions.ts';
import { ABOVE } from './certain.ts';
import { FULL, PIXELS_PER_MM, TILE, TILE_BITS, TILE_ROW } from './coverage.ts';
import { type InkField, lightIn } from './ink-field.ts';
import { CLASS, type Machine } from './machine.ts';
import { MODEL, SENSORS } from './model.ts';
import { NOISE } from './random.ts';
import { TABLE } from './reflectance.ts';
import { OPTICS, type RobotState } from './robot.ts';
import { lookAside } from './wobble.ts';

/**
 * One step of reading bands with the middle sensor, while the robot follows a line. `noise` is the
 * place in the noise table of the three colour channels.
 */
export function readBands(r: RobotState, m: Machine, field: InkField, noise: number): void {
  const lean = r.offset < 0 ? -r.offset : r.offset;
  if (lean > MODEL.readWithin * m.pitch) {
    dropWord(r);
    r.nextClass = CLASS.unknown;
    return;
  }
  const seen = classSeen(r, m, field, noise);
  if (seen === r.runClass) {
    r.nextClass = seen;
  } else if (seen !== r.nextClass) {
    r.nextClass = seen;
    r.nextFrom = r.odometer;
  } else if (seen !== CLASS.unknown && r.odometer - r.nextFrom >= MODEL.debounce) {
    endRun(r, m, seen);
  }
  if (r.inWord && r.bandCount > 0 && r.runClass === CLASS.black) {
    if (r.odometer - r.runFrom >= MODEL.blackAfter) endWord(r, m);
  }
}

/** The class nearest in colour to what the middle sensor sees, or unknown. */
function classSeen(r: RobotState, m: Machine, field: InkField, noise: number): number {
  const shift = r.widen === 0 ? 0 : lookAside(0, r.offset, r.widen);
  const u = (r.x + m.barAhead * r.cos + shift * r.sin) * PIXELS_PER_MM + r.strayU;
  const v = (r.y + m.barAhead * r.sin - shift * r.cos) * PIXELS_PER_MM + r.strayV;
  let red = TABLE * FULL;
  let green = red;
  let blue = red;
  if (u >= 0 && v >= 0 && u < field.width * PIXELS_PER_MM && v < field.height * PIXELS_PER_MM) {
    const column = u | 0;
    const row = v | 0;
    const right = u - column;
    const down = v - row;
    const tile = (row >> TILE_BITS) * field.across + (column >> TILE_BITS);
    const pixel = (row & (TILE - 1)) * TILE_ROW + (column & (TILE - 1));
    const start = field.colorTiles[tile]!;
    const { color } = field;
    if (start < 0) {
      const at = (field.tiles[tile]! + Math.imul(row, TILE_ROW) + column) | 0;
      const { grey } = field;
      const pixels = grey[at]! | (grey[at + 1]! << 16);
      if (((pixels | (pixels + r.sureBlack)) & ABOVE) === 0) return CLASS.black;
      red = lightIn(pixels, right, down);
      green = red;
      blue = red;
    } else {
      const at = start + 3 * pixel;
      const below = at + 3 * TILE_ROW;
      let upper = color[at]! + (color[at + 3]! - color[at]!) * right;
      let lower = color[below]! + (color[below + 3]! - color[below]!) * right;
      red = upper + (lower - upper) * down;
      upper = color[at + 1]! + (color[at + 4]! - color[at + 1]!) * right;
      lower = color[below + 1]! + (color[below + 4]! - color[below + 1]!) * right;
      green = upper + (lower - upper) * down;
      upper = color[at + 2]! + (color[at + 5]! - color[at + 2]!) * right;
      lower = color[below + 2]! + (color[below + 5]! - color[below + 2]!) * right;
      blue = upper + (lower - upper) * down;
    }
  }
  const { optics } = r;
  const o = SENSORS * OPTICS;
  let raw = optics[o]! * red + optics[o + 1]! + r.colorNoise * NOISE[noise]!;
  red = 1 - (optics[o + 2]! - Math.min(raw, MODEL.clip)) * optics[o + 3]!;
  raw = optics[o + 4]! * green + optics[o + 5]! + r.colorNoise * NOISE[noise + 1]!;
  green = 1 - (optics[o + 6]! - Math.min(raw, MODEL.clip)) * optics[o + 7]!;
  raw = optics[o + 8]! * blue + optics[o + 9]! + r.colorNoise * NOISE[noise + 2]!;
  blue = 1 - (optics[o + 10]! - Math.min(raw, MODEL.clip)) * optics[o + 11]!;

  let nearest: number = CLASS.black;
  let least = red * red + green * green + blue * blue;
  if (least > m.surelyBlack) {
    const { classes } = m;
    for (let i = 3, c = 1; i < classes.length; i += 3, c++) {
      const dr = red - classes[i]!;
      const dg = green - classes[i + 1]!;
      const db = blue - classes[i + 2]!;
      const square = dr * dr + dg * dg + db * db;
      if (square < least) {
        least = square;
        nearest = c;
      }
    }
  }
  return least > MODEL.unlike * MODEL.unlike ? CLASS.unknown : nearest;
}

/** A run of one class is over, and one of class `next` has begun at `nextFrom`. */
function endRun(r: RobotState, m: Machine, next: number): void {
  const length = r.nextFrom - r.runFrom;
  if (!r.inWord) {
    const mayBegin = r.runClass === CLASS.black && next >= CLASS.firstInk && length >= MODEL.blackBefore;
    if (mayBegin) {
      r.inWord = true;
      r.bandCount = 0;
    }
  } else if (r.runClass < CLASS.firstInk || next === CLASS.white || !addBands(r, m, length)) {
    // White of a millimetre, or black between the bands, and what was begun is no mark.
    r.inWord = false;
  }
  r.runClass = next;
  r.runFrom = r.nextFrom;
}

/** Adds as many bands as fit a run of the present ink; false where the run is no part of a word. */
function addBands(r: RobotState, m: Machine, length: number): boolean {
  const fitting = Math.floor(length / m.bandUnit + 0.5);
  const count = fitting < 1 && length >= MODEL.shortestBand ? 1 : fitting;
  const tooLong = !m.equalNeighbours && (count > 1 || length > MODEL.longestRun * m.bandUnit);
  if (count < 1 || tooLong || r.bandCount + count > m.mostBands) return false;
  for (let i = 0; i < count; i++) r.bands[r.bandCount + i] = r.runClass - CLASS.firstInk;
  r.bandCount += count;
  return true;
}

/** Enough black: what was read is a word, unless it is a single band. */
function endWord(r: RobotState, m: Machine): void {
  r.inWord = false;
  if (r.bandCount < 2) return;
  let word = '';
  for (let i = 0; i < r.bandCount; i++) word += m.letters[r.bands[i]!]!;
  takeWord(r, m, word);
}
