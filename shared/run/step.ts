import { actDue } from './actions.ts';
import { readBands } from './band-reader.ts';
import type { InkField } from './ink-field.ts';
import { LEFT_ARM, passJunction, RIGHT_ARM } from './junctions.ts';
import { findLine, loseLine, searchOn } from './line-search.ts';
import type { Machine } from './machine.ts';
import { MODEL, SENSORS, STEP } from './model.ts';
import { roll } from './plant.ts';
import { NOISE_BITS } from './random.ts';
import { MODE, type RobotState } from './robot.ts';
import { sense } from './sense.ts';
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

  // Sense.
  r.noisePlace = (Math.imul(r.noisePlace, 1664525) + 1013904223) | 0;
  const noise = r.noisePlace >>> (32 - NOISE_BITS);
  if (r.wobble !== 0 && r.stepCount % STEPS_A_STRAY === 0) strayHere(r, m.barAhead, pitch);
  sense(r, m, field, noise);
  const { pattern, weight, moment } = r;
  let offset = r.offset;

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
