import { LOCALES, type Locale, type Units } from '../documents/values.ts';
import { en } from './en/index.ts';
import { es } from './es/index.ts';
import { inUnits } from './units.ts';

export { type Locale, textIn } from '../documents/values.ts';
export { fresh } from './fresh.ts';

/** English gives the shape: another language is complete when it type-checks as this. */
export type Wording = typeof en;

const LANGUAGES: Readonly<Record<Locale, Wording>> = { en, es };

/** What a language calls itself, for those who look for theirs. */
export const LANGUAGE_NAMES: Readonly<Record<Locale, string>> = { en: 'English', es: 'Español' };

const SAID = new Map(
  LOCALES.map((locale) => [
    locale,
    { cm: inUnits(LANGUAGES[locale], 'cm'), in: inUnits(LANGUAGES[locale], 'in') },
  ]),
);

/** All sentences of one language, with lengths in cm or inches. The same object each time. */
export const wording = (locale: Locale, units: Units = 'cm'): Wording => SAID.get(locale)![units];
