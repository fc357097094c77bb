import type { Finding, Remedy, RuleId } from '../../documents/verdict.ts';
import type { Said, Values } from './finding-values.ts';
import { LINES } from './findings-of-lines.ts';
import { MARKS } from './findings-of-marks.ts';
import { ON_SHEET } from './findings-of-sheet.ts';

export type { Said } from './finding-values.ts';

const SAID: { readonly [Rule in RuleId]: (values: Values) => Said } = { ...LINES, ...MARKS, ...ON_SHEET };

const REMEDY: Readonly<Record<Remedy, string>> = {
  'blunt-corner': 'Make the corner wider, or round it off.',
  'widen-curve': 'Draw the curve wider.',
  'set-width': 'Draw the line in the usual width.',
  'move-apart': 'Move the lines apart.',
  'square-junction': 'Let the lines meet more squarely.',
  'lengthen-arm': 'Make this way longer, or leave it out.',
  'make-room': 'Leave more line between the two.',
  'move-inside': 'Move the line away from the edge.',
  'slow-down': 'Slow down before the line ends.',
  'close-gap': 'Close the gap.',
  'lead-on': 'Lead the line on, or leave this bit out.',
  'go-round': 'Lead the line round it.',
  'leave-given': 'Take this line away, or draw it beside.',
  'use-less-line': 'Make the way shorter.',
  'remove-mark': 'Take a mark away.',
  'slide-mark': 'Slide the mark along the line.',
  'slide-or-slow-down': 'Slide the mark along the line, or slow down before it.',
  'into-box': 'Move the mark into a box.',
  'add-bands': 'Add a band.',
  'remove-bands': 'Take a band away.',
  'even-bands': 'Make the bands equal and edge to edge.',
  'lighter-ink': 'Choose a mark with lighter inks.',
  'choose-mark': 'Choose a mark from the chart.',
  'choose-way': 'Choose a mark for a way that there is.',
  'decide-junction': 'Draw a mark before it that says which way to take.',
  'lead-out': 'Draw the line out of the berth as the robot faces.',
  'draw-from-berth': 'Begin the line in the start berth.',
  'draw-to-berth': 'Draw the line on into the finish berth.',
};

export const findings = {
  said: (finding: Omit<Finding, 'id' | 'place' | 'remedy'>): Said =>
    SAID[finding.rule]({
      measured: finding.measured ?? 0,
      allowed: finding.allowed ?? 0,
      variant: finding.variant,
      severity: finding.severity,
    }),
  /** What to do about it, as one sentence; undefined where the rule knows nothing. */
  remedy: (finding: Finding): string | undefined => finding.remedy && REMEDY[finding.remedy.code],
};
