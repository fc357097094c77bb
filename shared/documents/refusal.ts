import type { Mm } from '../geometry/units.ts';

/** Where in a document, outermost first: `['drawing', 'marks', 3, 'line']`. */
export type DocumentPath = readonly (string | number)[];

/**
 * Why a design is not judged, as a value. Schemas have refused what is wrong in itself; these are
 * about the design on a challenge's sheet.
 */
export type DesignRefusal = { readonly path: DocumentPath } & (
  | { readonly code: 'mark-without-line'; readonly mark: string; readonly line: string }
  | { readonly code: 'mark-past-end'; readonly mark: string; readonly measured: Mm; readonly allowed: Mm }
  | { readonly code: 'id-already-given'; readonly id: string }
  | { readonly code: 'unknown-ink'; readonly mark: string; readonly ink: string }
  | { readonly code: 'too-many-pieces'; readonly measured: number; readonly allowed: number }
  | { readonly code: 'too-many-marks'; readonly measured: number; readonly allowed: number }
  | { readonly code: 'too-much-line'; readonly measured: Mm; readonly allowed: Mm }
  | { readonly code: 'too-many-meetings'; readonly allowed: number }
  // Of the challenge: nothing could be driven or measured on it, whatever is drawn.
  | { readonly code: 'finish-missing' }
  | { readonly code: 'start-missing' }
  | { readonly code: 'size-zero' }
);
export type DesignRefusalCode = DesignRefusal['code'];

/** What is wrong with a kit that its schema accepts. */
export type KitProblemCode =
  | 'word-twice'
  | 'reverse-without-meaning'
  | 'equal-neighbours'
  | 'two-way-turns-back'
  | 'ink-not-in-kit'
  | 'too-few-bands'
  | 'too-many-bands'
  | 'ink-letter-twice'
  | 'colours-too-close'
  | 'size-zero'
  | 'out-of-order'
  | 'out-of-range';

/** What is wrong with a challenge that its schema accepts. */
export type ChallengeProblemCode =
  | 'unknown-gate'
  | 'unknown-area'
  | 'gates-missing'
  | 'keep-out-missing'
  | 'same-id-twice'
  | 'sheet-too-large'
  | 'off-the-sheet'
  | 'box-too-small'
  | 'given-lines-missing'
  | 'begin-missing'
  | 'goals-missing'
  | 'asks-missing'
  | 'window-empty'
  | 'window-unfair'
  | 'too-much-ink'
  | KitProblemCode
  | DesignRefusalCode;

export interface ChallengeProblem {
  readonly path: DocumentPath;
  readonly code: ChallengeProblemCode;
}
