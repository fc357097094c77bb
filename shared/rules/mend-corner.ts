import type { Drawing, Line, Mark } from '../documents/design.ts';
import { distance } from '../geometry/exact-math.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { TrackNode } from '../track/track.ts';
import type { RuleView } from './context.ts';

/** The least that must stay of a leg, so that it is still a leg. */
const LEAST_LEG: Mm = 1;

/**
 * The drawing with a corner cut across `leg` before and after it: two corners, each blunter than a
 * right angle. None where a leg is short, bent, part of another line, or carries a mark or junction.
 */
export function cornerCutAcross(view: RuleView, node: TrackNode, leg: Mm): Drawing[] {
  const { track, drawing } = view;
  const edges = node.arms.map((arm) => track.edges[arm.edge]!);
  const [one, two] = edges;
  if (!one || !two || one.line !== two.line || one.along === two.along) return [];
  const laid = track.lines[one.line]!.line;
  const way = one.along ? one.low : one.high;
  const vertex = laid.path.starts.findIndex((start) => Math.abs(start - way) < TOLERANCE.samePoint);
  const before = laid.path.pieces[vertex - 1];
  const after = laid.path.pieces[vertex];
  if (laid.given || before?.kind !== 'straight' || after?.kind !== 'straight') return [];
  const least = Math.min(before.length, after.length, one.length, two.length);
  const isMarked = view.layout.marks.some(
    (mark) => mark.line === laid.id && mark.to > way - leg && mark.from < way + leg,
  );
  if (least < leg + LEAST_LEG || isMarked) return [];
  const p = along(before.to, before.along, -leg);
  const q = along(after.from, after.along, leg);
  const saved = 2 * leg - distance(p, q);
  return [
    {
      lines: drawing.lines.map((line) => (line.id === laid.id ? withoutVertex(line, vertex, p, q) : line)),
      marks: drawing.marks.map((mark) =>
        mark.line === laid.id && mark.at > way ? movedBack(mark, saved) : mark,
      ),
    },
  ];
}

const stepped = (mm: Mm): Mm => Math.round(mm * 100) / 100;

const along = (p: PaperPoint, d: { readonly x: number; readonly y: number }, s: Mm): PaperPoint => ({
  x: stepped(p.x + d.x * s),
  y: stepped(p.y + d.y * s),
});

const withoutVertex = (line: Line, vertex: number, p: PaperPoint, q: PaperPoint): Line => ({
  ...line,
  pieces: [
    ...line.pieces.slice(0, vertex - 1),
    { to: p, bulge: 0 },
    { to: q, bulge: 0 },
    ...line.pieces.slice(vertex),
  ],
});

const movedBack = (mark: Mark, by: Mm): Mark => ({ ...mark, at: stepped(mark.at - by) });
