import { actDue } from './actions.ts';
import { readBands } from './band-reader.ts';
import { FULL, PIXELS_PER_MM, TILE, TILE_BITS, TILE_ROW } from './coverage.ts';
import type { InkField } from './ink-field.ts';
import { LEFT_ARM, passJunction, RIGHT_ARM } from './junctions.ts';
import { findLine, loseLine, searchOn } from './line-search.ts';
import type { Machine } from './machine.ts';
import { MODEL, SENSORS, STEP } from './model.ts';
import { roll } from './plant.ts';
import { NOISE, NOISE_BITS } from './random.ts';
import { TABLE } from './reflectance.ts';
import { MODE, OPTICS, type RobotState } from './robot.ts';
import { STEPS_A_STRAY, strayHere } from './wobble.ts';

const DARK_MIDDLE = 0b00100;
const DARK_AHEAD = 0b01110;
/** How many sensors are dark, for each pattern. */
const DARK_COUNT: Uint8Array = Uint8Array.from({ length: 32 }, (_, pattern) => {
  let count = 0;
  for (let rest = pattern; rest > 0; rest >>= 1) count += rest & 1;
  return count;
});

/**
 * One step of the simulation, 2 ms: sense, decide, move. The commands act during the next step. Rare
 * things are functions of their own; this one allocates nothing and is long because it is the one that
 * must be fast.
 */
