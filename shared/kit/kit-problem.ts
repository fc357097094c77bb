import type { SeenDifference } from './colour.ts';

/** What a colour stands for in a finding: an ink's letter, the line, or the paper. */
export type ColourPlace = { readonly ink: string } | 'line' | 'paper';

interface OfWord {
  readonly word: string;
}

export type Found =
  | (OfWord & { readonly code: 'word-twice'; readonly first: number })
  | (OfWord & { readonly code: 'reverse-without-meaning'; readonly reverse: string })
  | (OfWord & { readonly code: 'equal-neighbours' })
  | (OfWord & { readonly code: 'two-way-turns-back' })
  | (OfWord & { readonly code: 'ink-not-in-kit'; readonly ink: string })
  | (OfWord & { readonly code: 'too-few-bands'; readonly least: number })
  | (OfWord & { readonly code: 'too-many-bands'; readonly most: number })
  | { readonly code: 'ink-letter-twice'; readonly ink: string }
  | { readonly code: 'size-zero' }
  /** Less than another value of the kit that it can't be less than. */
  | { readonly code: 'out-of-order'; readonly than: KitPath }
  | { readonly code: 'out-of-range'; readonly least: number; readonly most: number }
  | (SeenDifference & {
      readonly code: 'colours-too-close';
      readonly one: ColourPlace;
      readonly two: ColourPlace;
      readonly least: number;
    });

export type KitPath = readonly (string | number)[];

/**
 * What is wrong in a kit, and where in the document. `wrong` makes the kit ambiguous or a trap;
 * `caution` is for a person to weigh: inks also carry letters and hatches.
 */
export type KitProblem = Found & { readonly path: KitPath; readonly severity: 'wrong' | 'caution' };
