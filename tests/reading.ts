/**
 * How hard a text is to read, by published formulas. They count lengths of words and sentences and know
 * nothing of their meaning, of pictures beside them, or of words that a lesson has taught ("junction",
 * "berth"); they were fitted on running text, not on labels. So they are taken over many sentences at
 * once, and a long sentence is looked for by itself.
 */

export interface Counted {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

const WORD = /[\p{L}’']+/gu;

/** Sentences of a text: what ends with a stop, a question or a colon, each with a word in it. */
export const sentencesOf = (text: string): string[] =>
  text.split(/(?<=[.?!:;])\s+/u).filter((part) => part.search(WORD) >= 0);

export const wordsOf = (text: string): string[] => text.match(WORD) ?? [];

/** Figures are read as they stand; they count as no word. */
export function counted(texts: readonly string[], syllablesOf: (word: string) => number): Counted {
  const sentences = texts.flatMap(sentencesOf);
  const words = sentences.flatMap(wordsOf);
  return {
    sentences: sentences.length,
    words: words.length,
    syllables: words.reduce((sum, word) => sum + syllablesOf(word), 0),
  };
}

/**
 * Syllables of an English word by groups of vowels, without a silent e; right for most words, one off for
 * some ("being", "quiet").
 */
export function englishSyllables(word: string): number {
  const plain = word.toLowerCase().replace(/[’']/g, '');
  const groups = plain.match(/[aeiouy]+/g)?.length ?? 0;
  const silent = /[^aeiouy]e$|[^aeiouytd]ed$|[^aeiouyscxzgh]es$/.test(plain) && !/[^aeiouy]le$/.test(plain);
  return Math.max(1, groups - (silent ? 1 : 0));
}

/**
 * Syllables of a Spanish word: a nucleus each; a weak vowel (i, u, y) beside another makes a diphthong
 * unless it carries the accent, and two strong ones stand apart (orthography of the Spanish academies).
 */
export function spanishSyllables(word: string): number {
  const plain = word.toLowerCase().replace(/qu|gu(?=[eiéí])/g, 'k');
  const nuclei = plain.match(/[iuü]?[aeoáéó](?:[iuü](?![aeoáéó])|y$)?|[iuü]+(?:y$)?|[íú]|y$/g);
  return Math.max(1, nuclei?.length ?? 0);
}

/**
 * Grade of US schools: Kincaid, Fishburne, Rogers, Chissom, "Derivation of new readability formulas"
 * (Naval Technical Training Command, Research Branch Report 8-75, 1975).
 */
export const fleschKincaid = ({ sentences, words, syllables }: Counted): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/**
 * Szigriszt Pazos, "Sistemas predictivos de legibilidad del mensaje escrito: fórmula de perspicuidad"
 * (1993), read by the INFLESZ scale: Barrio-Cantalejo et al., An. Sist. Sanit. Navar. 31 (2008), 135–152:
 * above 80 very easy, 65 to 80 quite easy, 55 to 65 normal.
 */
export const perspicuity = ({ sentences, words, syllables }: Counted): number =>
  206.835 - 62.3 * (syllables / words) - words / sentences;
