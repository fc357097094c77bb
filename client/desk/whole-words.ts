import type { Locale } from '../../shared/documents/values.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import type { Sources } from '../parts/languages.ts';
import { useWords } from '../parts/use-words.ts';

/** The desk says more than other pages do: its page speaks from here. */
export const WHOLE: Sources & Readonly<Record<Locale, () => Promise<Wording>>> = {
  en: async () => (await import('../../shared/wording/en/whole.ts')).whole,
  es: async () => (await import('../../shared/wording/es/whole.ts')).whole,
};

/** All sentences in the language of this device: what `WHOLE` gave is what was loaded. */
export const useWholeWords = (): Wording => useWords() as Wording;
