import type { Robot } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import { type Polygon, polygonSignedDistance, rectangleAt } from '../geometry/polygon.ts';
import type { Mm } from '../geometry/units.ts';
import type { RobotState } from './robot.ts';

/** The least distances of the robot's outline so far. */
export interface Clearances {
  edge: Mm;
  readonly keepOut: Record<string, Mm>;
}

export const newClearances = (sheet: Sheet): Clearances => ({
  edge: Number.POSITIVE_INFINITY,
  keepOut: Object.fromEntries(sheet.keepOut.map((area) => [area.id, Number.POSITIVE_INFINITY])),
});

/** The outline of a robot where it stands. */
export function outlineOf(r: RobotState, robot: Robot): Polygon {
  const size = { ahead: robot.length - robot.axleToRear, behind: robot.axleToRear, half: robot.width / 2 };
  return rectangleAt({ x: r.x, y: r.y }, { x: r.cos, y: r.sin }, size);
}

/** Takes in one moment; returns the outline's distance to the paper's edge then, negative over it. */
export function noteClearances(least: Clearances, sheet: Sheet, outline: Polygon): Mm {
  const edge = edgeDistance(sheet, outline);
  if (edge < least.edge) least.edge = edge;
  for (const area of sheet.keepOut) {
    const distance = polygonSignedDistance(area.polygon, outline);
    if (distance < least.keepOut[area.id]!) least.keepOut[area.id] = distance;
  }
  return edge;
}

/** Distance of an outline to the paper's edge, negative where a corner of it is over the edge. */
export function edgeDistance(sheet: Sheet, outline: Polygon): Mm {
  let least = Number.POSITIVE_INFINITY;
  for (const { x, y } of outline) least = Math.min(least, x, y, sheet.w - x, sheet.h - y);
  return least;
}
