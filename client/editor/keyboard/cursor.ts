import type { Design } from '../../../shared/documents/design.ts';
import type { MarkBox, Sheet } from '../../../shared/documents/sheet.ts';
import type { Texts } from '../../../shared/documents/values.ts';
import { distance } from '../../../shared/geometry/exact-math.ts';
import { pointAt } from '../../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import { markMiddle } from '../attach.ts';
import { hitAt, middlesOf } from '../hit.ts';
import { lineIn, nodesOf } from '../lines.ts';
import { anyLine, markIn } from '../marks.ts';
import type { EditContext } from '../model.ts';
import { linePath } from '../paths.ts';
import { gripsOf } from '../sections.ts';

/** One arrow key: to the next line of the fine grid, or by a millimetre. */
const GRID: Mm = 5;
const FINE: Mm = 1;
/** What lies this near is under the cursor. */
export const REACH: Mm = 3;

export type Way = 'left' | 'right' | 'up' | 'down';

/** One step of the cursor on a sheet; never off it. */
export function stepped(at: PaperPoint, way: Way, fine: boolean, { w, h }: Sheet): PaperPoint {
  const along = way === 'left' || way === 'right' ? 'x' : 'y';
  const sign = way === 'right' || way === 'down' ? 1 : -1;
  const most = along === 'x' ? w : h;
  const here = at[along];
  const grid = (sign > 0 ? Math.floor(here / GRID) + 1 : Math.ceil(here / GRID) - 1) * GRID;
  const next = fine ? Math.round(here) + sign * FINE : grid;
  return { ...at, [along]: Math.min(most, Math.max(0, next)) };
}

/** Berths, ends, corners, middles of what can be bent, and marks, from the sheet's top left on. */
export function placesOf(design: Design, context: EditContext): PaperPoint[] {
  const { sheet } = context;
  const ofLines = design.drawing.lines.flatMap((line) => {
    const nodes = nodesOf(line);
    return [...gripsOf(line).map((node) => nodes[node]!), ...middlesOf(line)];
  });
  const ofMarks = [...design.drawing.marks, ...sheet.given.marks].flatMap((mark) => {
    const line = anyLine(design, context, mark.line);
    return line ? [pointAt(linePath(line), markMiddle(mark))] : [];
  });
  const given = sheet.given.lines.flatMap((line) => [nodesOf(line)[0]!, nodesOf(line).at(-1)!]);
  const berths = [sheet.start.at, ...(sheet.finish ? [sheet.finish.at] : [])];
  const all = [...berths, ...given, ...ofLines, ...ofMarks];
  const first = all.filter((p, i) => all.findIndex((other) => distance(other, p) < FINE / 2) === i);
  return first.sort((a, b) => a.y - b.y || a.x - b.x);
}

/** The place after this one in reading order, or the one before it; round and round. */
export function nextPlace(at: PaperPoint, places: readonly PaperPoint[], back: boolean): PaperPoint {
  const here = places.findIndex((p) => distance(p, at) < FINE / 2);
  const after = places.findIndex((p) => p.y > at.y || (p.y === at.y && p.x > at.x));
  const from = here >= 0 ? here : (after < 0 ? places.length : after) - (back ? 0 : 1);
  const next = places[(from + (back ? -1 : 1) + places.length) % places.length];
  return next ?? at;
}

/** What is under the cursor, for words. */
export type Under =
  | { readonly kind: 'berth'; readonly which: 'start' | 'finish' }
  | { readonly kind: 'mark'; readonly bands: readonly string[] }
  | { readonly kind: 'box'; readonly name: Texts }
  | { readonly kind: 'end' | 'corner' | 'middle' | 'line' | 'paper' };

export function underCursor(at: PaperPoint, design: Design, context: EditContext): readonly Under[] {
  const { start, finish, given, boxes = [] } = context.sheet;
  const found: Under[] = [];
  if (distance(start.at, at) <= REACH) found.push({ kind: 'berth', which: 'start' });
  if (finish && distance(finish.at, at) <= REACH) found.push({ kind: 'berth', which: 'finish' });
  const hit = hitAt(at, design, context, REACH);
  if (hit?.kind === 'mark') {
    const mark = markIn(design, hit.mark) ?? given.marks.find(({ id }) => id === hit.mark);
    if (mark) found.push({ kind: 'mark', bands: mark.bands.map(({ ink }) => ink) });
  } else if (hit?.kind === 'node') {
    const last = lineIn(design, hit.line)?.pieces.length;
    found.push({ kind: hit.node === 0 || hit.node === last ? 'end' : 'corner' });
  } else if (hit) found.push({ kind: hit.kind });
  const isInside = ({ at: corner, w, h }: MarkBox): boolean =>
    at.x >= corner.x && at.y >= corner.y && at.x <= corner.x + w && at.y <= corner.y + h;
  const inside = boxes.filter(isInside).map(({ name }): Under => ({ kind: 'box', name }));
  return [...(found.length > 0 ? found : [{ kind: 'paper' } as const]), ...inside];
}
