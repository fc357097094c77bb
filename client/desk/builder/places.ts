import type { Area, Berth, Gate, MarkBox, Sheet } from '../../../shared/documents/sheet.ts';
import type { Texts } from '../../../shared/documents/values.ts';
import { cos, distance, sin } from '../../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint, Rad } from '../../../shared/geometry/units.ts';
import { boxCorners } from '../../../shared/track/mark-boxes.ts';
import { roundPoint } from '../../editor/quantise.ts';

/** Berths, gates, areas and boxes of a sheet: what can be added, moved by its handles, named and taken away. */

/** The lists of a sheet that hold places of a kind. */
const LISTS = { gate: 'gates', area: 'areas', 'keep-out': 'keepOut', box: 'boxes' } as const;
type ListedKind = keyof typeof LISTS;
export type PlaceKind = 'start' | 'finish' | ListedKind;

/** One place: `id` tells those of one list apart. */
export interface PlaceRef {
  readonly kind: PlaceKind;
  readonly id: string;
}

export const samePlaceRef = (a: PlaceRef | null, b: PlaceRef | null): boolean =>
  a?.kind === b?.kind && a?.id === b?.id;

/** Where a place can be taken hold of. `all` moves the whole of it. */
export interface Handle {
  readonly place: PlaceRef;
  readonly part: 'all' | 'heading' | 'corner';
  /** Of a corner, or of a gate's end: which. */
  readonly corner: number;
  readonly at: PaperPoint;
}

type Listed = Gate | Area | MarkBox;
type Place = Berth | Listed;

const isBerth = (kind: PlaceKind): kind is 'start' | 'finish' => kind === 'start' || kind === 'finish';
const listOf = (sheet: Sheet, kind: ListedKind): readonly Listed[] => sheet[LISTS[kind]] ?? [];

/** The sheet with another list of a kind. Without boxes it has no such list, as sheets had none before. */
function withList(sheet: Sheet, kind: ListedKind, list: readonly Listed[]): Sheet {
  const { boxes: _, ...rest } = sheet;
  if (kind === 'box' && list.length === 0) return rest;
  return { ...sheet, [LISTS[kind]]: list };
}

export const placesOf = (sheet: Sheet): PlaceRef[] => [
  { kind: 'start', id: '' },
  ...(sheet.finish ? [{ kind: 'finish', id: '' } as const] : []),
  ...(Object.keys(LISTS) as ListedKind[]).flatMap((kind) =>
    listOf(sheet, kind).map(({ id }): PlaceRef => ({ kind, id })),
  ),
];

export const placeIn = (sheet: Sheet, { kind, id }: PlaceRef): Place | undefined =>
  isBerth(kind) ? sheet[kind] : listOf(sheet, kind).find((each) => each.id === id);

/** The points that make a place: a berth's middle, a gate's ends, an area's or a box's corners. */
export function cornersOf(place: Place): readonly PaperPoint[] {
  if ('w' in place) return boxCorners(place);
  if ('polygon' in place) return place.polygon;
  return 'a' in place ? [place.a, place.b] : [place.at];
}

const middleOf = (corners: readonly PaperPoint[]): PaperPoint => ({
  x: corners.reduce((sum, p) => sum + p.x, 0) / corners.length,
  y: corners.reduce((sum, p) => sum + p.y, 0) / corners.length,
});

/** How far before a berth's middle its heading is taken hold of, mm. */
const HEADING_OFF: Mm = 26;

export function handlesOf(sheet: Sheet): Handle[] {
  return placesOf(sheet).flatMap((place): Handle[] => {
    const found = placeIn(sheet, place)!;
    const corners = cornersOf(found);
    const all: Handle = { place, part: 'all', corner: 0, at: middleOf(corners) };
    if ('heading' in found) {
      const at = {
        x: found.at.x + HEADING_OFF * cos(found.heading),
        y: found.at.y + HEADING_OFF * sin(found.heading),
      };
      return [all, { place, part: 'heading', corner: 0, at }];
    }
    return [all, ...corners.map((at, corner): Handle => ({ place, part: 'corner', corner, at }))];
  });
}

