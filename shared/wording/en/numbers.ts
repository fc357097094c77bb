import type { Mm, Seconds } from '../../geometry/units.ts';

type Places = 0 | 1 | 2;
const FACTOR = { 0: 1, 1: 10, 2: 100 } as const;

/** Rounded to so many places, without zeros at the end; never "-0". */
function short(value: number, places: Places): string {
  const rounded = Math.round(value * FACTOR[places]) / FACTOR[places];
  return String(rounded === 0 ? 0 : rounded);
}

/** From 100 mm on lengths are said in cm; under 10 mm one place matters. */
const LONG = 100;
const FINE = 10;

function length(mm: Mm, places?: Places): string {
  const size = mm < 0 ? -mm : mm;
  if (size >= LONG) return centimetres(mm, places);
  return `${short(mm, places ?? (size < FINE ? 1 : 0))} mm`;
}

/** Always in cm, for a margin that stands beside a wish in cm. */
const centimetres = (mm: Mm, places: Places = 1): string => `${short(mm / 10, places)} cm`;

const time = (s: Seconds): string => `${short(s, 1)} s`;
const angle = (degrees: number, places: Places = 0): string => `${short(degrees, places)}°`;

/** A value beside another that it differs from: with as many places as it takes to see that. */
function beside(value: number, other: number, say: (value: number, places?: Places) => string): string {
  const usual = say(value);
  if (usual !== say(other) || value === other) return usual;
  const fine = say(value, 1);
  return fine === say(other, 1) ? say(value, 2) : fine;
}

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

export const numbers = { short, length, centimetres, time, angle, beside, words, counted, list, capital };
