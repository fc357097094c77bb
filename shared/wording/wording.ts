import type { Locale } from '../documents/values.ts';
import { en } from './en/index.ts';
import { inUnits, type Units } from './units.ts';

export { type Locale, textIn } from '../documents/values.ts';

/** English gives the shape: another language is complete when it type-checks as this. */
export type Wording = typeof en;

const LANGUAGES: Readonly<Record<Locale, Wording>> = { en };

/** What a language calls itself, for those who look for theirs. */
export const LANGUAGE_NAMES: Readonly<Record<Locale, string>> = { en: 'English' };

const both = (words: Wording): Readonly<Record<Units, Wording>> => ({
  cm: inUnits(words, 'cm'),
  in: inUnits(words, 'in'),
});
const SAID: Readonly<Record<Locale, Readonly<Record<Units, Wording>>>> = { en: both(LANGUAGES.en) };

/** All sentences of one language, with lengths in cm or inches. The same object each time. */
export const wording = (locale: Locale, units: Units = 'cm'): Wording => SAID[locale][units];
