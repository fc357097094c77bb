import { type Band, type Drawing, lengthOfBands, type Mark } from '../documents/design.ts';
import { reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import { type Span, spansInBoxes } from '../track/mark-boxes.ts';
import { isCurve } from '../track/room.ts';
import { type EdgeMark, type TrackEdge, twin } from '../track/track.ts';
import type { RuleView } from './context.ts';
import { carried, stepped, withMark, withSlidMark } from './drawn.ts';
import { betweenMarks, needsAfter } from './needs.ts';

/** Kept beyond the allowed room, so that rounding to the file form can't bring a finding back. */
const SPARE: Mm = 0.02;

/**
 * Drawings in which the mark has slid along its line to a place with room on both sides, the shortest
 * slide first. It passes no other mark and stays between the nodes where its middle stands; where the sheet
 * has boxes for marks, it comes to stand in one.
 */
export function slidMark(view: RuleView, mark: LaidMark): Drawing[] {
  const edge = view.track.edges.find((e) => e.along && e.marks.some((m) => m.mark === mark));
  const onEdge = edge?.marks.find((m) => m.mark === mark);
  if (!edge || !onEdge || view.track.lines[edge.line]!.line.id !== mark.line) return [];
  const length = mark.to - mark.from;
  const places = inBoxes(view, edge, length, freePlaces(view, edge, mark, length)).map((span) =>
    Math.min(Math.max(onEdge.from, span.from), span.to),
  );
  return slidBy(
    view,
    mark,
    places.map((from) => from - onEdge.from),
  );
}

/** Drawings in which the mark has slid by each of these, the shortest slide first. */
const slidBy = (view: RuleView, mark: LaidMark, shifts: readonly Mm[]): Drawing[] =>
  [...shifts]
    .sort((a, b) => Math.abs(a) - Math.abs(b) || a - b)
    .map((shift) => withSlidMark(view, mark, shift))
    .filter((drawing) => drawing !== undefined);

/** What of these spans lies in boxes; all of it on a sheet without any. */
function inBoxes({ sheet, track }: RuleView, edge: TrackEdge, length: Mm, spans: readonly Span[]): Span[] {
  if (!sheet.boxes) return [...spans];
  const boxed = spansInBoxes(sheet.boxes, track.lines[edge.line]!.line, length).map(({ from, to }) => ({
    from: from - edge.low + SPARE,
    to: to - edge.low - SPARE,
  }));
  return spans.flatMap((span) =>
    nonEmpty(boxed.map(({ from, to }) => ({ from: Math.max(span.from, from), to: Math.min(span.to, to) }))),
  );
}

/**
 * Drawings in which the mark has slid into a box: to a place with room on both sides; or just so far that it
 * lies in one, or to the middle of one, wherever on its line.
 */
export function markIntoBox(view: RuleView, mark: LaidMark): Drawing[] {
  const { line } = view.track.lines.find((l) => l.line.id === mark.line)!;
  const spans = spansInBoxes(view.sheet.boxes ?? [], line, mark.to - mark.from);
  const shifts = spans.flatMap(({ from, to }) => {
    const middle = (from + to) / 2;
    const spare = Math.min(SPARE, middle - from);
    const nearest = Math.min(Math.max(mark.from, from + spare), to - spare);
    return [nearest - mark.from, middle - mark.from];
  });
  return [...slidMark(view, mark), ...slidBy(view, mark, shifts)];
}

/** Spans of the edge where the mark may begin. */
function freePlaces(view: RuleView, edge: TrackEdge, mark: LaidMark, length: Mm): Span[] {
  const { kit, departures } = view;
  const { beforeMark, straightFrom } = kit.rules;
  const ends = roomAtEnds(view, edge, mark);
  const index = edge.marks.findIndex((m) => m.mark === mark);
  const previous = edge.marks[index - 1];
  const next = edge.marks[index + 1];
  const axles = departures.flatMap(({ start }) => {
    if (start.kind !== 'on' || start.edge >> 1 !== edge.index >> 1) return [];
    return start.edge === edge.index ? [start.axle] : [edge.length - start.axle];
  });
  const here = (edge.marks[index]!.from + edge.marks[index]!.to) / 2;
  let low = previous ? previous.to + betweenMarks(view) : ends.low;
  let high = (next ? next.from - betweenMarks(view) : edge.length - ends.high) - length;
  for (const axle of axles) {
    if (axle <= here) low = Math.max(low, axle + beforeMark);
    else high = Math.min(high, axle - beforeMark - length);
  }
  let spans = nonEmpty([{ from: low + SPARE, to: high - SPARE }]);
  const [along, back] = [edge.index, twin(edge.index)].map((index) => roomBefore(view, index, mark));
  for (const bend of edge.bends.filter((b) => isCurve(b, straightFrom))) {
    const taken = { from: bend.from - back! - length - SPARE, to: bend.to + along! + SPARE };
    spans = spans.flatMap((span) => without(span, taken));
  }
  return spans;
}

const without = (span: Span, taken: Span): Span[] =>
  nonEmpty([
    { from: span.from, to: Math.min(span.to, taken.from) },
    { from: Math.max(span.from, taken.to), to: span.to },
  ]);

const nonEmpty = (spans: readonly Span[]): Span[] => spans.filter((span) => span.from <= span.to);

/** What the mark wants of the edge's own ends: before it, or after it for the action, whichever is more. */
function roomAtEnds(view: RuleView, edge: TrackEdge, mark: LaidMark): { low: Mm; high: Mm } {
  const { track, travel } = view;
  const after = (index: number): Mm => {
    const onEdge = track.edges[index]!.marks.find((m) => m.mark === mark)!;
    const pace = travel.paceAt(index, onEdge);
    if (pace === undefined) return 0;
    const toEnd = track.edges[index]!.length - onEdge.to;
    const needs = needsAfter(view, { edge: index, mark: onEdge, pace });
    // What a need reaches over behind this edge's end is there already, unless the mark lies over that end.
    const behind = (measured: Mm): Mm => (toEnd < 0 ? 0 : Math.max(0, measured - toEnd));
    return Math.max(...needs.map((need) => need.allowed - behind(need.measured)), 0);
  };
  const before = (index: number): Mm => roomBefore(view, index, mark);
  return {
    low: Math.max(before(edge.index), after(twin(edge.index))),
    high: Math.max(before(twin(edge.index)), after(edge.index)),
  };
}

/** What the mark wants before it of those who come along this edge, if anybody does. */
function roomBefore({ kit, track, travel }: RuleView, edge: number, mark: LaidMark): Mm {
  const onEdge = track.edges[edge]!.marks.find((m) => m.mark === mark)!;
  return travel.paceAt(edge, onEdge) === undefined ? 0 : kit.rules.beforeMark;
}

/** Which lengths of bands, and which gaps before them, are what is wrong. */
interface Wrong {
  readonly length?: (length: Mm) => boolean;
  readonly gap?: (gap: Mm) => boolean;
}

/**
 * The mark with bands as the reader likes them, its middle where it was: with only what is wrong made
 * right, and with all bands even and edge to edge.
 */
export function evenBands(view: RuleView, mark: LaidMark, { length, gap }: Wrong): Drawing[] {
  const even = (band: Band): Band => ({ ...band, length: view.kit.robot.bandUnit, gap: 0 });
  const better = (band: Band): Band => ({
    ...band,
    length: length?.(band.length) ? even(band).length : band.length,
    gap: gap?.(band.gap) ? 0 : band.gap,
  });
  return [better, even].map((change) =>
    withMark(view.drawing, mark.id, (m) => rebanded(m, m.bands.map(change))),
  );
}

/** The mark with other bands, its middle where it was. */
function rebanded(mark: Mark, bands: readonly Band[]): Mark {
  const at = mark.at + (lengthOfBands(mark.bands) - lengthOfBands(bands)) / 2;
  return { ...mark, at: stepped(Math.max(0, at)), bands: [...bands] };
}

/** The drawing in which the mark, as it is met along an edge, reads as another word. */
export function otherWord(view: RuleView, { mark, edge }: Met, word: string): Drawing[] {
  const drawn = carried(view, mark.mark);
  if (!drawn) return [];
  const asDrawn = view.track.edges[edge]!.along === drawn.same;
  const inks = [...(asDrawn ? word : reversed(word))];
  const bands = inks.map((ink): Band => ({ ink, length: view.kit.robot.bandUnit, gap: 0 }));
  return [withMark(view.drawing, mark.mark.id, (m) => rebanded(m, bands))];
}

/** A mark, and the edge along which it is met. */
interface Met {
  readonly mark: EdgeMark;
  readonly edge: number;
}
