import type { Finding, RuleId } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

/** A title of two to four words, and one sentence with the measured and the allowed value. */
export interface Said {
  readonly title: string;
  readonly sentence: string;
}

const TITLES: Readonly<Record<RuleId, string>> = {
  'R-line-width': 'Line width',
  'R-corner': 'Sharp corner',
  'R-curve-radius': 'Tight curve',
  'R-clearance': 'Lines too close',
  'R-margin': 'Close to the edge',
  'R-before-mark': 'No room before',
  'R-after-mark': 'No room after',
  'R-band-count': 'Number of bands',
  'R-band-length': 'Band length',
  'R-band-equality': 'Unequal bands',
  'R-band-gap': 'Gap between bands',
  'R-unknown-mark': 'Unknown mark',
  'R-mark-on-curve': 'Mark on a curve',
  'R-mark-on-junction': 'Mark on a junction',
  'R-start-on-line': 'No line at start',
  'R-finish-reachable': 'Finish not reached',
};

export const findings = {
  said: (finding: Finding): Said => ({
    title: TITLES[finding.rule],
    sentence: `${TITLES[finding.rule]}: ${numbers.short(finding.measured ?? 0, 1)}.`,
  }),
};
