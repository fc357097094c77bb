import type { Drawing, Line } from '../documents/design.ts';
import { cos, distance, sin } from '../geometry/exact-math.ts';
import { pathFoot, pathOf } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';
import type { TrackNode } from '../track/track.ts';
import type { RuleView } from './context.ts';
import { stepped, withLine } from './drawn.ts';

/** The end of a drawn line whose piece there is straight, and where that piece has its other end. */
interface StraightEnd {
  readonly line: Line;
  readonly atFrom: boolean;
  readonly end: PaperPoint;
  readonly before: PaperPoint;
}

/** Straight ends of drawn lines within `reach` of a place. */
function straightEnds(drawing: Drawing, p: PaperPoint, reach: Mm): StraightEnd[] {
  return drawing.lines.flatMap((line) => {
    const { pieces } = pathOf(line);
    const [first, last] = [pieces[0]!, pieces.at(-1)!];
    const ends: StraightEnd[] = [];
    if (first.kind === 'straight') ends.push({ line, atFrom: true, end: first.from, before: first.to });
    if (last.kind === 'straight') ends.push({ line, atFrom: false, end: last.to, before: last.from });
    return ends.filter(({ end }) => distance(end, p) <= reach);
  });
}

/** The drawing with that end of its line elsewhere. Marks keep their places on the paper. */
function withEndAt(drawing: Drawing, { line, atFrom }: StraightEnd, to: PaperPoint): Drawing {
  const at = { x: stepped(to.x), y: stepped(to.y) };
  if (atFrom) return withLine(drawing, line, { ...line, from: at }, Number.NEGATIVE_INFINITY);
  const pieces = [...line.pieces.slice(0, -1), { ...line.pieces.at(-1)!, to: at }];
  return withLine(drawing, line, { ...line, pieces }, Number.POSITIVE_INFINITY);
}

/** Over the allowed angle, so that rounding and a bent line can't bring a finding back. */
const SPARE: Rad = Math.PI / 180;

/**
 * Drawings in which a straight branch that ends at the junction ends where it meets the other line more
 * squarely: just enough, or square.
 */
export function squaredBranch(view: RuleView, node: TrackNode): Drawing[] {
  const { drawing, track, kit } = view;
  const { armsApart, snap } = kit.rules.junction;
  const wide = armsApart + SPARE;
  const others = new Set(node.arms.map((arm) => track.layout.lines[track.edges[arm.edge]!.line]!));
  return straightEnds(drawing, node.at, snap).flatMap((branch) =>
    [...others].flatMap(({ path }) => {
      const { point: foot, distance: off } = pathFoot(path, branch.before);
      const away = distance(foot, branch.end);
      // The branch's own line, or a branch that is square already.
      if (off <= snap || away <= TOLERANCE.step) return [];
      const short = (off * cos(wide)) / sin(wide);
      const share = short < away ? short / away : 0;
      const enough = {
        x: foot.x + share * (branch.end.x - foot.x),
        y: foot.y + share * (branch.end.y - foot.y),
      };
      return [withEndAt(drawing, branch, enough), withEndAt(drawing, branch, foot)];
    }),
  );
}

/** Drawings without the bit of line from the junction to the loose end beyond it. */
export function withoutStub(view: RuleView, junction: TrackNode, end: TrackNode): Drawing[] {
  const { drawing, kit } = view;
  return straightEnds(drawing, end.at, 2 * TOLERANCE.step).map((stub) => {
    const { line, before } = stub;
    if (distance(before, junction.at) > kit.rules.junction.snap) return withEndAt(drawing, stub, junction.at);
    if (line.pieces.length > 1) return withoutEndPiece(drawing, stub);
    return { ...drawing, lines: drawing.lines.filter((other) => other.id !== line.id) };
  });
}

/** The drawing with the piece at that end of its line left out. */
function withoutEndPiece(drawing: Drawing, { line, atFrom, before }: StraightEnd): Drawing {
  if (atFrom) {
    const shorter = { ...line, from: before, pieces: line.pieces.slice(1) };
    return withLine(drawing, line, shorter, Number.NEGATIVE_INFINITY);
  }
  return withLine(drawing, line, { ...line, pieces: line.pieces.slice(0, -1) }, Number.POSITIVE_INFINITY);
}
