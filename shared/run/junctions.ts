import type { RunEventOf } from '../documents/trace.ts';
import { startTurn } from './actions.ts';
import type { Machine } from './machine.ts';
import { MODEL } from './model.ts';
import { rolled } from './random.ts';
import { type Arm, MODE, type RobotState } from './robot.ts';

/** Sides on which an arm may be seen, from patterns of dark sensors; 16 is the leftmost, 1 the rightmost. */
export const LEFT_ARM: Uint8Array = armTable(false);
export const RIGHT_ARM: Uint8Array = armTable(true);

/**
 * An arm: the outer sensor is dark, and one line can't explain the pattern, being either three adjacent
 * dark sensors or two clusters.
 */
function armTable(mirrored: boolean): Uint8Array {
  const table = new Uint8Array(32);
  for (let pattern = 0; pattern < 32; pattern++) {
    const dark = [16, 8, 4, 2, 1].map((bit) => (pattern & bit) !== 0);
    if (mirrored) dark.reverse();
    const [outer, next, middle, far] = dark;
    table[pattern] = outer && (next ? middle : middle || far) ? 1 : 0;
  }
  return table;
}

/**
 * At the end of a creep: a corner is turned; at a junction an arm is taken. `middleDark`: the line goes on.
 * While creeping the robot keeps to a line that is near, which takes it round a wide corner or a tight
 * curve: the line that goes on then is the very arm that was seen, and no junction.
 */
export function passJunction(r: RobotState, m: Machine, middleDark: boolean): void {
  if (r.withinCorner && r.sawLeft && r.sawRight && !middleDark) forgetCorner(r);
  const arms: Arm[] = [];
  if (r.sawLeft) arms.push('left');
  if (middleDark) arms.push('straight');
  if (r.sawRight) arms.push('right');
  const side = r.sawLeft ? 'left' : 'right';
  const rounded = middleDark && arms.length === 2 && r.turned * sideOf(side) > MODEL.rounded;
  if (arms.length < 2 || rounded) {
    r.notes.push({ kind: 'corner', took: side });
    if (rounded) r.mode = MODE.follow;
    else turnAside(r, sideOf(side), true);
    return;
  }
  const { took, by } = armTaken(r, m, arms);
  r.notes.push({ kind: 'junction', took, by, arms });
  r.junctionAt = r.odometer;
  if (took === 'straight') r.mode = MODE.follow;
  else turnAside(r, sideOf(took), false);
}

function turnAside(r: RobotState, side: number, atCorner: boolean): void {
  startTurn(r, side, MODEL.leastTurn);
  r.atCorner = atCorner;
}

/**
 * Two corners close to one another: the bar, well ahead of the axle, met the line behind the second one
 * while the robot turned at the first. On the side of that turn it then saw the corner's own line: no arm.
 */
function forgetCorner(r: RobotState): void {
  if (r.side > 0) r.sawLeft = 0;
  else r.sawRight = 0;
}

const sideOf = (arm: Arm): number => (arm === 'left' ? 1 : -1);

interface Taken {
  readonly took: Arm;
  readonly by: RunEventOf<'junction'>['by'];
}

/** A junction uses up a waiting choice, also one for an arm that is not there. */
function armTaken(r: RobotState, m: Machine, arms: readonly Arm[]): Taken {
  const chosen = r.pending;
  r.pending = undefined;
  if (chosen && arms.includes(chosen)) return { took: chosen, by: 'mark' };
  if (m.straightAtJunctions && arms.includes('straight')) return { took: 'straight', by: 'straight' };
  const settled = r.choices[r.choicesMade];
  r.choicesMade++;
  if (settled !== undefined) return { took: arms[settled] ?? arms[0]!, by: 'chance' };
  return { took: arms[r.die ? rolled(r.die, arms.length) : 0]!, by: 'chance' };
}