export function step(r: RobotState, m: Machine, field: InkField): void {
  const pitch = m.pitch;

  // Sense: five grey sensors across the bar, from the left.
  r.noisePlace = (Math.imul(r.noisePlace, 1664525) + 1013904223) | 0;
  const noise = r.noisePlace >>> (32 - NOISE_BITS);
  const { grey, tiles, across } = field;
  const { optics } = r;
  const uEnd = field.width * PIXELS_PER_MM;
  const vEnd = field.height * PIXELS_PER_MM;
  if (r.wobble !== 0 && r.stepCount % STEPS_A_STRAY === 0) strayHere(r, m.barAhead, pitch);
  const acrossU = -pitch * r.barScale * r.sin * PIXELS_PER_MM + r.skewU;
  const acrossV = pitch * r.barScale * r.cos * PIXELS_PER_MM + r.skewV;
  const lean = r.offset - r.offset * r.barScale;
  let u = (r.x + m.barAhead * r.cos + lean * r.sin) * PIXELS_PER_MM + r.strayU - 2 * acrossU;
  let v = (r.y + m.barAhead * r.sin - lean * r.cos) * PIXELS_PER_MM + r.strayV - 2 * acrossV;
  // Both ends of the bar lie over the paper as a rule: then all of it does.
  const uLast = u + acrossU + acrossU + acrossU + acrossU;
  const vLast = v + acrossV + acrossV + acrossV + acrossV;
  const within =
    u >= 0 && uLast >= 0 && v >= 0 && vLast >= 0 && u < uEnd && uLast < uEnd && v < vEnd && vLast < vEnd;
  let place = 2 * pitch;
  const near = MODEL.window * pitch;
  let offset = r.offset;
  let pattern = 0;
  let weight = 0;
  let moment = 0;
  for (let i = 0; i < SENSORS; i++) {
    let light = TABLE * FULL;
    if (within || (u >= 0 && v >= 0 && u < uEnd && v < vEnd)) {
      const column = u | 0;
      const row = v | 0;
      const right = u - column;
      const at =
        tiles[(row >> TILE_BITS) * across + (column >> TILE_BITS)]! +
        (row & (TILE - 1)) * TILE_ROW +
        (column & (TILE - 1));
      const upper = grey[at]! + (grey[at + 1]! - grey[at]!) * right;
      const lower = grey[at + TILE_ROW]! + (grey[at + TILE_ROW + 1]! - grey[at + TILE_ROW]!) * right;
      light = upper + (lower - upper) * (v - row);
    }
    const o = i * OPTICS;
    const raw = optics[o]! * light + optics[o + 1]! + r.greyNoise * NOISE[noise + i]!;
    const dark = (optics[o + 2]! - Math.min(raw, MODEL.clip)) * optics[o + 3]!;
    pattern <<= 1;
    // Most sensors see paper, and are done with here.
    if (dark > MODEL.faint) {
      if (dark > MODEL.dark) pattern |= 1;
      if (place - offset < near && offset - place < near) {
        weight += dark;
        moment += dark * place;
      }
    }
    place -= pitch;
    u += acrossU;
    v += acrossV;
  }

  // Decide. A pace is approached gently; an action whose time has come begins.
  if (r.stepCount >= r.dueStep) actDue(r);
  const pace = m.paces[r.pace]!;
  const change = MODEL.paceChange * STEP;
  let speed = r.speed;
  speed = pace > speed + change ? speed + change : Math.max(pace, speed - change);
  let forward = 0;
  let turning = 0;
  const mode = r.mode;
  switch (mode) {
    case MODE.follow: {
      if (weight > MODEL.enough) {
        const now = moment / weight;
        r.offsetRate += MODEL.rateShare * ((now - offset) / STEP - r.offsetRate);
        offset = now;
      }
      r.offset = offset;
      const lean = (offset < 0 ? -offset : offset) / (2 * pitch);
      const steered = Math.max(speed, MODEL.steerSlowest);
      forward = speed * (1 - MODEL.slowing * Math.min(lean, 1));
      turning = steered * (MODEL.steer * offset + MODEL.steerRate * r.offsetRate);
      const armSeen = LEFT_ARM[pattern]! | RIGHT_ARM[pattern]!;
      if (pattern === 0 && weight <= MODEL.enough) {
        loseLine(r, m);
      } else if (armSeen !== 0 && r.odometer - r.junctionAt >= m.pause) {
        r.sightings++;
        if (r.sightings >= MODEL.sightings) startCreep(r, pattern);
      } else {
        r.sightings = 0;
      }
      if (r.mode === MODE.follow) readBands(r, m, field, noise + SENSORS);
      break;
    }
    case MODE.creep: {
      if (weight > MODEL.enough && DARK_COUNT[pattern]! <= 2) {
        const now = moment / weight;
        const centring = MODEL.centring * pitch;
        if (now < centring && now > -centring) {
          r.offset = now;
          turning = speed * MODEL.steer * now;
        }
      }
      forward = speed;
      r.offsetRate = 0;
      if (pattern & 0b10000) r.sawLeft = 1;
      if (pattern & 0b00001) r.sawRight = 1;
      if (r.odometer - r.modeFrom >= m.creep) {
        passJunction(r, m, (pattern & DARK_AHEAD) !== 0);
        if (r.mode === MODE.follow) findLine(r, m, pattern & DARK_AHEAD);
      }
      break;
    }
    case MODE.turn: {
      turning = r.side * MODEL.spin;
      speed = 0;
      const turned = r.turned < 0 ? -r.turned : r.turned;
      if (turned >= r.leastTurn && pattern & DARK_MIDDLE) {
        findLine(r, m, pattern & DARK_MIDDLE);
        if (r.atCorner) r.cornerAt = r.odometer;
        speed = pace * MODEL.afterSpin;
      } else if (turned > MODEL.mostTurn) {
        r.notes.push({ kind: 'line-lost', turning: false });
        r.mode = MODE.stopped;
      }
      break;
    }
    case MODE.gap: {
      forward = speed;
      if (pattern !== 0) findLine(r, m, pattern);
      else if (r.odometer - r.modeFrom > MODEL.gap) searchOn(r, m);
      break;
    }
    case MODE.search:
    case MODE.searchBack: {
      turning = (mode === MODE.search ? r.side : -r.side) * MODEL.spin;
      speed = 0;
      if (pattern !== 0) {
        findLine(r, m, pattern);
        speed = pace * MODEL.afterSpin;
      } else {
        searchOn(r, m);
      }
      break;
    }
    default:
      speed = 0;
  }
  if (r.stepCount < r.heldUntilStep || r.mode === MODE.stopped) {
    forward = 0;
    turning = 0;
    speed = 0;
  }
  r.speed = speed;

  // Move by the last commands, then give the new ones.
  roll(r, m);
  const top = m.topWheelSpeed;
  const left = forward - turning * m.halfTrack;
  const right = forward + turning * m.halfTrack;
  r.commandLeft = left > top ? top : Math.max(left, -top);
  r.commandRight = right > top ? top : Math.max(right, -top);
  r.stepCount++;
}

function startCreep(r: RobotState, pattern: number): void {
  r.mode = MODE.creep;
  r.modeFrom = r.odometer;
  r.turned = 0;
  r.sawLeft = LEFT_ARM[pattern]!;
  r.sawRight = RIGHT_ARM[pattern]!;
  r.withinCorner = r.odometer - r.cornerAt < MODEL.cornerReach;
  r.sightings = 0;
  r.runClass = -1;
  r.inWord = false;
}
