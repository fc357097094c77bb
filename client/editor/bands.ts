import { type Band, DESIGN_LIMITS, type Design, type Mark } from '../../shared/documents/design.ts';
import { directionAt, pointAt } from '../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { freeId } from './lines.ts';
import { anyLine, markOnLine, mostMarks, withMark } from './marks.ts';
import { type EditContext, type Edited, refused } from './model.ts';
import { linePath } from './paths.ts';
import { designOf, roundLength } from './quantise.ts';

/** Bands that stand no further apart are read as one mark; painting joins them. Chosen. */
const TOGETHER: Mm = 6;
/** The end of a band catches on its neighbour's from so far. Chosen: less than half a band. */
const CATCH: Mm = 2.5;
/** What is shorter is a slip of the finger, or a rest that no robot reads. */
const LEAST: Mm = 1;
/** A finger that went no further has tapped: it makes a band of the kit's own length. */
const TAP: Mm = 2;

/** A band where it lies on its line. */
interface Painted {
  readonly ink: string;
  readonly from: Mm;
  readonly to: Mm;
}

function paintedOf(mark: Mark): Painted[] {
  let way = mark.at;
  return mark.bands.map(({ ink, length, gap }, i) => {
    const from = i === 0 ? way : way + gap;
    way = from + length;
    return { ink, from, to: way };
  });
}

function markOf(id: string, line: string, painted: readonly Painted[]): Mark {
  const bands = painted.map(
    ({ ink, from, to }, i): Band => ({
      ink,
      length: roundLength(to - from),
      gap: i === 0 ? 0 : roundLength(from - painted[i - 1]!.to),
    }),
  );
  return { id, line, at: painted[0]!.from, bands };
}

/** What is left of a band beside a stretch that was painted over. */
function beside(band: Painted, from: Mm, to: Mm): Painted[] {
  const parts = [
    { ...band, to: Math.min(band.to, from) },
    { ...band, from: Math.max(band.from, to) },
  ];
  if (band.to <= from || band.from >= to) return [band];
  return parts.filter((part) => part.to - part.from >= LEAST);
}

export interface BandStroke {
  readonly line: string;
  /** Ways along the line between which the finger went. */
  readonly from: Mm;
  readonly to: Mm;
  /** null paints with the line's own colour: it takes bands away. */
  readonly ink: string | null;
  /** Nothing catches. */
  readonly free?: boolean | undefined;
}

/** The stretch that a stroke means: in order, within the line, ends on those of neighbouring bands. */
function stretchOf(
  stroke: BandStroke,
  others: readonly Painted[],
  unit: Mm,
  length: Mm,
): { from: Mm; to: Mm } {
  let [from, to] = stroke.from < stroke.to ? [stroke.from, stroke.to] : [stroke.to, stroke.from];
  if (to - from < TAP) [from, to] = tapped((from + to) / 2, others, unit, stroke.ink !== null);
  const caught = (way: Mm) => {
    const edges = others.flatMap((band) => [band.from, band.to]);
    const near = edges.filter((edge) => edge - way < CATCH && way - edge < CATCH);
    return near.sort((a, b) => (a - way) * (a - way) - (b - way) * (b - way))[0] ?? way;
  };
  if (!stroke.free && stroke.ink !== null) [from, to] = [caught(from), caught(to)];
  return { from: Math.max(0, from), to: Math.min(length, to) };
}

/** A tap makes one band: edge to edge with a near one, else with its middle at the tap. */
function tapped(way: Mm, others: readonly Painted[], unit: Mm, paints: boolean): [Mm, Mm] {
  const on = others.find((band) => way >= band.from && way <= band.to);
  if (on) return [on.from, on.to];
  const after = others.filter((band) => way > band.to && way - band.to < unit).at(-1);
  const before = others.find((band) => way < band.from && band.from - way < unit);
  if (paints && after) return [after.to, after.to + unit];
  if (paints && before) return [before.from - unit, before.from];
  return [way - unit / 2, way + unit / 2];
}

/**
 * Paints one band over a stretch of a line. What lies under it is covered; bands that stand near it become
 * one mark with it. The mark is chosen then.
 */
