import { cos, norm, sin } from '../../shared/geometry/exact-math.ts';
import { type Arc, type PieceShape, pieceAt, pieceDirection } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { type Align, COLORS, type Item, type Segment, type Stroke } from './page.ts';

export const path = (segments: readonly Segment[], stroke: Stroke): Item => ({
  kind: 'path',
  segments,
  stroke,
});
export const filled = (segments: readonly Segment[], fill: string): Item => ({
  kind: 'path',
  segments,
  fill,
});
export const line = (a: PaperPoint, b: PaperPoint, stroke: Stroke): Item => path(polyline([a, b]), stroke);

export const polyline = (points: readonly PaperPoint[]): Segment[] =>
  points.map(({ x, y }, i) => [i === 0 ? 'M' : 'L', x, y]);
export const polygon = (points: readonly PaperPoint[]): Segment[] => [...polyline(points), ['Z']];

export const rectangle = (x: Mm, y: Mm, w: Mm, h: Mm): Segment[] =>
  polygon([
    { x, y },
    { x: x + w, y },
    { x: x + w, y: y + h },
    { x, y: y + h },
  ]);

/** A circle as four curves; its radius is off by less than 0.03 %. */
export function circle({ x, y }: PaperPoint, r: Mm): Segment[] {
  const k = 0.5523 * r;
  return [
    ['M', x + r, y],
    ['C', x + r, y + k, x + k, y + r, x, y + r],
    ['C', x - k, y + r, x - r, y + k, x - r, y],
    ['C', x - r, y - k, x - k, y - r, x, y - r],
    ['C', x + k, y - r, x + r, y - k, x + r, y],
    ['Z'],
  ];
}

/** The longest part of an arc that one curve stands for: off by less than 5 millionths of the radius. */
const LONGEST_PART = Math.PI / 4;

/** A line's straights and arcs; arcs as cubic curves. */
export const pieces = (shapes: readonly PieceShape[]): Segment[] =>
  shapes.flatMap((shape, i): Segment[] => {
    const start: Segment[] = i === 0 ? [['M', shape.from.x, shape.from.y]] : [];
    return [...start, ...(shape.kind === 'arc' ? curves(shape) : [['L', shape.to.x, shape.to.y] as const])];
  });

function curves(arc: Arc): Segment[] {
  const size = arc.sweep < 0 ? -arc.sweep : arc.sweep;
  const parts = Math.ceil(size / LONGEST_PART);
  const step = arc.length / parts;
  const half = size / parts / 4;
  const reach = (4 / 3) * (sin(half) / cos(half)) * arc.radius;
  return Array.from({ length: parts }, (_, i): Segment => {
    const [a, b] = [pieceAt(arc, i * step), i === parts - 1 ? arc.to : pieceAt(arc, (i + 1) * step)];
    const [da, db] = [pieceDirection(arc, i * step), pieceDirection(arc, (i + 1) * step)];
    return ['C', a.x + da.x * reach, a.y + da.y * reach, b.x - db.x * reach, b.y - db.y * reach, b.x, b.y];
  });
}

/** A quadratic curve from (x, y) by way of (a, b) to (c, d), as the cubic that is the same. */
export const quadratic = (x: Mm, y: Mm, a: Mm, b: Mm, c: Mm, d: Mm): Segment => [
  'C',
  x + (2 / 3) * (a - x),
  y + (2 / 3) * (b - y),
  c + (2 / 3) * (a - c),
  d + (2 / 3) * (b - d),
  c,
  d,
];

export interface TextLook {
  readonly size: Mm;
  readonly bold?: boolean;
  readonly align?: Align;
  readonly color?: string;
}

export const text = (words: string, at: PaperPoint, look: TextLook): Item => ({
  kind: 'text',
  text: words,
  at,
  size: look.size,
  bold: look.bold ?? false,
  align: look.align ?? 'left',
  color: look.color ?? COLORS.ink,
});

/** A filled triangle that points along (dx, dy), in place of an arrow that the font lacks. */
export function pointer(tip: PaperPoint, dx: number, dy: number, size: Mm, color: string): Item {
  const long = norm(dx, dy);
  const [ux, uy] = [dx / long, dy / long];
  const back = { x: tip.x - ux * size, y: tip.y - uy * size };
  const half = size * 0.55;
  const side = (s: number) => ({ x: back.x - uy * half * s, y: back.y + ux * half * s });
  return filled(polygon([tip, side(1), side(-1)]), color);
}

export const group = (x: Mm, y: Mm, items: readonly Item[], scale = 1): Item => ({
  kind: 'group',
  x,
  y,
  scale,
  items,
});
