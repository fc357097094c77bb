/** An emblem on the points line. */
export interface Place {
  readonly id: string;
  /** Share of the line, 0 to 1. */
  readonly at: number;
  /** 0 stands on the line, 1 on another emblem. */
  readonly level: number;
  /** How many more would have to stand on this one. */
  readonly others: number;
}

/** How wide an emblem's ring is, as a share of the line: nearer ones are stacked. */
const RING = 0.085;

/**
 * Puts each emblem on the lowest level on which it covers no other. Above `levels` nothing stands: the
 * nearest emblem on the highest level counts what is missing.
 */
export function stacked(
  emblems: readonly { readonly id: string; readonly at: number }[],
  levels: number,
): Place[] {
  const places: Place[] = [];
  for (const { id, at } of emblems) {
    const near = places.filter((other) => Math.abs(other.at - at) < RING);
    let level = 0;
    while (near.some((other) => other.level === level)) level++;
    if (level < levels) places.push({ id, at, level, others: 0 });
    else {
      const top = near.find((other) => other.level === levels - 1)!;
      places[places.indexOf(top)] = { ...top, others: top.others + 1 };
    }
  }
  return places;
}