export function paintBand(design: Design, context: EditContext, stroke: BandStroke): Edited {
  const line = anyLine(design, context, stroke.line);
  if (!line) return refused('not-there');
  const { drawing } = design;
  const here = drawing.marks.filter((mark) => mark.line === line.id);
  const all = here.flatMap(paintedOf).sort((a, b) => a.from - b.from);
  const { from, to } = stretchOf(stroke, all, context.kit.robot.bandUnit, linePath(line).length);
  if (to - from < LEAST) return refused('too-short');
  const near = here.filter((mark) => {
    const painted = paintedOf(mark);
    return painted[0]!.from - to <= TOGETHER && from - painted.at(-1)!.to <= TOGETHER;
  });
  const left = near.flatMap(paintedOf).flatMap((band) => beside(band, from, to));
  const now = stroke.ink === null ? left : [...left, { ink: stroke.ink, from, to }];
  const groups = grouped(now.sort((a, b) => a.from - b.from));
  if (groups.some((group) => group.length > DESIGN_LIMITS.bandsInMark)) return refused('too-many-bands');
  const others = drawing.marks.filter((mark) => !near.includes(mark));
  const made = named(groups, near, line.id, [...others, ...context.sheet.given.marks]);
  const most = mostMarks(context);
  if (others.length + made.length > Math.max(most, drawing.marks.length))
    return { ok: false, refusal: { code: 'no-marks-left', most } };
  const chosen = made.find((mark) => paintedOf(mark).some((band) => band.from < to && band.to > from));
  return {
    ok: true,
    design: designOf(drawing.lines, [...others, ...made]),
    selection: stroke.ink !== null && chosen ? { kind: 'mark', mark: chosen.id } : null,
  };
}

/** Bands in order, as marks; neighbours of one ink that touch are one band. */
function grouped(bands: readonly Painted[]): Painted[][] {
  const groups: Painted[][] = [];
  for (const band of bands) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (!group || !last || band.from - last.to > TOGETHER) groups.push([band]);
    else if (last.ink === band.ink && band.from - last.to < 0.01)
      group[group.length - 1] = { ...last, to: Math.max(last.to, band.to) };
    else group.push(band);
  }
  return groups;
}

/** Marks keep their ids in order; only what became more marks than before gets new ones. */
function named(
  groups: readonly Painted[][],
  before: readonly Mark[],
  line: string,
  taken: readonly { readonly id: string }[],
): Mark[] {
  const ids = [...before].sort((a, b) => a.at - b.at).map((mark) => mark.id);
  const made: Mark[] = [];
  for (const group of groups) {
    const free = () => freeId('m', [...taken, ...made, ...before]);
    made.push(markOf(ids.shift() ?? free(), line, group));
  }
  return made;
}

/** Where the ends of a chosen mark's bands can be taken hold of: beside the line, by turns left and right. */
export interface BandHandle {
  /** 0 is where the first band begins, n where the nth ends. */
  readonly end: number;
  readonly at: PaperPoint;
  /** The end itself, on the line. */
  readonly foot: PaperPoint;
}

/** From the line's edge to a handle, CSS pixels. */
const HANDLE_OFF = 26;

export function bandHandles(design: Design, context: EditContext, id: string, pixel: Mm): BandHandle[] {
  const found = markOnLine(design, context, id);
  if (!found) return [];
  const { mark, line } = found;
  const path = linePath(line);
  const painted = paintedOf(mark);
  const off = line.width / 2 + HANDLE_OFF * pixel;
  return [painted[0]!.from, ...painted.map((band) => band.to)].map((way, end) => {
    const foot = pointAt(path, way);
    const along = directionAt(path, way);
    const side = end % 2 === 0 ? off : -off;
    return { end, foot, at: { x: foot.x + along.y * side, y: foot.y - along.x * side } };
  });
}

/** The shortest band that can be made by pulling. */
const SHORTEST: Mm = 2;

/** Pulls the end of a band to way `s`; bands that follow move along, the other end of the mark stays. */
export function pullBand(design: Design, context: EditContext, id: string, end: number, s: Mm): Edited {
  const found = markOnLine(design, context, id);
  if (!found) return refused('not-there');
  const { mark, line } = found;
  const painted = paintedOf(mark);
  const first = painted[0]!;
  const length = linePath(line).length;
  const pulled =
    end === 0
      ? [{ ...first, from: Math.max(0, Math.min(s, first.to - SHORTEST)) }, ...painted.slice(1)]
      : pulledAfter(painted, end - 1, s, length);
  return withMark(design, markOf(id, mark.line, pulled));
}

function pulledAfter(painted: readonly Painted[], index: number, s: Mm, length: Mm): Painted[] {
  const band = painted[index]!;
  const room = length - painted.at(-1)!.to;
  const to = Math.max(band.from + SHORTEST, Math.min(s, band.to + room));
  const by = to - band.to;
  return painted.map((each, i) =>
    i < index ? each : i === index ? { ...each, to } : { ...each, from: each.from + by, to: each.to + by },
  );
}
