import { numbersIn } from '../numbers.ts';

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

export const numbers = {
  ...numbersIn({ region: 'en-GB', inch: 'in' }),
  /** Small counts as words, as they are said aloud: "one fast stretch", "12 marks". */
  words: (n: number): string => WORDS[n] ?? String(n),
};
