import type { Robot } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import { type Polygon, polygonSignedDistance, rectangleAt } from '../geometry/polygon.ts';
import type { Mm } from '../geometry/units.ts';
import type { RobotState } from './robot.ts';

/** Where a robot stands. */
type Pose = Pick<RobotState, 'x' | 'y' | 'cos' | 'sin'>;

/** The least distances of the robot's outline so far. */
export interface Clearances {
  edge: Mm;
  readonly keepOut: Record<string, Mm>;
}

export const newClearances = (sheet: Sheet): Clearances => ({
  edge: Number.POSITIVE_INFINITY,
  keepOut: Object.fromEntries(sheet.keepOut.map((area) => [area.id, Number.POSITIVE_INFINITY])),
});

/** Takes in one moment. */
export function noteClearances(least: Clearances, sheet: Sheet, r: Pose, robot: Robot): void {
  const edge = edgeDistance(sheet, r, robot);
  if (edge < least.edge) least.edge = edge;
  if (sheet.keepOut.length === 0) return;
  const outline = outlineOf(r, robot);
  for (const area of sheet.keepOut) {
    const distance = polygonSignedDistance(area.polygon, outline);
    if (distance < least.keepOut[area.id]!) least.keepOut[area.id] = distance;
  }
}

/** The robot's outline on the sheet. */
export function outlineOf(r: Pose, robot: Robot): Polygon {
  const size = { ahead: robot.length - robot.axleToRear, behind: robot.axleToRear, half: robot.width / 2 };
  return rectangleAt(r, { x: r.cos, y: r.sin }, size);
}

/** Distance of a robot's outline to the paper's edge, negative where a corner of it is over the edge. */
export function edgeDistance(sheet: Sheet, r: Pose, robot: Robot): Mm {
  const ahead = robot.length - robot.axleToRear;
  const behind = -robot.axleToRear;
  const half = robot.width / 2;
  const besideX = half * (r.sin < 0 ? -r.sin : r.sin);
  const besideY = half * (r.cos < 0 ? -r.cos : r.cos);
  const left = r.x + Math.min(ahead * r.cos, behind * r.cos) - besideX;
  const right = r.x + Math.max(ahead * r.cos, behind * r.cos) + besideX;
  const top = r.y + Math.min(ahead * r.sin, behind * r.sin) - besideY;
  const bottom = r.y + Math.max(ahead * r.sin, behind * r.sin) + besideY;
  return Math.min(left, top, sheet.w - right, sheet.h - bottom);
}
