import type { ClosingAnswer, ClosingAsk, ClosingMistake } from '../documents/closing-check.ts';
import { type Action, actionOf, type Kit, reversed } from '../documents/kit.ts';
import { actionKey } from '../judge/questions.ts';

type MarkChoices = Extract<ClosingAsk, { kind: 'mark' }>['choices'];

export interface WrongMeaning {
  readonly action: Action;
  readonly mistake: ClosingMistake;
}

const MOST_WRONG = 3;

/**
 * What a mark may be taken for by those who make a known mistake, the right meaning among it; undefined
 * where the chart lacks the word, or where nobody could go wrong. `turn` says at which place the right one is.
 */
export function choicesOfMark(
  kit: Kit,
  word: string,
  turn: number,
): { readonly choices: MarkChoices; readonly answer: ClosingAnswer } | undefined {
  const action = actionOf(kit, word);
  const wrong = action ? wrongMeanings(kit, word, action) : [];
  if (!action || wrong.length === 0) return undefined;
  const actions = wrong.map((one) => one.action);
  const choices = inTurn(turn, action, actions).map((one) => ({
    key: actionKey(one),
    kind: 'action' as const,
    action: one,
  }));
  const mistakes = wrong.map((one) => ({ choice: actionKey(one.action), mistake: one.mistake }));
  return { choices, answer: { right: actionKey(action), word, mistakes } };
}

/** The right one among the others, at a place that `turn` gives. */
export function inTurn<T>(turn: number, right: T, wrong: readonly T[]): T[] {
  const all = [...wrong];
  all.splice(turn % (all.length + 1), 0, right);
  return all;
}

/**
 * What those who make a known mistake take a mark for: one of each mistake first, then more of them, as the chart
 * lists its words. `right` undefined: the chart lacks the word.
 */
export function wrongMeanings(kit: Kit, word: string, right: Action | undefined): WrongMeaning[] {
  const words = kit.chart.map((row) => row.word).filter((other) => other !== word);
  const kinds: WrongMeaning[][] = [
    meanings(kit, [reversed(word)], 'same-from-both-sides'),
    meanings(
      kit,
      words.filter((other) => differsByOne(other, word)),
      'one-ink-mistaken',
    ),
    meanings(
      kit,
      words.filter((other) => other[0] === word[0]),
      'first-colour-counts',
    ),
  ];
  const all = [...kinds.flatMap((kind) => kind.slice(0, 1)), ...kinds.flatMap((kind) => kind.slice(1))];
  const known = new Set(right ? [actionKey(right)] : []);
  const wrong = all.filter(({ action }) => {
    const key = actionKey(action);
    const isNew = !known.has(key);
    known.add(key);
    return isNew;
  });
  return wrong.slice(0, MOST_WRONG);
}

const meanings = (kit: Kit, words: readonly string[], mistake: ClosingMistake): WrongMeaning[] =>
  words.flatMap((word) => {
    const action = actionOf(kit, word);
    return action ? [{ action, mistake }] : [];
  });

const differsByOne = (a: string, b: string): boolean =>
  a.length === b.length && [...a].filter((ink, i) => ink !== b[i]).length === 1;
