import type { Locale, Units } from '../../shared/documents/values.ts';
import { type InBothUnits, inBothUnits } from '../../shared/wording/units.ts';
import type { PageWording } from '../../shared/wording/wording.ts';

/** What a language calls itself, for those who look for theirs. */
export const LANGUAGE_NAMES: Readonly<Record<Locale, string>> = { en: 'English', es: 'Español' };

export type Sources = Readonly<Record<Locale, () => Promise<PageWording>>>;

/** A page loads the language that it speaks; another one when it is chosen. */
let sources: Sources = {
  en: async () => (await import('../../shared/wording/en/index.ts')).en,
  es: async () => (await import('../../shared/wording/es/index.ts')).es,
};

/** For a page that says more than others; before it loads its language. */
export const speakFrom = (more: Sources): void => {
  sources = more;
};

const loaded = new Map<Locale, InBothUnits<PageWording>>();

/** Fetches a language unless it is here. Throws where the server cannot be reached. */
export async function loadLanguage(locale: Locale): Promise<void> {
  if (!loaded.has(locale)) loaded.set(locale, inBothUnits(await sources[locale]()));
}

/** The sentences of a language that has been loaded. */
export function wordsIn(locale: Locale, units: Units): PageWording {
  const words = loaded.get(locale);
  if (!words) throw new Error(`the language ${locale} has not been loaded`);
  return words[units];
}
