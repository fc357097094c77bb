import { dropWord, sideOfMiddle, startTurn } from './actions.ts';
import type { Machine } from './machine.ts';
import { MODEL } from './model.ts';
import { MODE, type RobotState } from './robot.ts';

/** All sensors are white: the line has left to one side, or there is a gap. */
export function loseLine(r: RobotState, m: Machine): void {
  const { offset } = r;
  r.sightings = 0;
  dropWord(r);
  if (offset > MODEL.sideLoss * m.pitch || offset < -MODEL.sideLoss * m.pitch) {
    r.side = offset > 0 ? 1 : -1;
    startSearch(r);
    return;
  }
  r.mode = MODE.gap;
  r.modeFrom = r.odometer;
  const leaning = MODEL.leaning * m.pitch;
  if (offset > leaning) r.side = 1;
  else if (offset < -leaning) r.side = -1;
  else r.side = sideOfMiddle(r);
}

function startSearch(r: RobotState): void {
  r.mode = MODE.search;
  r.turned = 0;
}

/**
 * Goes on from a gap to the first side, from there to the other, and at last gives up: the robot stops,
 * or turns on until it finds the line that it came on.
 */
export function searchOn(r: RobotState, m: Machine): void {
  if (r.mode === MODE.gap) {
    startSearch(r);
    return;
  }
  const turned = r.turned * r.side;
  if (r.mode === MODE.search) {
    if (turned > MODEL.search) r.mode = MODE.searchBack;
    return;
  }
  if (turned > -MODEL.search) return;
  const turning = m.turnsBackAtEnds && r.followed;
  r.notes.push({ kind: 'line-lost', turning });
  if (turning) startTurn(r, -r.side, MODEL.leastTurnAtEnd);
  else r.mode = MODE.stopped;
}

/** Follows again, from the dark sensor nearest to the middle. `pattern` is what may count, 16 the leftmost. */
export function findLine(r: RobotState, m: Machine, pattern: number): void {
  r.mode = MODE.follow;
  r.followed = true;
  r.offsetRate = 0;
  if (pattern & 0b00100) r.offset = 0;
  else if (pattern & 0b01000) r.offset = m.pitch;
  else if (pattern & 0b00010) r.offset = -m.pitch;
  else if (pattern & 0b10000) r.offset = 2 * m.pitch;
  else r.offset = -2 * m.pitch;
}
