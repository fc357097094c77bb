import type { Gate } from '../documents/sheet.ts';
import type { RunEvent } from '../documents/trace.ts';
import { distance, norm } from '../geometry/exact-math.ts';
import { segmentCrossing } from '../geometry/polygon.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import { edgeDistance } from './clearances.ts';
import { MODEL, RUN_RULES } from './model.ts';
import { AFTER, measureWay, type Recorder, settle, timeOf, whereabouts } from './recorder.ts';
import type { Note, RobotState } from './robot.ts';

/** How far from the place where a word was understood its mark may be thought to end. */
const MARK_SLACK: Mm = 8;

/** Takes in the step that was just made: what the robot noted, gates, the finish, the paper's edge. */
export function watch(k: Recorder, r: RobotState): void {
  if (r.notes.length > 0) {
    measureWay(k, r);
    for (const note of r.notes.splice(0)) k.events.push(...eventsOf(k, r, note));
  }
  if (k.gateSides.length > 0) watchGates(k, r);
  watchFinish(k, r);
  watchEdge(k, r);
}

function eventsOf(k: Recorder, r: RobotState, note: Note): RunEvent[] {
  const where = whereabouts(k, r);
  switch (note.kind) {
    case 'read': {
      k.readings.push(k.events.length);
      const { kind, ...rest } = note;
      return [{ kind, ...where, ...rest, ...markUnder(k) }];
    }
    case 'act':
      return [{ kind: 'act', ...where, action: note.action, read: k.readings[note.reading]! }];
    case 'junction':
      return [{ ...where, ...note }];
    case 'corner':
    case 'pace':
    case 'turn-back':
      return [{ ...where, ...note }];
    case 'wait':
    case 'signal':
      return [{ kind: note.kind, ...where, until: timeOf(note.untilStep + 1) }];
    case 'parked':
      settle(k, 'parked', r.stepCount + AFTER.rest);
      return [];
    case 'line-lost':
      return lineLost(k, r, note.turning);
  }
}

function lineLost(k: Recorder, r: RobotState, turning: boolean): RunEvent[] {
  const where = whereabouts(k, r);
  const atEnd = k.world.joins.looseEnds.some((end) => distance(end, r) <= k.world.kit.robot.barAhead);
  const events: RunEvent[] = atEnd && r.followed ? [{ kind: 'loose-end', ...where }] : [];
  if (turning) return [...events, { kind: 'turn-back', ...where }];
  settle(k, r.followed ? (atEnd ? 'stopped' : 'lost') : 'never-started', r.stepCount + AFTER.rest);
  return events;
}

/** The drawn mark behind the sensor, and whether it was met in the direction of its line. */
function markUnder(k: Recorder): { mark?: string; along: boolean } {
  const { on } = k.meter;
  if (!on) return { along: true };
  const { lines, marks } = k.world.layout;
  const along = on.sense > 0;
  const off = (mark: LaidMark): Mm =>
    Math.abs(along ? on.s - MODEL.blackAfter - mark.to : mark.from - MODEL.blackAfter - on.s);
  const near = marks
    .filter((mark) => mark.line === lines[on.line]!.id && off(mark) <= MARK_SLACK)
    .sort((a, b) => off(a) - off(b));
  return near[0] ? { mark: near[0].id, along } : { along };
}

function watchGates(k: Recorder, r: RobotState): void {
  k.world.sheet.gates.forEach((gate, i) => {
    const side = sideOf(gate, r.x, r.y);
    if (r.stepCount > 1 && side >= 0 !== k.gateSides[i]! >= 0 && passes(k, r, gate)) {
      measureWay(k, r);
      k.events.push({ kind: 'gate', ...whereabouts(k, r), gate: gate.id });
    }
    k.gateSides[i] = side;
  });
  k.beforeX = r.x;
  k.beforeY = r.y;
}

const sideOf = (gate: Gate, x: Mm, y: Mm): number =>
  (gate.b.x - gate.a.x) * (y - gate.a.y) - (gate.b.y - gate.a.y) * (x - gate.a.x);

const passes = (k: Recorder, r: RobotState, gate: Gate): boolean =>
  segmentCrossing({ x: k.beforeX, y: k.beforeY }, r, gate.a, gate.b) !== undefined;

function watchFinish(k: Recorder, r: RobotState): void {
  const { to } = k.journey;
  if (!to) return;
  const dx = r.x - to.at.x;
  const dy = r.y - to.at.y;
  const square = dx * dx + dy * dy;
  if (!k.finishCounts) {
    const away = to.r + RUN_RULES.leaveStart;
    k.finishCounts = square > away * away;
    return;
  }
  if (square < k.finishSquare) k.finishSquare = square;
  if (k.arrived || square > to.r * to.r) return;
  k.arrived = true;
  measureWay(k, r);
  k.events.push({ kind: 'finish', ...whereabouts(k, r) });
  settle(k, 'finished', r.stepCount + AFTER.finish);
}

function watchEdge(k: Recorder, r: RobotState): void {
  const { sheet, kit } = k.world;
  const toEdge = Math.min(r.x, r.y, sheet.w - r.x, sheet.h - r.y);
  const { length, axleToRear, width } = kit.robot;
  if (toEdge > norm(Math.max(axleToRear, length - axleToRear), width / 2)) return;
  if (!k.overEdge && edgeDistance(sheet, r, kit.robot) < 0) {
    k.overEdge = true;
    k.events.push({ kind: 'off-paper', ...whereabouts(k, r) });
  }
  if (toEdge < 0) settle(k, 'off-paper', r.stepCount);
}
