import { describe, expect, it } from 'vitest';
import { LOCALES } from '../../../shared/documents/values.ts';
import { everySentence } from '../../sentences/every.ts';
import '../../seed.ts';

const english = everySentence('en');
const spanish = everySentence('es');

/** The same in both: names, codes of the page, and who gave advice. */
const SAME_PLACE =
  /^(emblems|numbers)|\.(by|key)$|^(desk|board)\.title$|^check\.desk\.place$|^keys\.rows\.\d+\.0$/;
const SAME_WORD = /^(met|caution|stops|plum-42|Robots?|Total|Kit)$/;
/** Signs and figures without a word: "4×", "12 s", "B". */
const NO_WORD = /^[^\p{L}]*(\p{L}{0,3}\.?[^\p{L}]*)?$/u;

/** Figures as they are, whatever stands between their digits. */
const figures = (text: string): string[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => figure.replace(',', '.')).toSorted();

const pairs = english.said.map((said, i) => ({ said, other: spanish.said[i]! }));

describe('every sentence in both languages', () => {
  it('covers two languages', () => expect(LOCALES).toEqual(['en', 'es']));

  it('is asked for: no function of a language is left out', () => {
    expect(english.silent).toEqual([]);
    expect(spanish.silent).toEqual([]);
  });

  it('stands in the same place, asked with the same values', () => {
    const place = ({ path, asked }: (typeof english.said)[number]) => `${path} ${asked}`;
    expect(spanish.said.length).toBe(english.said.length);
    expect(pairs.find(({ said, other }) => place(said) !== place(other))).toBeUndefined();
  });

  it('has words of its own in Spanish', () => {
    const same = pairs.filter(
      ({ said, other }) =>
        said.text === other.text &&
        !SAME_PLACE.test(said.path) &&
        !SAME_WORD.test(said.text) &&
        !NO_WORD.test(said.text),
    );
    expect([...new Set(same.map(({ said }) => `${said.path}: ${said.text}`))]).toEqual([]);
  });

  it('carries the same figures', () => {
    const differ = pairs.filter(
      ({ said, other }) => figures(said.text).join(' ') !== figures(other.text).join(' '),
    );
    expect([
      ...new Set(differ.map(({ said, other }) => `${said.path}: ${said.text} ≠ ${other.text}`)),
    ]).toEqual([]);
  });

  it('is Spanish: no word of English grammar', () => {
    const grammar =
      /\b(the|and|of|is|are|with|your|you|this|that|it|to|what|from|not|does|have|for|on|by)\b/i;
    const found = spanish.said.filter(({ path, text }) => grammar.test(text) && !path.endsWith('.by'));
    expect([...new Set(found.map(({ path, text }) => `${path}: ${text}`))]).toEqual([]);
  });

  it('opens its questions and cries in Spanish, and contracts "a el" and "de el"', () => {
    const wrong = spanish.said
      .filter(({ path }) => !SAME_PLACE.test(path))
      .filter(
        ({ text }) =>
          /[^¿]*\?/.test(text.replace(/¿[^?]*\?/g, '')) ||
          /\b(a|de) el\b/.test(text) ||
          /undefined|NaN|\[object/.test(text),
      );
    expect([...new Set(wrong.map(({ path, text }) => `${path}: ${text}`))]).toEqual([]);
  });
});
