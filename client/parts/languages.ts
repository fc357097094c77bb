import type { Locale, Units } from '../../shared/documents/values.ts';
import { type InBothUnits, inBothUnits } from '../../shared/wording/units.ts';
import type { Wording } from '../../shared/wording/wording.ts';

/** What a language calls itself, for those who look for theirs. */
export const LANGUAGE_NAMES: Readonly<Record<Locale, string>> = { en: 'English', es: 'Español' };

/** A page loads the language that it speaks; another one when it is chosen. */
const SOURCES: Readonly<Record<Locale, () => Promise<Wording>>> = {
  en: async () => (await import('../../shared/wording/en/index.ts')).en,
  es: async () => (await import('../../shared/wording/es/index.ts')).es,
};

const loaded = new Map<Locale, InBothUnits<Wording>>();

/** Fetches a language unless it is here. Throws where the server cannot be reached. */
export async function loadLanguage(locale: Locale): Promise<void> {
  if (!loaded.has(locale)) loaded.set(locale, inBothUnits(await SOURCES[locale]()));
}

/** The sentences of a language that has been loaded. */
export function wordsIn(locale: Locale, units: Units): Wording {
  const words = loaded.get(locale);
  if (!words) throw new Error(`the language ${locale} has not been loaded`);
  return words[units];
}
