import type { Kit } from '../../shared/documents/kit.ts';
import { textIn } from '../../shared/documents/values.ts';
import { useLocale } from './use-words.ts';

/** The inks of a word by their names, in the order in which a robot meets them. */
export function useInkNames({ inks }: Kit, word: string): string[] {
  const locale = useLocale();
  return [...word].map((letter) => {
    const ink = inks.find(({ id }) => id === letter);
    return ink ? textIn(ink.name, locale) : letter;
  });
}
