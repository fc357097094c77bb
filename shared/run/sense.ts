import { FULL, PIXELS_PER_MM, TILE_BITS, TILE_ROW } from './coverage.ts';
import { type InkField, lightAt, lightIn, PAPER } from './ink-field.ts';
import type { Machine } from './machine.ts';
import { MODEL } from './model.ts';
import { NOISE } from './random.ts';
import { TABLE } from './reflectance.ts';
import { OPTICS, type RobotState } from './robot.ts';

/**
 * What the five grey sensors across the bar see, from the left: the pattern of dark ones, and how much line
 * there is and where. `noise` is their place in the noise table. Written out sensor beside sensor, since a
 * processor works on all five at once then: as a loop it is a tenth slower, and so it is with more or larger
 * functions than engines put in place of their calls. Where a sensor sees bare paper and no noise can make
 * line of that, what it reads doesn't matter and is not worked out.
 */
export function sense(r: RobotState, m: Machine, field: InkField, noise: number): void {
  const { pitch } = m;
  const { offset, optics, greyNoise, surePaper } = r;
  const { grey, tiles, across } = field;
  const acrossU = -pitch * r.barScale * r.sin * PIXELS_PER_MM + r.skewU;
  const acrossV = pitch * r.barScale * r.cos * PIXELS_PER_MM + r.skewV;
  const lean = offset - offset * r.barScale;
  const u0 = (r.x + m.barAhead * r.cos + lean * r.sin) * PIXELS_PER_MM + r.strayU - 2 * acrossU;
  const v0 = (r.y + m.barAhead * r.sin - lean * r.cos) * PIXELS_PER_MM + r.strayV - 2 * acrossV;
  const u1 = u0 + acrossU;
  const v1 = v0 + acrossV;
  const u2 = u1 + acrossU;
  const v2 = v1 + acrossV;
  const u3 = u2 + acrossU;
  const v3 = v2 + acrossV;
  const u4 = u3 + acrossU;
  const v4 = v3 + acrossV;
  let d0 = 0;
  let d1 = 0;
  let d2 = 0;
  let d3 = 0;
  let d4 = 0;
  const uEnd = field.width * PIXELS_PER_MM;
  const vEnd = field.height * PIXELS_PER_MM;
  // Where both ends of the bar lie over the paper, all of it does.
  if (u0 >= 0 && u4 >= 0 && v0 >= 0 && v4 >= 0 && u0 < uEnd && u4 < uEnd && v0 < vEnd && v4 < vEnd) {
    const t0 = tiles[Math.imul(v0 >> TILE_BITS, across) + (u0 >> TILE_BITS)]!;
    const t1 = tiles[Math.imul(v1 >> TILE_BITS, across) + (u1 >> TILE_BITS)]!;
    const t2 = tiles[Math.imul(v2 >> TILE_BITS, across) + (u2 >> TILE_BITS)]!;
    const t3 = tiles[Math.imul(v3 >> TILE_BITS, across) + (u3 >> TILE_BITS)]!;
    const t4 = tiles[Math.imul(v4 >> TILE_BITS, across) + (u4 >> TILE_BITS)]!;
    const a0 = (t0 + Math.imul(v0, TILE_ROW) + (u0 | 0)) | 0;
    const a1 = (t1 + Math.imul(v1, TILE_ROW) + (u1 | 0)) | 0;
    const a2 = (t2 + Math.imul(v2, TILE_ROW) + (u2 | 0)) | 0;
    const a3 = (t3 + Math.imul(v3, TILE_ROW) + (u3 | 0)) | 0;
    const a4 = (t4 + Math.imul(v4, TILE_ROW) + (u4 | 0)) | 0;
    const p0 = grey[a0]! | (grey[a0 + 1]! << 16);
    const p1 = grey[a1]! | (grey[a1 + 1]! << 16);
    const p2 = grey[a2]! | (grey[a2 + 1]! << 16);
    const p3 = grey[a3]! | (grey[a3 + 1]! << 16);
    const p4 = grey[a4]! | (grey[a4 + 1]! << 16);
    if (p0 !== PAPER || (surePaper & 1) === 0) {
      const light = lightIn(p0, u0 - Math.floor(u0), v0 - Math.floor(v0));
      const raw = optics[0]! * light + optics[1]! + greyNoise * NOISE[noise]!;
      d0 = (optics[2]! - Math.min(raw, MODEL.clip)) * optics[3]!;
    }
    if (p1 !== PAPER || (surePaper & 2) === 0) {
      const light = lightIn(p1, u1 - Math.floor(u1), v1 - Math.floor(v1));
      const raw = optics[4]! * light + optics[5]! + greyNoise * NOISE[noise + 1]!;
      d1 = (optics[6]! - Math.min(raw, MODEL.clip)) * optics[7]!;
    }
    if (p2 !== PAPER || (surePaper & 4) === 0) {
      const light = lightIn(p2, u2 - Math.floor(u2), v2 - Math.floor(v2));
      const raw = optics[8]! * light + optics[9]! + greyNoise * NOISE[noise + 2]!;
      d2 = (optics[10]! - Math.min(raw, MODEL.clip)) * optics[11]!;
    }
    if (p3 !== PAPER || (surePaper & 8) === 0) {
      const light = lightIn(p3, u3 - Math.floor(u3), v3 - Math.floor(v3));
      const raw = optics[12]! * light + optics[13]! + greyNoise * NOISE[noise + 3]!;
      d3 = (optics[14]! - Math.min(raw, MODEL.clip)) * optics[15]!;
    }
    if (p4 !== PAPER || (surePaper & 16) === 0) {
      const light = lightIn(p4, u4 - Math.floor(u4), v4 - Math.floor(v4));
      const raw = optics[16]! * light + optics[17]! + greyNoise * NOISE[noise + 4]!;
      d4 = (optics[18]! - Math.min(raw, MODEL.clip)) * optics[19]!;
    }
  } else {
    d0 = darkAtEdge(r, field, 0, u0, v0, noise);
    d1 = darkAtEdge(r, field, 1, u1, v1, noise);
    d2 = darkAtEdge(r, field, 2, u2, v2, noise);
    d3 = darkAtEdge(r, field, 3, u3, v3, noise);
    d4 = darkAtEdge(r, field, 4, u4, v4, noise);
  }
  r.pattern = bitOf(d0, 16) | bitOf(d1, 8) | bitOf(d2, 4) | bitOf(d3, 2) | bitOf(d4, 1);
  const near = MODEL.window * pitch;
  d0 = counted(d0, 2 * pitch - offset, near);
  d1 = counted(d1, pitch - offset, near);
  d2 = counted(d2, -offset, near);
  d3 = counted(d3, -pitch - offset, near);
  d4 = counted(d4, -2 * pitch - offset, near);
  r.weight = d0 + d1 + d2 + d3 + d4;
  r.moment = d0 * (2 * pitch) + d1 * pitch - d3 * pitch - d4 * (2 * pitch);
}

const bitOf = (dark: number, bit: number): number => (dark > MODEL.dark ? bit : 0);

/** A reading as far as it counts towards the line's place: not paper's, and near enough to where the line was. */
const counted = (dark: number, off: number, near: number): number =>
  dark > MODEL.faint && off < near && -off < near ? dark : 0;

/** The reading of a sensor that may be over the table beside the paper. */
function darkAtEdge(
  r: RobotState,
  field: InkField,
  sensor: number,
  u: number,
  v: number,
  noise: number,
): number {
  const over = u >= 0 && v >= 0 && u < field.width * PIXELS_PER_MM && v < field.height * PIXELS_PER_MM;
  const light = over ? lightAt(field, u, v) : TABLE * FULL;
  const [gain, base, white, perSpan] = r.optics.subarray(sensor * OPTICS);
  const raw = gain! * light + base! + r.greyNoise * NOISE[noise + sensor]!;
  return (white! - Math.min(raw, MODEL.clip)) * perSpan!;
}
