import { type Drawing, EMPTY_DRAWING, type Line } from '../documents/design.ts';
import { boxesMeet } from '../geometry/box.ts';
import { cos } from '../geometry/exact-math.ts';
import { type Path, pathFoot, pathOf, pointAt } from '../geometry/path.ts';
import { type PieceShape, pieceAt, pieceDirection, pieceFoot } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { buildTrack } from '../track/graph.ts';
import { type LaidLine, layOut } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { linesOn, stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';
import { facingEnds, type Gap } from './gaps.ts';

/**
 * What is given stays as it is: no drawn line runs along a given one on its ink for longer than one that
 * joins it in a curve (two clearances), and none closes a gap between given lines.
 */
export const givenLines: Rule = { id: 'R-given-lines', check };

function check(view: RuleView): Draft[] {
  const given = view.track.layout.lines.filter((line) => line.given);
  const own = view.track.layout.lines.filter((line) => !line.given);
  if (given.length === 0 || own.length === 0) return [];
  const gaps = givenGaps(view);
  return own.flatMap((line) => {
    const over = longestOver(view, line, given);
    if (over) return [draftOf(view, line, 'over', over)];
    return gaps
      .flatMap((gap) => closing(view, line, gap))
      .map((stretch) => draftOf(view, line, 'gap', stretch));
  });
}

interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
  /** How long it may be. */
  readonly allowed: Mm;
}

function draftOf(view: RuleView, { path }: LaidLine, variant: 'over' | 'gap', stretch: Stretch): Draft {
  const { from, to, allowed } = stretch;
  const finding = findingAt(
    'R-given-lines',
    stretchPlace(view, path, from, to, pointAt(path, (from + to) / 2)),
    {
      variant,
      severity: 'stops',
      ...lengths(to - from, allowed),
      remedy: 'leave-given',
    },
  );
  return { finding, mends: () => withoutLines(view, path, stretch) };
}

/** The drawing without the lines there, where they lead no further and carry no marks. */
function withoutLines({ drawing, kit }: RuleView, path: Path, { from, to }: Stretch): Drawing[] {
  const middle = pointAt(path, (from + to) / 2);
  const most = to - from + 2 * kit.rules.junction.snap;
  const isThere = (line: Line): boolean => {
    const drawn = pathOf(line);
    return drawn.length <= most && pathFoot(drawn, middle).distance <= 2 * TOLERANCE.step;
  };
  const gone = linesOn(drawing, path).filter(isThere);
  const isMarked = drawing.marks.some((mark) => gone.some((line) => line.id === mark.line));
  return isMarked ? [] : [{ ...drawing, lines: drawing.lines.filter((line) => !gone.includes(line)) }];
}

/** The longest stretch of a drawn line along a given one, on its ink; undefined where each is short enough. */
function longestOver(view: RuleView, line: LaidLine, given: readonly LaidLine[]): Stretch | undefined {
  const allowed = 2 * view.kit.rules.clearance;
  let longest: Stretch | undefined;
  for (const under of given) {
    for (const { from, to } of stretchesOver(line.path, under)) {
      if (to - from <= allowed) continue;
      if (!longest || to - from > longest.to - longest.from) longest = { from, to, allowed };
    }
  }
  return longest;
}

/** How closely a line is looked at: coarse beside what is allowed, fine beside a line's width. */
const LOOK: Mm = 0.5;

function stretchesOver(path: Path, under: LaidLine): { from: Mm; to: Mm }[] {
  const ways = path.pieces.flatMap((piece, i) => waysOver(piece, under).map((way) => path.starts[i]! + way));
  const stretches: { from: Mm; to: Mm }[] = [];
  for (const way of ways.sort((a, b) => a - b)) {
    const last = stretches.at(-1);
    if (last && way - last.to <= 2 * LOOK) last.to = way;
    else stretches.push({ from: way, to: way });
  }
  return stretches;
}

/** Places of a piece that lie on the ink of the given line and run along it. */
function waysOver(piece: PieceShape, { path, width }: LaidLine): Mm[] {
  return path.pieces.flatMap((under) => {
    const ways: Mm[] = [];
    if (!boxesMeet(piece.box, under.box, width / 2)) return ways;
    for (let s = 0; s < piece.length + LOOK; ) {
      const way = Math.min(s, piece.length);
      const foot = pieceFoot(under, pieceAt(piece, way));
      const off = foot.distance - width / 2;
      if (off < 0 && runsAlong(piece, way, under, foot.s)) ways.push(way);
      s += Math.max(LOOK, off);
    }
    return ways;
  });
}

function runsAlong(piece: PieceShape, way: Mm, under: PieceShape, at: Mm): boolean {
  const d = pieceDirection(piece, way);
  const e = pieceDirection(under, at);
  return Math.abs(d.x * e.x + d.y * e.y) >= ALONG;
}

/** Straight on, one way or the other. */
const ALONG = cos(TOLERANCE.ahead);

const givenGaps = ({ sheet, kit }: RuleView): Gap[] =>
  facingEnds(buildTrack(layOut(sheet, EMPTY_DRAWING), kit), kit);

/** The stretch of a line from one end of a gap to the other, where it leads there without a detour. */
function closing({ kit }: RuleView, { path }: LaidLine, { ends, length }: Gap): Stretch[] {
  const { snap } = kit.rules.junction;
  const feet = ends.map((end) => pathFoot(path, end.at));
  if (feet.some((foot) => foot.distance > snap)) return [];
  const [from, to] = feet.map((foot) => foot.s).sort((a, b) => a - b) as [Mm, Mm];
  return to - from <= 2 * length ? [{ from, to, allowed: 0 }] : [];
}
