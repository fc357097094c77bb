import { Drawing, type Piece } from '../shared/documents/design.ts';
import type { Kit } from '../shared/documents/kit.ts';
import { Sheet } from '../shared/documents/sheet.ts';
import { parseDocument, writeDocument } from '../shared/documents/values.ts';
import type { Box } from '../shared/geometry/box.ts';
import { cos, sin } from '../shared/geometry/exact-math.ts';
import { pathOf } from '../shared/geometry/path.ts';
import type { Mm, PaperPoint, Rad, Seconds } from '../shared/geometry/units.ts';
import { DEMO_KIT } from '../shared/kit/demo-kit.ts';
import { reference } from './reference.ts';

/**
 * Real contest courses as drawings. The published data gives centre lines in cm with y up; here they
 * are scaled until their smallest radius is 25 mm, turned over so that y points down, and moved to
 * `MARGIN` from the sheet's edges. Call only where the reference folder is present.
 */

interface PublishedCourse {
  readonly name: string;
  readonly length_cm: number;
  readonly min_radius_cm: number;
  readonly start_pose: { readonly x_cm: number; readonly y_cm: number; readonly heading_rad: Rad };
  /** Length in cm and curvature in 1/cm, positive to the left. */
  readonly segments: readonly (readonly [number, number])[];
  readonly crossings: readonly { readonly x: number; readonly y: number; readonly angle_deg: number }[];
}

export interface CourseCrossing {
  readonly point: PaperPoint;
  /** Between the two lines, as published, degrees. */
  readonly angle: number;
}

export interface Course {
  readonly name: string;
  readonly sheet: Sheet;
  readonly drawing: Drawing;
  /** The demo kit with a robot that goes straight on where nothing decides. */
  readonly kit: Kit;
  /** The published length, scaled. */
  readonly length: Mm;
  /** mm on the sheet a cm of the published course. */
  readonly scale: number;
  readonly smallestRadius: Mm;
  readonly crossings: readonly CourseCrossing[];
  /** Time for a lap at pace steady, with a fifth to spare. */
  readonly limit: Seconds;
}

export const COURSE_RADIUS: Mm = 25;
export const COURSE_LINE_WIDTH: Mm = 5;
const MARGIN: Mm = 40;
/** The berth lies this far before the place where the published course begins, on the same straight. */
const BERTH_BEFORE: Mm = 30;
const BERTH_RADIUS: Mm = 15;

export const COURSE_KIT: Kit = {
  ...DEMO_KIT,
  id: 'courses',
  name: 'Straight on at junctions',
  robot: { ...DEMO_KIT.robot, unmarkedJunction: 'straight' },
};

/** All published courses, in the order of the file. */
export function courses(): Course[] {
  return reference<{ courses: PublishedCourse[] }>('courses.json').courses.map(courseOf);
}

function courseOf(published: PublishedCourse): Course {
  const scale = COURSE_RADIUS / published.min_radius_cm;
  const drawn = drawnFrom(published, scale);
  const box = extentOf(pathOf(drawn).pieces.map((piece) => piece.box));
  const shift = { x: MARGIN - box.minX, y: MARGIN - box.minY };
  const moved = (p: PaperPoint): PaperPoint => ({ x: p.x + shift.x, y: p.y + shift.y });
  const from = moved(drawn.from);
  const pieces = drawn.pieces.map((piece) => ({ to: moved(piece.to), bulge: piece.bulge }));
  const heading = -published.start_pose.heading_rad;
  const at = { x: from.x - BERTH_BEFORE * cos(heading), y: from.y - BERTH_BEFORE * sin(heading) };
  const berth = { name: { en: 'start and goal' }, at, heading, r: BERTH_RADIUS };
  const length = published.length_cm * scale;
  return {
    name: published.name,
    scale,
    length,
    smallestRadius: COURSE_RADIUS,
    kit: COURSE_KIT,
    limit: Math.ceil((length / COURSE_KIT.robot.paces.steady) * 1.2),
    crossings: published.crossings.map((c) => ({
      point: moved({ x: c.x * scale, y: -c.y * scale }),
      angle: c.angle_deg,
    })),
    drawing: quantised(Drawing, {
      lines: [{ id: 'course', width: COURSE_LINE_WIDTH, from, pieces: closed(pieces, from) }],
      marks: [],
    }),
    sheet: quantised(Sheet, {
      w: box.maxX - box.minX + 2 * MARGIN,
      h: box.maxY - box.minY + 2 * MARGIN,
      start: berth,
      finish: berth,
      gates: [],
      areas: [],
      keepOut: [],
      given: { lines: [], marks: [] },
    }),
  };
}

/** Follows the segments with y turned down. */
function drawnFrom(published: PublishedCourse, scale: number) {
  const start = published.start_pose;
  const from = { x: start.x_cm * scale, y: -start.y_cm * scale };
  let heading: Rad = -start.heading_rad;
  let at: PaperPoint = from;
  const pieces: Piece[] = [];
  for (const [cm, leftward] of published.segments) {
    // A turn to the left is negative on the sheet. Arcs are cut into quarters at most.
    const parts = Math.max(1, Math.ceil(Math.abs(cm * leftward) / (Math.PI / 2)));
    const length = (cm * scale) / parts;
    const turn = (-cm * leftward) / parts;
    for (let part = 0; part < parts; part++) {
      const chord = turn === 0 ? length : (length * sin(turn / 2)) / (turn / 2);
      const along = heading + turn / 2;
      at = { x: at.x + chord * cos(along), y: at.y + chord * sin(along) };
      heading += turn;
      pieces.push({ to: at, bulge: sin(turn / 4) / cos(turn / 4) });
    }
  }
  return { from, pieces };
}

const extentOf = (boxes: readonly Box[]): Box => ({
  minX: Math.min(...boxes.map((box) => box.minX)),
  minY: Math.min(...boxes.map((box) => box.minY)),
  maxX: Math.max(...boxes.map((box) => box.maxX)),
  maxY: Math.max(...boxes.map((box) => box.maxY)),
});

/** The published loops close within 4 mm of the real course; the last piece takes up the rest. */
const closed = (pieces: readonly Piece[], from: PaperPoint): Piece[] =>
  pieces.map((piece, i) => (i === pieces.length - 1 ? { ...piece, to: from } : piece));

/** Through the file form and back: 0.01 mm, as everything that is drawn. */
function quantised<T>(schema: Parameters<typeof parseDocument<T>>[0], value: T): T {
  const parsed = parseDocument(schema, writeDocument(schema, value));
  if (!parsed.ok) throw new RangeError(`a course is no document: ${JSON.stringify(parsed.problems)}`);
  return parsed.value;
}