/** The sheet with one place changed. */
export const withPlace = (sheet: Sheet, { kind, id }: PlaceRef, place: Place): Sheet =>
  isBerth(kind)
    ? { ...sheet, [kind]: place }
    : withList(
        sheet,
        kind,
        listOf(sheet, kind).map((each) => (each.id === id ? (place as Listed) : each)),
      );

/** The place with other points, as `cornersOf` has them; a box moves as a whole. */
export function withCorners<P extends Place>(place: P, corners: readonly PaperPoint[]): P {
  const points = corners.map(roundPoint);
  if ('polygon' in place) return { ...place, polygon: points };
  return 'a' in place ? { ...place, a: points[0]!, b: points[1]! } : { ...place, at: points[0]! };
}

/** Eighths of a turn are what most berths face. */
const CATCH: Rad = Math.PI / 36;
const EIGHTH: Rad = Math.PI / 4;

function headingTo(from: PaperPoint, to: PaperPoint, free: boolean): Rad {
  const exact = Math.atan2(to.y - from.y, to.x - from.x);
  const near = Math.round(exact / EIGHTH) * EIGHTH;
  const off = exact - near;
  return inHundredths(!free && off < CATCH && off > -CATCH ? near : exact);
}

/** As a file holds it. */
const inHundredths = (angle: Rad): Rad => (Math.round((angle * 18_000) / Math.PI) * Math.PI) / 18_000;

/** Takes a handle to a place of the paper; never off it. `free`: a heading catches on nothing. */
export function moved(sheet: Sheet, handle: Handle, to: PaperPoint, free = false): Sheet {
  const place = placeIn(sheet, handle.place);
  if (!place) return sheet;
  if (handle.part === 'heading' && 'heading' in place)
    return withPlace(sheet, handle.place, { ...place, heading: headingTo(place.at, to, free) });
  const corners = cornersOf(place);
  if (handle.part === 'corner' && 'w' in place)
    return withPlace(sheet, handle.place, withBoxCorner(place, handle.corner, onSheet(to, sheet)));
  if (handle.part === 'corner') {
    const now = corners.map((p, i) => (i === handle.corner ? onSheet(to, sheet) : p));
    return withPlace(sheet, handle.place, withCorners(place, now));
  }
  const middle = middleOf(corners);
  const by = keptOnSheet({ x: to.x - middle.x, y: to.y - middle.y }, corners, sheet);
  const now = corners.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
  return withPlace(sheet, handle.place, withCorners(place, now));
}

/** A box is pulled no smaller than this, unless it is: two bands of a usual mark still fit, lying or upright. */
export const LEAST_BOX: Mm = 12;

/** Pulls one corner of a box, as `boxCorners` counts them; the opposite one stays. */
function withBoxCorner(box: MarkBox, corner: number, to: PaperPoint): MarkBox {
  const opposite = boxCorners(box)[(corner + 2) % 4]!;
  const span = (from: Mm, fixed: Mm, isFirst: boolean, now: Mm): [Mm, Mm] => {
    const least = Math.min(LEAST_BOX, now);
    const other = isFirst ? Math.min(from, fixed - least) : Math.max(from, fixed + least);
    return isFirst ? [other, fixed - other] : [fixed, other - fixed];
  };
  const [x, w] = span(to.x, opposite.x, corner === 0 || corner === 3, box.w);
  const [y, h] = span(to.y, opposite.y, corner < 2, box.h);
  const size = roundPoint({ x: w, y: h });
  return { ...box, at: roundPoint({ x, y }), w: size.x, h: size.y };
}

const within = (value: Mm, most: Mm): Mm => Math.min(Math.max(value, 0), most);
const onSheet = (p: PaperPoint, { w, h }: Sheet): PaperPoint => ({ x: within(p.x, w), y: within(p.y, h) });

/** So much of a shift as keeps all corners on the sheet. */
function keptOnSheet(by: PaperPoint, corners: readonly PaperPoint[], { w, h }: Sheet): PaperPoint {
  const along = (key: 'x' | 'y', most: Mm) => {
    const values = corners.map((p) => p[key]);
    return Math.min(Math.max(by[key], -Math.min(...values)), most - Math.max(...values));
  };
  return { x: along('x', w), y: along('y', h) };
}

