import { type Kit, reversed } from '../documents/kit.ts';
import { numberProblems } from './check-numbers.ts';
import { COLOURS_APART, pairDifferences } from './differences.ts';
import type { Found, KitProblem } from './kit-problem.ts';
import { isTwoWay } from './words.ts';

/** Everything that a kit's numbers, inks and chart get wrong. */
export function checkKit(kit: Kit): KitProblem[] {
  return [
    ...numberProblems(kit),
    ...inkProblems(kit),
    ...colourProblems(kit),
    ...kit.chart.flatMap((_, i) => rowProblems(kit, i)),
  ];
}

function inkProblems({ inks }: Kit): KitProblem[] {
  return inks.flatMap(({ id }, i) =>
    inks.findIndex((ink) => ink.id === id) < i
      ? [{ code: 'ink-letter-twice', ink: id, path: ['inks', i, 'id'], severity: 'wrong' } as const]
      : [],
  );
}

const colourProblems = (kit: Kit): KitProblem[] =>
  pairDifferences(kit).flatMap(({ one, two, path, least }): KitProblem[] => {
    if (least.difference >= COLOURS_APART) return [];
    const code = 'colours-too-close';
    return [{ code, ...least, one, two, path, least: COLOURS_APART, severity: 'caution' }];
  });

function rowProblems(kit: Kit, row: number): KitProblem[] {
  const { word, action } = kit.chart[row]!;
  const { least, most } = kit.rules.bands;
  const meaningOf = (other: string): number => kit.chart.findIndex((r) => r.word === other);
  const found: Found[] = [];
  const first = meaningOf(word);
  const reverse = reversed(word);
  if (first < row) found.push({ code: 'word-twice', word, first });
  if (meaningOf(reverse) < 0) found.push({ code: 'reverse-without-meaning', word, reverse });
  if (!kit.equalNeighbours && /(.)\1/.test(word)) found.push({ code: 'equal-neighbours', word });
  if (isTwoWay(word) && action.kind === 'turn-back') found.push({ code: 'two-way-turns-back', word });
  for (const ink of new Set(word)) {
    if (!kit.inks.some(({ id }) => id === ink)) found.push({ code: 'ink-not-in-kit', word, ink });
  }
  if (word.length < least) found.push({ code: 'too-few-bands', word, least });
  if (word.length > most) found.push({ code: 'too-many-bands', word, most });
  return found.map((f) => ({ ...f, path: ['chart', row, 'word'], severity: 'wrong' }));
}
