import { describe, expect, it } from 'vitest';
import type { Locale } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { RECIPES } from '../../../shared/library/challenges/index.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { wording } from '../../../shared/wording/wording.ts';
import {
  counted,
  englishSyllables,
  fleschKincaid,
  perspicuity,
  sentencesOf,
  spanishSyllables,
  wordsOf,
} from '../../reading.ts';
import { everySentence } from '../../sentences/every.ts';
import '../../seed.ts';

/** What children read, by where it stands. Goals are those of the library, not any formula. */
const GROUPS: Readonly<Record<string, RegExp>> = {
  tablet: /^(tablet|onPaper)\./,
  tracing: /^tracing\./,
  foretelling: /^(foretelling|reasons|replay)\b/,
  closing: /^closing\.(check|board)\b/,
  findings: /^findings\./,
  questions: /^questions\.ask$/,
  scenes:
    /^scenes\.(fleet|foretell\.(title|mark|ask|says|begins|noMarks|right)|closing\.(robots|caps|growth|grown|met))\b/,
  board: /^board\.(gather|brief|building|look|paused|close|noRoom)\b/,
};

/** Sentences: what has at least three words. Labels are no running text. */
const MIN_WORDS = 3;
/** The longest sentence for a child of 8, in words: common practice in easy reading, no single source. */
const LONGEST = 20;

const SAID = { en: everySentence('en').said, es: everySentence('es').said } as const;

function textsOf(locale: Locale, group: RegExp): string[] {
  const said = SAID[locale].filter(({ path }) => group.test(path));
  return [...new Set(said.map(({ text }) => text))].filter((text) => wordsOf(text).length >= MIN_WORDS);
}

const GOALS = readyChallenges(DEMO_KIT).flatMap((one) =>
  one.playable ? one.challenge.goals.map((goal) => ({ goal, sheet: one.challenge.sheet })) : [],
);
const goals = (locale: Locale): string[] => [
  ...new Set(GOALS.map(({ goal, sheet }) => wording(locale).goals.sentence(goal.formula, sheet, goal.start))),
];

const library = (locale: Locale): string[] =>
  RECIPES.flatMap(({ sentence, mirrored }) => [sentence[locale], ...(mirrored ? [mirrored[locale]] : [])]);

const groups = (locale: Locale): [string, string[]][] => [
  ...Object.entries(GROUPS).map(([name, group]): [string, string[]] => [name, textsOf(locale, group)]),
  ['goals', goals(locale)],
  ['challenges', library(locale)],
];

describe('reading for a child of 8', () => {
  // Third grade in US schools is for children of 8 and 9.
  it.each(groups('en'))('English, %s: at most the end of third grade by Flesch–Kincaid', (_, texts) =>
    expect(fleschKincaid(counted(texts, englishSyllables))).toBeLessThan(4),
  );

  it.each(groups('es'))('Spanish, %s: very easy on the INFLESZ scale', (_, texts) =>
    expect(perspicuity(counted(texts, spanishSyllables))).toBeGreaterThan(80),
  );

  it.each(['en', 'es'] as const)('no sentence is long in %s', (locale) => {
    const sentences = groups(locale).flatMap(([, texts]) => texts.flatMap(sentencesOf));
    expect(sentences.filter((sentence) => wordsOf(sentence).length > LONGEST)).toEqual([]);
  });
});

describe('syllables, counted by hand', () => {
  it.each([
    ['line', 1],
    ['junction', 2],
    ['robot', 2],
    ['sensors', 2],
    ['handed', 2],
    ['moved', 1],
    ['circle', 2],
    ['finishes', 3],
    ['the', 1],
  ])('%s has %i', (word, count) => expect(englishSyllables(word)).toBe(count));

  it.each([
    ['línea', 3],
    ['marca', 2],
    ['guía', 2],
    ['queda', 2],
    ['aún', 2],
    ['ruedas', 2],
    ['día', 2],
    ['estación', 3],
    ['leer', 2],
    ['voy', 1],
    ['a', 1],
  ])('%s has %i', (word, count) => expect(spanishSyllables(word)).toBe(count));
});
