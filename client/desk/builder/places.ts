import type { Area, Berth, Gate, Sheet } from '../../../shared/documents/sheet.ts';
import type { Texts } from '../../../shared/documents/values.ts';
import { cos, distance, sin } from '../../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint, Rad } from '../../../shared/geometry/units.ts';
import { roundPoint } from '../../editor/quantise.ts';

/** Berths, gates and areas of a sheet: what can be added, moved by its handles, named and taken away. */

const PLACE_KINDS = ['start', 'finish', 'gate', 'area', 'keep-out'] as const;
export type PlaceKind = (typeof PLACE_KINDS)[number];

/** One place: `id` tells gates and areas of one kind apart. */
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

export const placesOf = (sheet: Sheet): PlaceRef[] => [
  { kind: 'start', id: '' },
  ...(sheet.finish ? [{ kind: 'finish', id: '' } as const] : []),
  ...sheet.gates.map(({ id }) => ({ kind: 'gate', id }) as const),
  ...sheet.areas.map(({ id }) => ({ kind: 'area', id }) as const),
  ...sheet.keepOut.map(({ id }) => ({ kind: 'keep-out', id }) as const),
];

type Place = Berth | Gate | Area;

export function placeIn(sheet: Sheet, { kind, id }: PlaceRef): Place | undefined {
  switch (kind) {
    case 'start':
      return sheet.start;
    case 'finish':
      return sheet.finish;
    case 'gate':
      return sheet.gates.find((gate) => gate.id === id);
    case 'area':
      return sheet.areas.find((area) => area.id === id);
    case 'keep-out':
      return sheet.keepOut.find((area) => area.id === id);
  }
}

/** The points that make a place: a berth's middle, a gate's ends, an area's corners. */
export function cornersOf(place: Place): readonly PaperPoint[] {
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
export function withPlace(sheet: Sheet, { kind, id }: PlaceRef, place: Place): Sheet {
  const swap = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
    list.map((each) => (each.id === id ? (place as unknown as T) : each));
  switch (kind) {
    case 'start':
    case 'finish':
      return { ...sheet, [kind]: place as Berth };
    case 'gate':
      return { ...sheet, gates: swap(sheet.gates) };
    case 'area':
      return { ...sheet, areas: swap(sheet.areas) };
    case 'keep-out':
      return { ...sheet, keepOut: swap(sheet.keepOut) };
  }
}

/** The place with other points, as `cornersOf` has them. */
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
  if (handle.part === 'corner') {
    const now = corners.map((p, i) => (i === handle.corner ? onSheet(to, sheet) : p));
    return withPlace(sheet, handle.place, withCorners(place, now));
  }
  const middle = middleOf(corners);
  const by = keptOnSheet({ x: to.x - middle.x, y: to.y - middle.y }, corners, sheet);
  const now = corners.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
  return withPlace(sheet, handle.place, withCorners(place, now));
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

/** Adds a place in a free spot of the sheet. Gates and areas of a kind are at most twelve. */
export function withNewPlace(
  sheet: Sheet,
  kind: PlaceKind,
  names: PlaceNames,
): { sheet: Sheet; place: PlaceRef } {
  const at = freeSpot(sheet);
  const all = [...sheet.gates, ...sheet.areas, ...sheet.keepOut];
  const id = freeId(kind, all);
  const name = numbered(names[kind], all.length + 1);
  if (kind === 'start' || kind === 'finish') {
    const berth: Berth = { name: names[kind], at, heading: inHundredths(Math.PI), r: RIM };
    return { sheet: { ...sheet, [kind]: berth }, place: { kind, id: '' } };
  }
  if (kind === 'gate') {
    const gate = { id, name, a: { x: at.x, y: at.y - GATE }, b: { x: at.x, y: at.y + GATE } };
    return { sheet: { ...sheet, gates: [...sheet.gates, gate] }, place: { kind, id } };
  }
  const polygon = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x, y]) => ({ x: at.x + x! * AREA.x, y: at.y + y! * AREA.y }));
  const key = kind === 'area' ? 'areas' : 'keepOut';
  return { sheet: { ...sheet, [key]: [...sheet[key], { id, name, polygon }] }, place: { kind, id } };
}

const numbered = ({ en, es }: Texts, n: number): Texts => ({
  en: `${en} ${n}`,
  ...(es === undefined ? {} : { es: `${es} ${n}` }),
});

export function withoutPlace(sheet: Sheet, { kind, id }: PlaceRef): Sheet {
  const others = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
    list.filter((each) => each.id !== id);
  switch (kind) {
    case 'start':
      return sheet;
    case 'finish': {
      const { finish: _, ...rest } = sheet;
      return rest;
    }
    case 'gate':
      return { ...sheet, gates: others(sheet.gates) };
    case 'area':
      return { ...sheet, areas: others(sheet.areas) };
    case 'keep-out':
      return { ...sheet, keepOut: others(sheet.keepOut) };
  }
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
/** The most gates, areas or keep-outs of a sheet. */
export const MOST_OF_A_KIND = 12;
