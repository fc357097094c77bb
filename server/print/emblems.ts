import icons from 'lucide-react/dynamicIconImports';
import { DRAWN_EMBLEMS } from '../../shared/picture/emblems.ts';
import { EMBLEMS, type Emblem } from '../../shared/room/state.ts';

/** The library's name of an emblem's icon, where it differs from the emblem's key. */
const RENAMED: Readonly<Partial<Record<Emblem, keyof typeof icons>>> = {
  wheel: 'ship-wheel',
  book: 'book-open',
  mug: 'coffee',
  basket: 'shopping-basket',
  chair: 'armchair',
};

type Node = readonly [name: string, attributes: Readonly<Record<string, unknown>>, ...rest: unknown[]];

/** The paths of every emblem on its square of 24 units. */
export type EmblemPaths = Readonly<Record<Emblem, readonly string[]>>;

let loaded: Promise<EmblemPaths> | undefined;

/** The same pictures as on the pages: the icon library's own data, read once. */
export function emblemPaths(): Promise<EmblemPaths> {
  loaded ??= Promise.all(EMBLEMS.map(async (key) => [key, await pathsOf(key)] as const)).then(
    (pairs) => Object.fromEntries(pairs) as Record<Emblem, readonly string[]>,
  );
  return loaded;
}

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
