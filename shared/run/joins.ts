import { boxesMeet, boxOf } from '../geometry/box.ts';
import { pathFoot, pointAt } from '../geometry/path.ts';
import { isClosed } from '../geometry/path-intersections.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidLine, Layout } from '../track/layout.ts';
import { meetingsBetween, pairsOf } from '../track/pairs.ts';

/** A place that belongs to two stretches of line, so that a robot may leave the one for the other there. */
export interface Join {
  readonly from: LinePlace;
  readonly to: LinePlace;
}

export interface LinePlace {
  /** Index into the layout's lines. */
  readonly line: number;
  /** Way along it. */
  readonly s: Mm;
}

/** Joins by line, and the ends at which a line stops for good. */
export interface JoinMap {
  readonly byLine: readonly (readonly Join[])[];
  readonly looseEnds: readonly PaperPoint[];
}

/** Crossings, touching ends and closed lines' seams; ends within `snap` of a line touch it. */
export function joinsOf(layout: Layout, snap: Mm, pairs = pairsOf(layout.lines)): JoinMap {
  const byLine: Join[][] = layout.lines.map(() => []);
  const join = (a: LinePlace, b: LinePlace): void => {
    byLine[a.line]!.push({ from: a, to: b });
    byLine[b.line]!.push({ from: b, to: a });
  };
  const looseEnds: PaperPoint[] = [];
  layout.lines.forEach((line, a) => {
    for (const m of meetingsBetween(pairs, line, line)) join({ line: a, s: m.a }, { line: a, s: m.b });
    for (let b = a + 1; b < layout.lines.length; b++) {
      for (const m of meetingsBetween(pairs, line, layout.lines[b]!)) {
        join({ line: a, s: m.a }, { line: b, s: m.b });
        if (m.kind === 'shared') join({ line: a, s: m.until.a }, { line: b, s: m.until.b });
      }
    }
    for (const s of [0, line.path.length]) {
      const touched = touchedBy(layout.lines, a, s, snap);
      for (const place of touched) join({ line: a, s }, place);
      if (touched.length === 0) looseEnds.push(pointAt(line.path, s));
    }
  });
  return { byLine, looseEnds };
}

/** Where the end at `s` of line `a` touches other lines, or the beginning of its own. */
function touchedBy(lines: readonly LaidLine[], a: number, s: Mm, snap: Mm): LinePlace[] {
  const own = lines[a]!.path;
  const end = pointAt(own, s);
  const here = boxOf([end]);
  const touched: LinePlace[] = [];
  lines.forEach((line, b) => {
    if (b === a) {
      if (isClosed(own)) touched.push({ line: a, s: s === 0 ? own.length : 0 });
      return;
    }
    // Most ends are far from most lines: boxes tell that for less.
    if (!line.path.pieces.some((piece) => boxesMeet(piece.box, here, snap))) return;
    const foot = pathFoot(line.path, end);
    if (foot.distance <= snap) touched.push({ line: b, s: foot.s });
  });
  return touched;
}
