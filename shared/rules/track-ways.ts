import type { Mm } from '../geometry/units.ts';
import { angleBetween } from '../track/arms.ts';
import { type Arm, type Cut, type Track, twin } from '../track/track.ts';

/** A place on a line, by the line's index. */
export interface LineSpot {
  readonly line: number;
  readonly way: Mm;
}

/** The two nodes beside a place, with the way to each and the arm in which the place lies. */
export interface Beside {
  readonly node: number;
  readonly way: Mm;
  readonly arm: Arm | undefined;
}

/** Nodes just before and just after a place on its line. */
export function nodesBeside(track: Track, { line, way }: LineSpot): Beside[] {
  const { cuts } = track.lines[line]!;
  let i = 1;
  while (i < cuts.length - 1 && cuts[i]!.way < way) i++;
  const before = cuts[i - 1];
  const after = cuts[i];
  return [besideOf(track, line, before, way, true), besideOf(track, line, after, way, false)].filter(
    (b) => b !== undefined,
  );
}

function besideOf(
  track: Track,
  line: number,
  cut: Cut | undefined,
  way: Mm,
  along: boolean,
): Beside | undefined {
  if (!cut) return undefined;
  const arm = track.nodes[cut.node]!.arms.find(({ edge }) => {
    const e = track.edges[edge]!;
    return e.line === line && e.along === along && (along ? e.low : e.high) === cut.way;
  });
  return { node: cut.node, way: Math.abs(way - cut.way), arm };
}

/** Least ways along the track between nodes that are within `reach` of one another. */
export function nodeWays(track: Track, reach: Mm): (from: number, to: number) => Mm {
  const known = new Map<number, ReadonlyMap<number, Mm>>();
  return (from, to) => {
    let ways = known.get(from);
    if (!ways) {
      ways = waysFrom(track, from, reach);
      known.set(from, ways);
    }
    return ways.get(to) ?? Number.POSITIVE_INFINITY;
  };
}

function waysFrom(track: Track, from: number, reach: Mm): ReadonlyMap<number, Mm> {
  const ways = new Map<number, Mm>([[from, 0]]);
  const open = [from];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const { edge } of track.nodes[node]!.arms) {
      const { to, length } = track.edges[edge]!;
      const way = ways.get(node)! + length;
      if (way > reach || way >= (ways.get(to) ?? Number.POSITIVE_INFINITY)) continue;
      ways.set(to, way);
      open.push(to);
    }
  }
  return ways;
}

/** The angle between two arms of one node; π where they are the same arm's two ends. */
export function armsAngle(a: Beside, b: Beside): number {
  if (!a.arm || !b.arm || a.arm.edge === b.arm.edge || twin(a.arm.edge) === b.arm.edge) return Math.PI;
  return angleBetween(a.arm, b.arm);
}
