/**
 * The share of a sensor's footprint that lies on one side of a straight edge: the normal distribution
 * function, from its series, tabulated once. Only operations that agree between engines.
 */

/** Beyond this many deviations from an edge the footprint lies wholly on one side, to 1 in 30,000. */
export const FOOTPRINT_REACH = 4;
const STEPS_PER_DEVIATION = 128;
const STEPS = 2 * FOOTPRINT_REACH * STEPS_PER_DEVIATION;
const ROOT_PI = 1.772453850905516;
const TERMS = 80;

function normalShare(x: number): number {
  const t = x / Math.sqrt(2);
  let term = t;
  let sum = t;
  for (let n = 1; n < TERMS; n++) {
    term *= (-t * t) / n;
    sum += term / (2 * n + 1);
  }
  return 0.5 + sum / ROOT_PI;
}

const TABLE: Float64Array = shareTable();

function shareTable(): Float64Array {
  const table = new Float64Array(STEPS + 1);
  for (let i = 0; i <= STEPS; i++) table[i] = normalShare(i / STEPS_PER_DEVIATION - FOOTPRINT_REACH);
  table[0] = 0;
  table[STEPS] = 1;
  return table;
}

/** Share of the footprint on this side of an edge that is `deviations` away, negative past the edge. */
export function shareInside(deviations: number): number {
  const place = (deviations + FOOTPRINT_REACH) * STEPS_PER_DEVIATION;
  if (!(place > 0)) return 0;
  if (place >= STEPS) return 1;
  const i = Math.floor(place);
  const low = TABLE[i]!;
  return low + (TABLE[i + 1]! - low) * (place - i);
}
