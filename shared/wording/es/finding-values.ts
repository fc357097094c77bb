import type { Said, Values } from '../en/finding-values.ts';
import { numbers } from './numbers.ts';

const { length, angle } = numbers;

export const said = (name: string, value: string, sentence: string): Said => ({
  title: `${name} (${value})`,
  sentence,
});
/** The measured value, told apart from the allowed one. */
export const measured = (v: Values): string => numbers.beside(v.measured, v.allowed, length);
export const turned = (v: Values): string => numbers.beside(v.measured, v.allowed, angle);
export const least = (v: Values): string => `al menos ${length(v.allowed)}`;
export const most = (v: Values): string => `como mucho ${length(v.allowed)}`;

/** A share of 1, as a share of 100. */
export const percent = (ratio: number): string => `${numbers.short(ratio * 100, 0)} %`;
