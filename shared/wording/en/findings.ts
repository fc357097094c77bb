import type { Finding, RuleId } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

/** A title of two to four words with the measured value, and what it means and what is allowed. */
export interface Said {
  readonly title: string;
  readonly sentence: string;
}

const { length, angle } = numbers;

/** Measured and allowed values are lengths in mm, degrees, counts or ratios, as the rule's unit says. */
interface Values {
  readonly measured: number;
  readonly allowed: number;
  readonly variant: string | undefined;
  readonly severity: Finding['severity'];
}

const title = (text: string, value: string): string => `${text} (${value})`;
const least = (v: Values): string => `at least ${length(v.allowed)}`;
const most = (v: Values): string => `at most ${length(v.allowed)}`;

/** What a band's length is of the mean of its mark, as a share of 100. */
const percent = (ratio: number): string => `${numbers.short(ratio * 100, 0)} %`;

const CORNER = {
  stops: (v: Values) =>
    `The robot loses the line here. Open the corner to ${angle(v.allowed)} or more, or round it off.`,
  'may-stop': () =>
    'The robot may take it for a junction. It gets round, but a waiting take left or take right would be used up here.',
  untidy: (v: Values) => `The robot gets round. Corners of ${angle(v.allowed)} or more are easiest.`,
};

const SAID: { readonly [Rule in RuleId]: (values: Values) => Said } = {
  'R-line-width': (v) =>
    v.measured < v.allowed
      ? {
          title: title('Line too thin', length(v.measured)),
          sentence: `The robot reads marks badly on it: a line is ${least(v)} wide.`,
        }
      : {
          title: title('Line too thick', length(v.measured)),
          sentence: `The robot takes it for a junction: a line is ${most(v)} wide.`,
        },
  'R-corner': (v) => ({ title: title('Sharp corner', angle(v.measured)), sentence: CORNER[v.severity](v) }),
  'R-curve-radius': (v) => ({
    title: title('Tight curve', length(v.measured)),
    sentence: `The robot may run off the line: a curve has a radius of ${least(v)}.`,
  }),
  'R-clearance': (v) => ({
    title: title('Lines too close', length(v.measured)),
    sentence: `The robot sees both lines at once: keep them ${least(v)} apart, middle to middle.`,
  }),
  'R-margin': (v) => ({
    title: title('Close to the edge', length(v.measured)),
    sentence: `The robot may drive off the paper: keep ${least(v)} from the edge.`,
  }),
  'R-before-mark': (v) => ({
    title: title('Too little before', length(v.measured)),
    sentence: `The robot may overlook this mark: it needs ${least(v)} of plain straight line before it.`,
  }),
  'R-after-mark': (v) => ({
    title: title('Too little after', length(v.measured)),
    sentence: `The mark may act too late: it needs ${least(v)} of plain line after it.`,
  }),
  'R-band-count': (v) => ({
    title: title('Number of bands', String(v.measured)),
    sentence:
      v.measured < v.allowed
        ? `A mark has at least ${numbers.words(v.allowed)} bands.`
        : `A mark has at most ${numbers.words(v.allowed)} bands.`,
  }),
  'R-band-length': (v) =>
    v.measured < v.allowed
      ? {
          title: title('Band too short', length(v.measured)),
          sentence: `The robot may not see it: a band is ${least(v)} long.`,
        }
      : {
          title: title('Band too long', length(v.measured)),
          sentence: `The robot may take it for two: a band is ${most(v)} long.`,
        },
  'R-band-equality': (v) => ({
    title: title('Unequal bands', percent(v.measured)),
    sentence: `The robot may misread the mark: each band is within ${percent(v.allowed)} of the mark’s mean.`,
  }),
  'R-band-gap': (v) =>
    v.variant === 'overlap'
      ? {
          title: title('Bands overlap', length(v.measured)),
          sentence: `The inks mix and the robot sees neither: bands overlap by ${most(v)}.`,
        }
      : {
          title: title('White between bands', length(v.measured)),
          sentence: `The robot thinks that the mark has ended: leave ${most(v)} between bands.`,
        },
  'R-unknown-mark': () => ({
    title: 'Unknown mark',
    sentence: 'These bands are not in the chart: the robot drives on as if nothing were there.',
  }),
  'R-mark-on-curve': (v) => ({
    title: 'Mark on a curve',
    sentence: `The robot reads marks only on a straight line: ${length(v.measured)} of this one lie on a curve.`,
  }),
  'R-mark-on-junction': (v) => ({
    title: 'Mark at a junction',
    sentence: `The robot can’t read while it crosses a junction: move the mark ${least(v)} away.`,
  }),
  'R-start-on-line': (v) => ({
    title: 'No line at the start',
    sentence: `The robot sees no line from its berth: it starts ${length(v.measured)} from the nearest one, and ${most(v)} is near enough.`,
  }),
  'R-finish-reachable': () => ({
    title: 'No way to the finish',
    sentence: 'No line leads from the start to the finish berth: find where it breaks off.',
  }),
};

export const findings = {
  said: (finding: Finding): Said =>
    SAID[finding.rule]({
      measured: finding.measured ?? 0,
      allowed: finding.allowed ?? 0,
      variant: finding.variant,
      severity: finding.severity,
    }),
};
