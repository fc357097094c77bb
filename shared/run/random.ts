/**
 * A small fast counter generator (sfc32, Chris Doty-Humphrey): 32-bit integers only, so its numbers
 * are the same on every machine.
 */
export interface Sfc32 {
  a: number;
  b: number;
  c: number;
  count: number;
}

const WARM_UP = 12;

/** A generator of its own for every seed. */
export function sfc32(seed: number): Sfc32 {
  const generator: Sfc32 = { a: 0, b: 0, c: 0, count: 1 };
  let h = seed | 0;
  const word = (): number => {
    h = (h + 0x9e3779b9) | 0;
    let t = h ^ (h >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    return t ^ (t >>> 15);
  };
  generator.a = word();
  generator.b = word();
  generator.c = word();
  for (let i = 0; i < WARM_UP; i++) nextInteger(generator);
  return generator;
}

/** The next signed 32-bit integer. */
export function nextInteger(g: Sfc32): number {
  const sum = (((g.a + g.b) | 0) + g.count) | 0;
  g.count = (g.count + 1) | 0;
  g.a = g.b ^ (g.b >>> 9);
  g.b = (g.c + (g.c << 3)) | 0;
  g.c = (((g.c << 21) | (g.c >>> 11)) + sum) | 0;
  return sum;
}

/** One of 0 … sides − 1, equally likely to within 2⁻³². */
export function rolled(g: Sfc32, sides: number): number {
  return Math.floor(((nextInteger(g) >>> 0) / 4294967296) * sides);
}

/** From −1 to 1, every value as likely. */
export const evenly = (g: Sfc32): number => nextInteger(g) / 2147483648;

/** Normal with mean 0 and deviation 1, as the sum of twelve uniform numbers: it ends at ±6. */
export function normal(g: Sfc32): number {
  let sum = 0;
  for (let i = 0; i < 6; i++) {
    const word = nextInteger(g);
    sum += (word & 0xffff) + (word >>> 16);
  }
  return (sum + 6) / 65536 - 6;
}

/** 2 to this power values: 16 KB, half of a usual first-level cache. */
export const NOISE_BITS = 12;
const NOISE_SEED = 20_240_229;
/** How many values one step may take from a place in the table. */
const NOISE_AFTER = 16;

/** Sensor noise with deviation 1. A step takes a few neighbours from a place that an integer generator picks. */
export const NOISE: Float32Array = noiseTable();

function noiseTable(): Float32Array {
  const generator = sfc32(NOISE_SEED);
  const table = new Float32Array((1 << NOISE_BITS) + NOISE_AFTER);
  for (let i = 0; i < table.length; i++) table[i] = normal(generator);
  return table;
}

/** No value of the table is further from 0. */
export const MOST_NOISE: number = NOISE.reduce((most, value) => Math.max(most, value, -value), 0);
