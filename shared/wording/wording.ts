import { LOCALES, type Locale, type Units } from '../documents/values.ts';
import type { en } from './en/index.ts';
import { whole as wholeEnglish } from './en/whole.ts';
import { whole as wholeSpanish } from './es/whole.ts';
import { inBothUnits } from './units.ts';

export { type Locale, textIn } from '../documents/values.ts';
export { fresh } from './fresh.ts';

/** English gives the shape: another language is complete when it type-checks as this. */
export type Wording = typeof wholeEnglish;
/** What every page says: less than desk, paper and commands do. */
export type PageWording = typeof en;

const LANGUAGES: Readonly<Record<Locale, Wording>> = { en: wholeEnglish, es: wholeSpanish };

const SAID = new Map(LOCALES.map((locale) => [locale, inBothUnits(LANGUAGES[locale])]));

/**
 * All sentences of one language, with lengths in cm or inches. The same object each time. Pages load the
 * one language that they speak (`client/parts/languages.ts`).
 */
export const wording = (locale: Locale, units: Units = 'cm'): Wording => SAID.get(locale)![units];
