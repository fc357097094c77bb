import icons from 'lucide-react/dynamicIconImports';
import svgpath from 'svgpath';
import { DRAWN_EMBLEMS } from '../../shared/picture/emblems.ts';
import { EMBLEMS, type Emblem } from '../../shared/room/state.ts';
import type { Segment } from './page.ts';
import { quadratic } from './shapes.ts';

/** The library's name of an emblem's icon, where it differs from the emblem's key. */
const RENAMED: Readonly<Partial<Record<Emblem, keyof typeof icons>>> = {
  wheel: 'ship-wheel',
  book: 'book-open',
  mug: 'coffee',
  basket: 'shopping-basket',
  chair: 'armchair',
};

type Node = readonly [name: string, attributes: Readonly<Record<string, unknown>>, ...rest: unknown[]];

/** The strokes of every emblem on its square of 24 units. */
export type EmblemPaths = Readonly<Record<Emblem, readonly Segment[]>>;

let loaded: Promise<EmblemPaths> | undefined;

/** The same pictures as on the pages: the icon library's own data, read once. */
export function emblemPaths(): Promise<EmblemPaths> {
  loaded ??= Promise.all(EMBLEMS.map(async (key) => [key, await strokesOf(key)] as const)).then(
    (pairs) => Object.fromEntries(pairs) as unknown as EmblemPaths,
  );
  return loaded;
}

const strokesOf = async (emblem: Emblem): Promise<Segment[]> => (await pathsOf(emblem)).flatMap(segmentsOf);

async function pathsOf(emblem: Emblem): Promise<readonly string[]> {
  if (emblem in DRAWN_EMBLEMS) return DRAWN_EMBLEMS[emblem as keyof typeof DRAWN_EMBLEMS];
  const name = RENAMED[emblem] ?? (emblem as keyof typeof icons);
  const { __iconData } = await icons[name]();
  return (__iconData.node as readonly Node[]).map(([kind, attributes]) => pathOf(kind, attributes));
}

function pathOf(kind: string, attributes: Readonly<Record<string, unknown>>): string {
  if (kind === 'path') return String(attributes.d);
  const [cx, cy] = [Number(attributes.cx), Number(attributes.cy)];
  const [rx, ry] = [Number(attributes.rx ?? attributes.r), Number(attributes.ry ?? attributes.r)];
  if ([cx, cy, rx, ry].some(Number.isNaN)) throw new RangeError(`no path for an icon's ${kind}`);
  const half = (to: number) => `A${rx} ${ry} 0 0 1 ${to} ${cy}`;
  return `M${cx - rx} ${cy}${half(cx + rx)}${half(cx - rx)}Z`;
}

/** Path data with only the segments that a page knows. */
function segmentsOf(d: string): Segment[] {
  const segments: Segment[] = [];
  svgpath(d)
    .abs()
    .unshort()
    .unarc()
    .iterate(([letter, ...values], _, x, y) => {
      const [a = 0, b = 0, c = 0, e = 0, f = 0, g = 0] = values.map(Number);
      if (letter === 'M' || letter === 'L') segments.push([letter, a, b]);
      else if (letter === 'H') segments.push(['L', a, y]);
      else if (letter === 'V') segments.push(['L', x, a]);
      else if (letter === 'C') segments.push(['C', a, b, c, e, f, g]);
      else if (letter === 'Q') segments.push(quadratic(x, y, a, b, c, e));
      else if (letter === 'Z') segments.push(['Z']);
      else throw new RangeError(`an icon has a segment ${letter}`);
    });
  return segments;
}
