import type { Finding, FindingVariant } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

/** A title of two to four words with the measured value, and what it means and what is allowed. */
export interface Said {
  readonly title: string;
  readonly sentence: string;
}

const { length, angle } = numbers;

/** Measured and allowed values are lengths in mm, degrees, counts or ratios, as the rule's unit says. */
export interface Values {
  readonly measured: number;
  readonly allowed: number;
  readonly variant: FindingVariant | undefined;
  readonly severity: Finding['severity'];
}

export const said = (name: string, value: string, sentence: string): Said => ({
  title: `${name} (${value})`,
  sentence,
});
/** The measured value, told apart from the allowed one. */
export const measured = (v: Values): string => numbers.beside(v.measured, v.allowed, length);
export const turned = (v: Values): string => numbers.beside(v.measured, v.allowed, angle);
export const least = (v: Values): string => `at least ${length(v.allowed)}`;
export const most = (v: Values): string => `at most ${length(v.allowed)}`;

/** A share of 1, as a share of 100. */
export const percent = (ratio: number): string => `${numbers.short(ratio * 100, 0)} %`;
