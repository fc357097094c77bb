import { atan2 } from '../geometry/exact-math.ts';
import type { Path } from '../geometry/path.ts';
import { pieceDirection } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidLine } from './layout.ts';
import type { Spot } from './meetings.ts';
import type { Cut } from './track.ts';

export interface Clusters {
  /** For each line its cuts, in order of the way. */
  readonly cuts: readonly (readonly Cut[])[];
  readonly count: number;
}

/**
 * Gathers the places where lines begin, end, bend sharply or meet into nodes: linked places are one,
 * and so are places of one line that lie within `snap` of the first of them.
 */
export function clustersOf(
  lines: readonly LaidLine[],
  links: readonly (readonly [Spot, Spot])[],
  snap: Mm,
): Clusters {
  const spots: Spot[] = [];
  const joined: number[] = [];
  const add = (spot: Spot): number => {
    joined.push(spots.length);
    return spots.push(spot) - 1;
  };
  lines.forEach(({ path }, line) => {
    for (const way of [0, ...cornerWays(path), path.length]) add({ line, way });
  });
  for (const [a, b] of links) unite(joined, add(a), add(b));
  const order = spots.map((_, i) => i).sort((i, j) => bySpot(spots[i]!, spots[j]!) || i - j);
  uniteNeighbours(spots, order, joined, snap);
  return numbered(lines.length, spots, order, joined);
}

const bySpot = (a: Spot, b: Spot): number => a.line - b.line || a.way - b.way;

function find(joined: number[], i: number): number {
  let root = i;
  while (joined[root] !== root) root = joined[root]!;
  joined[i] = root;
  return root;
}

function unite(joined: number[], i: number, j: number): void {
  const a = find(joined, i);
  const b = find(joined, j);
  joined[Math.max(a, b)] = Math.min(a, b);
}

function uniteNeighbours(spots: readonly Spot[], order: readonly number[], joined: number[], snap: Mm): void {
  let first: number | undefined;
  for (const i of order) {
    const spot = spots[i]!;
    const head = first === undefined ? undefined : spots[first]!;
    if (head && head.line === spot.line && spot.way - head.way <= snap) unite(joined, first!, i);
    else first = i;
  }
}

function numbered(
  lines: number,
  spots: readonly Spot[],
  order: readonly number[],
  joined: number[],
): Clusters {
  const nodes = new Map<number, number>();
  const cuts: Cut[][] = Array.from({ length: lines }, () => []);
  for (const i of order) {
    const { line, way } = spots[i]!;
    const root = find(joined, i);
    const node = nodes.get(root) ?? nodes.size;
    nodes.set(root, node);
    const last = cuts[line]!.at(-1);
    if (last?.node !== node || way - last.way > TOLERANCE.samePoint) cuts[line]!.push({ way, node });
  }
  return { cuts, count: nodes.size };
}

/** Ways at which a path turns away from ahead. */
function cornerWays(path: Path): Mm[] {
  const ways: Mm[] = [];
  for (let i = 1; i < path.pieces.length; i++) {
    const before = path.pieces[i - 1]!;
    const d = pieceDirection(before, before.length);
    const e = pieceDirection(path.pieces[i]!, 0);
    const turn = atan2(d.x * e.y - d.y * e.x, d.x * e.x + d.y * e.y);
    if (Math.abs(turn) > TOLERANCE.ahead) ways.push(path.starts[i]!);
  }
  return ways;
}
