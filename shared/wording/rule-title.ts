import type { Finding } from '../documents/verdict.ts';
import type { Wording } from './wording.ts';

/** A title without its measure in brackets: several findings of one rule have no one measure. */
const plainTitle = (title: string): string => title.replace(/ \([^)]*\)$/, '');

/** What a rule says, in a few words and without a measure. */
export const titleOfRule = (found: Pick<Finding, 'rule' | 'variant'>, { findings }: Wording): string =>
  plainTitle(findings.said({ severity: 'may-stop', ...found }).title);

/** How far the worst finding of a rule is off, as its title has it in brackets, and what it is about. */
export function worstOfRule(worst: Finding, { findings, desk }: Wording): string {
  const { title, sentence } = findings.said(worst);
  const measure = / \(([^)]*)\)$/.exec(title)?.[1];
  return measure === undefined ? sentence : desk.picture.worst(measure, sentence);
}
