import type { Drawing, Line, Mark } from '../documents/design.ts';
import type { Place } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import { type Path, pathFoot, pathOf, pointAt } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import type { RuleView } from './context.ts';

/**
 * Rules look at the canonical form; what they say is about the lines that were drawn. Here places lead
 * from the one to the other.
 */

interface DrawnLine {
  readonly line: Line;
  readonly path: Path;
}

const drawnLines = (drawing: Drawing): DrawnLine[] =>
  drawing.lines.map((line) => ({ line, path: pathOf(line) }));

function nearestLine(drawing: Drawing, p: PaperPoint): DrawnLine | undefined {
  let best: { line: DrawnLine; off: Mm } | undefined;
  for (const line of drawnLines(drawing)) {
    const off = pathFoot(line.path, p).distance;
    if (!best || off < best.off) best = { line, off };
  }
  return best?.line;
}

/** A stretch of a line of the form, as a stretch of the drawn line that its middle lies on. */
export function stretchPlace(view: RuleView, path: Path, from: Mm, to: Mm, at: PaperPoint): Place {
  const drawn = nearestLine(view.drawing, pointAt(path, (from + to) / 2));
  if (!drawn) return { kind: 'point', at: { x: at.x, y: at.y } };
  const ways = [from, to].map((way) => pathFoot(drawn.path, pointAt(path, way)).s).sort((a, b) => a - b);
  return { kind: 'stretch', at: { x: at.x, y: at.y }, line: drawn.line.id, from: ways[0]!, to: ways[1]! };
}

/** The drawn lines whose middles lie on a line of the form. */
export function linesOn(drawing: Drawing, path: Path): Line[] {
  const slack = 2 * TOLERANCE.step;
  return drawnLines(drawing)
    .filter((drawn) => pathFoot(path, pointAt(drawn.path, drawn.path.length / 2)).distance <= slack)
    .map((drawn) => drawn.line);
}

/** The drawing with one mark changed. */
export const withMark = (drawing: Drawing, id: string, change: (mark: Mark) => Mark): Drawing => ({
  ...drawing,
  marks: drawing.marks.map((mark) => (mark.id === id ? change(mark) : mark)),
});

/** Where a mark was drawn, and whether the line that carries it runs as the line of the form does. */
interface Carried {
  readonly mark: Mark;
  readonly path: Path;
  readonly same: boolean;
}

/** Undefined where no such mark was drawn, or what carries it is gone. */
export function carried({ drawing, track, sheet }: RuleView, mark: LaidMark): Carried | undefined {
  const drawn = drawing.marks.find((m) => m.id === mark.id);
  const line = [...drawing.lines, ...sheet.given.lines].find((l) => l.id === drawn?.line);
  const form = track.layout.lines.find((l) => l.id === mark.line);
  if (!drawn || !line || !form) return undefined;
  const path = pathOf(line);
  const begin = pointAt(path, drawn.at);
  const same = distance(begin, pointAt(form.path, mark.from)) <= distance(begin, pointAt(form.path, mark.to));
  return { mark: drawn, path, same };
}

/**
 * The drawing with a mark slid by `shift` in the direction of its line of the form; undefined where
 * that leads off the drawn line that carries it.
 */
export function withSlidMark(view: RuleView, mark: LaidMark, shift: Mm): Drawing | undefined {
  const drawn = carried(view, mark);
  if (!drawn) return undefined;
  const length = mark.to - mark.from;
  const at = stepped(drawn.mark.at + (drawn.same ? shift : -shift));
  if (at < 0 || at + length > drawn.path.length) return undefined;
  return withMark(view.drawing, mark.id, (m) => ({ ...m, at }));
}

/** To the step of the file form. */
export const stepped = (mm: Mm): Mm => Math.round(mm * 100) / 100;

/** The drawing with a line changed, whose marks beyond `from` keep their places on the paper. */
export function withLine(drawing: Drawing, line: Line, changed: Line, from: Mm): Drawing {
  const by = pathOf(changed).length - pathOf(line).length;
  const moved = (mark: Mark): Mark =>
    mark.line === line.id && mark.at > from ? { ...mark, at: stepped(mark.at + by) } : mark;
  return {
    lines: drawing.lines.map((l) => (l.id === line.id ? changed : l)),
    marks: drawing.marks.map(moved),
  };
}

/** Whether every mark on a drawn line begins on it: a line that got shorter may have left one behind. */
export function keepsMarks({ lines, marks }: Drawing): boolean {
  const lengths = new Map(lines.map((line) => [line.id, pathOf(line).length]));
  return marks.every(({ line, at }) => at >= 0 && at <= (lengths.get(line) ?? at));
}
