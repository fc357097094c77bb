import type { Mm, Seconds } from '../geometry/units.ts';
import { unitsNow } from './units.ts';

/** Digits after the comma, at most. */
type Places = 0 | 1 | 2 | 3 | 4;

/** From 100 mm on lengths are said in cm; under 10 mm one place matters. */
const LONG = 100;
const FINE = 10;
const MM_PER_INCH = 25.4;

/** What numbers need to know of a language. */
export interface NumberWords {
  /** The tag of the region whose lists and digits are used (BCP 47). */
  readonly region: string;
  readonly inch: string;
}

/** Numbers, lengths and lists as a language writes them, by the Unicode data of the runtime. */
export function numbersIn({ region, inch }: NumberWords) {
  const digits = ([0, 1, 2, 3, 4] as const).map((places) => ({
    short: new Intl.NumberFormat(region, { maximumFractionDigits: places, useGrouping: false }),
    fixed: new Intl.NumberFormat(region, {
      minimumFractionDigits: places,
      maximumFractionDigits: places,
      useGrouping: false,
    }),
  }));
  const plural = new Intl.PluralRules(region);
  const lists = {
    and: new Intl.ListFormat(region, { type: 'conjunction' }),
    or: new Intl.ListFormat(region, { type: 'disjunction' }),
  };

  /** Halves go up, as they are taught; never "-0". */
  const rounded = (value: number, places: Places): number => {
    const factor = FACTORS[places];
    const near = Math.round(value * factor) / factor;
    return near === 0 ? 0 : near;
  };
  /** Rounded to so many places, without zeros at the end. */
  const short = (value: number, places: Places): string =>
    digits[places]!.short.format(rounded(value, places));
  /** With exactly so many places, for figures that run. */
  const fixed = (value: number, places: Places): string =>
    digits[places]!.fixed.format(rounded(value, places));

  const inches = (mm: Mm, places: Places): string => `${short(mm / MM_PER_INCH, places)} ${inch}`;
  const sizeOf = (mm: Mm): Mm => (mm < 0 ? -mm : mm);

  /** A millimetre is a 25th of an inch: what is said to the mm needs two places there. */
  const inInches = (mm: Mm, places?: Places): string =>
    sizeOf(mm) >= LONG ? inches(mm, places ?? 1) : inches(mm, ((places ?? 0) + 2) as Places);

  /** Always in cm, for a margin that stands beside a wish in cm; inches where those are wanted. */
  const centimetres = (mm: Mm, places: Places = 1): string =>
    unitsNow() === 'in' ? inches(mm, places) : `${short(mm / 10, places)} cm`;

  const length = (mm: Mm, places?: Places): string => {
    if (unitsNow() === 'in') return inInches(mm, places);
    if (sizeOf(mm) >= LONG) return centimetres(mm, places);
    return `${short(mm, places ?? (sizeOf(mm) < FINE ? 1 : 0))} mm`;
  };

  /** A value beside another that it differs from: with as many places as it takes to see that. */
  const beside = (
    value: number,
    other: number,
    say: (value: number, places?: 0 | 1 | 2) => string,
  ): string => {
    const usual = say(value);
    if (usual !== say(other) || value === other) return usual;
    const fine = say(value, 1);
    return fine === say(other, 1) ? say(value, 2) : fine;
  };

  return {
    short,
    fixed,
    length,
    centimetres,
    time: (s: Seconds): string => `${short(s, 1)} s`,
    angle: (degrees: number, places: Places = 0): string => `${short(degrees, places)}°`,
    beside,
    /** `one` or `many`, as the language's rule for this number has it. */
    plural: (n: number, one: string, many: string): string => (plural.select(n) === 'one' ? one : many),
    counted: (n: number, one: string, many: string): string =>
      `${short(n, 2)} ${plural.select(n) === 'one' ? one : many}`,
    /** "a", "a and b", "a, b and c". */
    list: (things: readonly string[], last: 'and' | 'or' = 'and'): string => lists[last].format(things),
    capital: (text: string): string => text.charAt(0).toUpperCase() + text.slice(1),
  };
}

const FACTORS: Readonly<Record<Places, number>> = { 0: 1, 1: 10, 2: 100, 3: 1000, 4: 10_000 };
