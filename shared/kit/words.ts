import { type Kit, reversed } from '../documents/kit.ts';

/** Every word of `bands` bands that a kit's inks can write, in the order of the inks. */
export function wordsOf(kit: Pick<Kit, 'inks' | 'equalNeighbours'>, bands: number): string[] {
  let words = [''];
  for (let n = 0; n < bands; n++) {
    words = words.flatMap((word) =>
      kit.inks.filter(({ id }) => kit.equalNeighbours || !word.endsWith(id)).map(({ id }) => word + id),
    );
  }
  return words;
}

/** Whether a mark reads the same from both sides. */
export const isTwoWay = (word: string): boolean => word === reversed(word);
