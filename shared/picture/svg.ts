import type { PieceShape } from '../geometry/piece.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { labelledIn, type Picture, type PictureBand, type PictureLabel } from './shapes.ts';

/** What a drawn element is; the drawer gives each role its colours. */
const SVG_ROLES = [
  'grid-fine',
  'grid-coarse',
  'area',
  'keep-out',
  'box',
  'box-corner',
  'gate',
  'berth',
  'bow',
  'given',
  'line',
  'band',
  'hatch',
  'hatch-dots',
] as const;
export type SvgRole = (typeof SVG_ROLES)[number];

/** One path in mm. `width` and `color` only where the picture decides them: lines and bands. */
export interface SvgPath {
  readonly role: SvgRole;
  readonly d: string;
  readonly width?: Mm;
  readonly color?: string;
}

export interface SvgPicture {
  readonly w: Mm;
  readonly h: Mm;
  readonly paths: readonly SvgPath[];
  readonly labels: readonly PictureLabel[];
}

export interface SvgOptions {
  readonly grid?: boolean;
  readonly hatch?: boolean;
}

/**
 * The picture as path data, as few elements as its colours allow, in drawing order. For miniatures
 * leave grid and hatch out.
 */
export function svgOf(picture: Picture, { grid = false, hatch = false }: SvgOptions = {}): SvgPicture {
  const paths: SvgPath[] = [];
  const add = (role: SvgRole, d: string, more: Pick<SvgPath, 'width' | 'color'> = {}) => {
    if (d !== '') paths.push({ role, d, ...more });
  };
  if (grid) {
    add('grid-fine', gridPath(picture.grid.fine, picture));
    add('grid-coarse', gridPath(picture.grid.coarse, picture));
  }
  add('area', picture.areas.map((area) => polygonPath(area.polygon)).join(''));
  add('keep-out', picture.keepOut.map((area) => polygonPath(area.polygon)).join(''));
  add('box', picture.boxes.map((box) => polygonPath(box.polygon)).join(''));
  add('box-corner', picture.boxes.flatMap((box) => box.angles.map(polylinePath)).join(''));
  add('gate', picture.gates.map((gate) => segmentPath([gate.a, gate.b])).join(''));
  add('berth', picture.berths.map((berth) => polylinePath(berth.hull)).join(''));
  add('bow', picture.berths.flatMap((berth) => berth.bow.map(segmentPath)).join(''));
  for (const { role, width, d } of strokePaths(picture)) add(role, d, { width });
  for (const [color, bands] of byColor(picture.bands)) {
    add('band', bands.map((band) => polygonPath(band.outline)).join(''), { color });
  }
  if (hatch) {
    add('hatch', picture.bands.flatMap((band) => band.hatchStrokes.map(segmentPath)).join(''));
    add('hatch-dots', picture.bands.flatMap((band) => band.hatchDots.map(dotPath)).join(''));
  }
  const labels = labelledIn(picture).map((thing) => thing.label);
  return { w: picture.w, h: picture.h, paths, labels };
}

/** Path data of one run of straights and arcs. */
function piecesPath(pieces: readonly PieceShape[]): string {
  const first = pieces[0];
  if (!first) return '';
  return `M${pair(first.from)}${pieces.map(piecePath).join('')}`;
}

function piecePath(piece: PieceShape): string {
  if (piece.kind === 'straight') return `L${pair(piece.to)}`;
  const size = piece.sweep < 0 ? -piece.sweep : piece.sweep;
  const r = short(piece.radius);
  return `A${r} ${r} 0 ${size > Math.PI ? 1 : 0} ${piece.sweep > 0 ? 1 : 0} ${pair(piece.to)}`;
}

function strokePaths(picture: Picture): { role: 'line' | 'given'; width: Mm; d: string }[] {
  const groups = new Map<string, { role: 'line' | 'given'; width: Mm; d: string }>();
  for (const { role, width, pieces } of picture.strokes) {
    const key = `${role} ${width}`;
    const d = (groups.get(key)?.d ?? '') + piecesPath(pieces);
    groups.set(key, { role, width, d });
  }
  return [...groups.values()];
}

function byColor(bands: readonly PictureBand[]): Map<string, PictureBand[]> {
  const groups = new Map<string, PictureBand[]>();
  for (const band of bands) groups.set(band.color, [...(groups.get(band.color) ?? []), band]);
  return groups;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);
const pair = (p: PaperPoint): string => `${short(p.x)} ${short(p.y)}`;
export const polylinePath = (points: readonly PaperPoint[]): string => `M${points.map(pair).join('L')}`;
const polygonPath = (points: readonly PaperPoint[]): string => `${polylinePath(points)}Z`;
const segmentPath = ([a, b]: readonly [PaperPoint, PaperPoint]): string => `M${pair(a)}L${pair(b)}`;
/** A stroke of length zero: a round cap makes it a dot. */
const dotPath = (p: PaperPoint): string => `M${pair(p)}L${pair(p)}`;

function gridPath(ways: Picture['grid']['fine'], { w, h }: { w: Mm; h: Mm }): string {
  const upright = ways.xs.map((x) => `M${short(x)} 0V${short(h)}`);
  return [...upright, ...ways.ys.map((y) => `M0 ${short(y)}H${short(w)}`)].join('');
}
