import type { Mm, Seconds } from '../../geometry/units.ts';

/** Rounded to so many places, without zeros at the end; never "-0". */
function short(value: number, places: 0 | 1): string {
  const factor = places === 0 ? 1 : 10;
  const rounded = Math.round(value * factor) / factor;
  return String(rounded === 0 ? 0 : rounded);
}

/** From 100 mm on lengths are said in cm; under 10 mm one place matters. */
const LONG = 100;
const FINE = 10;

function length(mm: Mm): string {
  const size = mm < 0 ? -mm : mm;
  if (size >= LONG) return centimetres(mm);
  return `${short(mm, size < FINE ? 1 : 0)} mm`;
}

/** Always in cm, for a margin that stands beside a wish in cm. */
const centimetres = (mm: Mm): string => `${short(mm / 10, 1)} cm`;

const time = (s: Seconds): string => `${short(s, 1)} s`;
const angle = (degrees: number): string => `${short(degrees, 0)}°`;

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;
/** Small counts as words, as they are said aloud: "one fast stretch", "12 marks". */
const words = (n: number): string => WORDS[n] ?? String(n);

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
function list(things: readonly string[], last = 'and'): string {
  if (things.length < 2) return things.join('');
  return `${things.slice(0, -1).join(', ')} ${last} ${things.at(-1)}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const numbers = { short, length, centimetres, time, angle, words, counted, list, capital };