/** What new places are called, by their kind. */
export type PlaceNames = Readonly<Record<PlaceKind, Texts>>;

const RIM: Mm = 15;
/** Half of a new gate and of a new area's sides, mm. */
const GATE: Mm = 20;
const AREA = { x: 24, y: 18 } as const;

function freeId(kind: string, taken: readonly { readonly id: string }[]): string {
  let n = 1;
  while (taken.some(({ id }) => id === `${kind}-${n}`)) n++;
  return `${kind}-${n}`;
}

/** A corner of the sheet's middle that no other place has its middle in. */
function freeSpot(sheet: Sheet): PaperPoint {
  const taken = handlesOf(sheet).map(({ at }) => at);
  const spots = [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((down) =>
    [0.5, 0.3, 0.7, 0.15, 0.85].map((along) => ({ x: sheet.w * along, y: sheet.h * down })),
  );
  return roundPoint(spots.find((spot) => taken.every((p) => distance(p, spot) > 2 * AREA.x)) ?? spots[0]!);
}

/** Adds a place in a free spot of a sheet that is not full of its kind. */
export function withNewPlace(
  sheet: Sheet,
  kind: PlaceKind,
  names: PlaceNames,
): { sheet: Sheet; place: PlaceRef } {
  const at = freeSpot(sheet);
  if (isBerth(kind)) {
    const berth: Berth = { name: names[kind], at, heading: inHundredths(Math.PI), r: RIM };
    return { sheet: { ...sheet, [kind]: berth }, place: { kind, id: '' } };
  }
  const all = placesOf(sheet).filter((place) => !isBerth(place.kind));
  const id = freeId(kind, all);
  const made = newListed(kind, at, { id, name: numbered(names[kind], all.length + 1) });
  return { sheet: withList(sheet, kind, [...listOf(sheet, kind), made]), place: { kind, id } };
}

function newListed(kind: ListedKind, at: PaperPoint, named: Pick<Listed, 'id' | 'name'>): Listed {
  if (kind === 'gate') return { ...named, a: { x: at.x, y: at.y - GATE }, b: { x: at.x, y: at.y + GATE } };
  const corner = { x: at.x - AREA.x, y: at.y - AREA.y };
  const box = { ...named, at: corner, w: 2 * AREA.x, h: 2 * AREA.y };
  return kind === 'box' ? box : { ...named, polygon: [...boxCorners(box)] };
}

const numbered = ({ en, es }: Texts, n: number): Texts => ({
  en: `${en} ${n}`,
  ...(es === undefined ? {} : { es: `${es} ${n}` }),
});

export function withoutPlace(sheet: Sheet, { kind, id }: PlaceRef): Sheet {
  if (!isBerth(kind))
    return withList(
      sheet,
      kind,
      listOf(sheet, kind).filter((each) => each.id !== id),
    );
  const { finish: _, ...rest } = sheet;
  return kind === 'finish' ? rest : sheet;
}

/** One more corner, in the middle of the longest side. */
export function withMoreCorners(area: Area): Area {
  const { polygon } = area;
  const sides = polygon.map((p, i) => ({ p, q: polygon[(i + 1) % polygon.length]!, i }));
  const longest = sides.reduce((a, b) => (distance(b.p, b.q) > distance(a.p, a.q) ? b : a));
  const more = [...polygon];
  more.splice(longest.i + 1, 0, middleOf([longest.p, longest.q]));
  return { ...area, polygon: more.map(roundPoint) };
}

/** The fewest and the most corners of an area. */
export const CORNERS = { least: 3, most: 24 } as const;
/** The most gates, areas, keep-outs or boxes of a sheet. */
const MOST_OF_A_KIND = 12;

/** Whether a sheet has all of a kind that it may have. */
export const isFull = (sheet: Sheet, kind: PlaceKind): boolean =>
  isBerth(kind) ? sheet[kind] !== undefined : listOf(sheet, kind).length >= MOST_OF_A_KIND;
