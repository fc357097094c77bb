import * as z from 'zod/mini';
import type { Mm, PaperPoint, Rad, Seconds } from '../geometry/units.ts';

/**
 * The values that documents are made of. Every schema is a codec: the file form holds integers
 * (0.01 mm, 0.01 degree, 0.01 s), the form in memory holds mm, rad and s. Reading and writing
 * quantise, so the same drawing is the same numbers on every machine.
 */

const HUNDREDTHS = 100;
const PI = Math.PI;
/** 4 m, the longest side of a sheet, doubled so that a draft may hang over the edge. */
const FURTHEST = 800_000;

const hundredths = (least: number, most: number) =>
  z.codec(z.int().check(z.gte(least), z.lte(most)), z.number(), {
    decode: (n) => n / HUNDREDTHS,
    encode: (value) => Math.round(value * HUNDREDTHS),
  });

const asMm = (least: number, most: number): z.ZodMiniCodec<z.ZodMiniNumberFormat, z.ZodMiniNumber<Mm>> =>
  hundredths(least, most) as z.ZodMiniCodec<z.ZodMiniNumberFormat, z.ZodMiniNumber<Mm>>;

/** A coordinate or signed length, mm. */
export const Coordinate = asMm(-FURTHEST, FURTHEST);
/** A length that is not negative, mm. */
export const Length = asMm(0, FURTHEST);
/** A time that is not negative, s; at most an hour. */
export const Duration = hundredths(0, 360_000) as z.ZodMiniCodec<
  z.ZodMiniNumberFormat,
  z.ZodMiniNumber<Seconds>
>;
/** An angle, stored in 0.01 degree. */
export const Angle = z.codec(z.int().check(z.gte(-36_000), z.lte(36_000)), z.number(), {
  decode: (n) => (n * PI) / 18_000,
  encode: (rad) => Math.round((rad * 18_000) / PI),
}) as z.ZodMiniCodec<z.ZodMiniNumberFormat, z.ZodMiniNumber<Rad>>;
/** A plain ratio or factor, rounded to six places. */
export const Ratio = z.codec(z.number().check(z.gte(-1000), z.lte(1000)), z.number(), {
  decode: (value) => Math.round(value * 1e6) / 1e6,
  encode: (value) => Math.round(value * 1e6) / 1e6,
});
/**
 * tan(sweep/4) of a circular arc; 0 is straight (the open DXF convention, in the sheet's own frame:
 * positive bends from +x towards +y, to the right of travel). 12 is a sweep of 341 degrees.
 */
export const Bulge = z.codec(z.number().check(z.gte(-12), z.lte(12)), z.number(), {
  decode: (value) => Math.round(value * 1e6) / 1e6,
  encode: (value) => Math.round(value * 1e6) / 1e6,
});

export const Point: z.ZodMiniType<PaperPoint, { x: number; y: number }> = z.strictObject({
  x: Coordinate,
  y: Coordinate,
});

/** An identifier inside one document. */
export const Id = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,32}$/));
/** A short text that a person wrote. Shown as text only. */
export const ShortText = z.string().check(z.minLength(1), z.maxLength(200));
/** One text in each language that has it; English is the language of last resort. */
export const Texts = z.strictObject({ en: ShortText, es: z.optional(ShortText) });
export type Texts = z.output<typeof Texts>;

/** The languages that pages, print and commands speak; each is a folder of `shared/wording`. */
export const LOCALES = ['en', 'es'] as const satisfies readonly (keyof Texts)[];
export type Locale = (typeof LOCALES)[number];

/** In which lengths are said. Documents, sheets and the engine are in mm whatever is said. */
export const UNITS = ['cm', 'in'] as const;
export type Units = (typeof UNITS)[number];

/** A text of a document in this language, or in English where it has none. */
export const textIn = (texts: Texts, locale: Locale): string => texts[locale] ?? texts.en;

export interface DocumentProblem {
  /** Where in the document, outermost first: `['lines', 3, 'pieces', 0, 'bulge']`. */
  readonly path: readonly (string | number)[];
  /** What is wrong, as the schema's own code (`invalid_type`, `too_big`, `line-of-length-zero`, ...). */
  readonly code: string;
}

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly DocumentProblem[] };

/** Reads the file form of a document; refuses with the path of every bad value. Never throws. */
export function parseDocument<T>(schema: z.ZodMiniType<T, unknown>, input: unknown): Parsed<T> {
  const result = z.safeDecode(schema, input);
  if (result.success) return { ok: true, value: result.data };
  const problems = result.error.issues.map((issue) => ({
    path: issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step)),
    code: issue.code === 'custom' ? issue.message : issue.code,
  }));
  return { ok: false, problems };
}

/** The file form of a document: plain JSON with integers, keys in the order of the schema. */
export function writeDocument<T>(schema: z.ZodMiniType<T, unknown>, value: T): unknown {
  return z.encode(schema, value);
}
