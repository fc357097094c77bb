import type { Finding, FindingVariant, Remedy, RuleId } from '../../documents/verdict.ts';
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
  readonly variant: FindingVariant | undefined;
  readonly severity: Finding['severity'];
}

const said = (name: string, value: string, sentence: string): Said => ({
  title: `${name} (${value})`,
  sentence,
});
/** The measured value, told apart from the allowed one. */
const measured = (v: Values): string => numbers.beside(v.measured, v.allowed, length);
const turned = (v: Values): string => numbers.beside(v.measured, v.allowed, angle);
const least = (v: Values): string => `at least ${length(v.allowed)}`;
const most = (v: Values): string => `at most ${length(v.allowed)}`;

/** A share of 1, as a share of 100. */
const percent = (ratio: number): string => `${numbers.short(ratio * 100, 0)} %`;

/** What the plain line beside a mark comes up against. */
const BESIDE: Readonly<Partial<Record<FindingVariant, string>>> = {
  start: 'the robot’s berth',
  mark: 'the next mark',
  junction: 'the junction',
  corner: 'the corner',
  curve: 'the curve',
  end: 'the end of the line',
};
const barrier = (v: Values): string => BESIDE[v.variant ?? 'end'] ?? 'the next thing';

const CORNER: Readonly<Record<Finding['severity'], (v: Values) => string>> = {
  stops: (v) => `The robot loses the line here: corners of ${angle(v.allowed)} or more are easiest.`,
  'may-stop': (v) =>
    `The robot may take it for a junction. It gets round, but a waiting take left or take right would be used up here. Corners from ${angle(v.allowed)} on are safe.`,
  untidy: (v) => `The robot gets round: corners of ${angle(v.allowed)} or more are easiest.`,
};

function beforeMark(v: Values): Said {
  if (v.variant === 'mark') {
    return said(
      'Marks too close',
      measured(v),
      `The robot may overlook one: keep ${least(v)} of plain line between two marks.`,
    );
  }
  const from = v.variant === 'start' ? barrier(v) : `${barrier(v)} before it`;
  return said(
    'Too little before',
    measured(v),
    `The robot may overlook this mark: it needs ${least(v)} of straight line from ${from}.`,
  );
}

const OVER: Readonly<Partial<Record<FindingVariant, string>>> = {
  junction: 'Mark over a junction',
  corner: 'Mark over a corner',
  end: 'Mark past the end',
};

const SAID: { readonly [Rule in RuleId]: (values: Values) => Said } = {
  'R-line-width': (v) =>
    v.variant === 'thin'
      ? said('Line too thin', measured(v), `The robot reads marks badly on it: a line is ${least(v)} wide.`)
      : said(
          'Line too thick',
          measured(v),
          `The robot may take it for a junction: a line is ${most(v)} wide.`,
        ),
  'R-corner': (v) => said('Sharp corner', turned(v), CORNER[v.severity](v)),
  'R-curve-radius': (v) =>
    said('Tight curve', measured(v), `The robot may run off the line: a curve has a radius of ${least(v)}.`),
  'R-clearance': (v) =>
    said(
      'Lines too close',
      measured(v),
      `The robot may see both lines at once: keep them ${least(v)} apart, middle to middle.`,
    ),
  'R-margin': (v) => {
    if (v.variant === 'loose-end') {
      return said(
        'Fast to the edge',
        measured(v),
        `The robot is fast where the line ends: leave ${least(v)} to the edge of the paper.`,
      );
    }
    if (v.measured < 0) {
      return said(
        'Off the paper',
        length(-v.measured),
        `The line leaves the paper: keep ${least(v)} from its edge.`,
      );
    }
    return said(
      'Close to the edge',
      measured(v),
      `The robot’s wheel may leave the paper: keep ${least(v)} from its edge.`,
    );
  },
  'R-before-mark': beforeMark,
  'R-after-mark': (v) =>
    said(
      'Too little after',
      measured(v),
      `The mark may act too late: it needs ${least(v)} of line before ${barrier(v)}.`,
    ),
  'R-band-count': (v) =>
    v.variant === 'few'
      ? said(
          'Too few bands',
          String(v.measured),
          `The robot takes it for no mark: a mark has at least ${numbers.words(v.allowed)} bands.`,
        )
      : said(
          'Too many bands',
          String(v.measured),
          `The robot takes it for no mark: a mark has at most ${numbers.words(v.allowed)} bands.`,
        ),
  'R-band-length': (v) =>
    v.variant === 'short'
      ? said('Band too short', measured(v), `The robot may not see it: a band is ${least(v)} long.`)
      : said('Band too long', measured(v), `The robot may take it for two: a band is ${most(v)} long.`),
  'R-band-equality': (v) =>
    said(
      'Unequal bands',
      percent(v.measured),
      `The robot may misread the mark: its bands may differ by ${percent(v.allowed)} from their mean.`,
    ),
  'R-band-gap': (v) =>
    v.variant === 'overlap'
      ? said(
          'Bands overlap',
          measured(v),
          `Mixed inks look like a band of their own: bands overlap by ${most(v)}.`,
        )
      : said(
          'White between bands',
          measured(v),
          `The robot may think that the mark has ended: leave ${most(v)} of white.`,
        ),
  'R-unknown-mark': (v) =>
    v.variant === 'single-ink'
      ? said(
          'A single ink',
          measured(v),
          `It is no mark and no coloured line: a coloured line is ${least(v)} long.`,
        )
      : {
          title: 'Unknown mark',
          sentence: 'These bands are not in the chart: the robot drives on as if nothing were there.',
        },
  'R-mark-on-curve': (v) =>
    said(
      'Mark on a curve',
      measured(v),
      `The robot may misread it: a mark needs straight line, or a curve with a radius of ${least(v)}.`,
    ),
  'R-mark-on-junction': (v) => ({
    title: OVER[v.variant ?? 'junction'] ?? 'Mark over a junction',
    sentence: 'The robot can’t read it there: a mark needs line on both sides.',
  }),
  'R-start-on-line': (v) => {
    if (v.variant === 'across') {
      return said(
        'Line across the start',
        turned(v),
        `The robot may set off the wrong way: the line leads out within ${angle(v.allowed)} of where it faces.`,
      );
    }
    if (v.allowed === 0) {
      return {
        title: 'No line at start',
        sentence: 'The robot sees no line from its berth: begin the line under its sensors.',
      };
    }
    return said(
      'No line at start',
      measured(v),
      `The robot sees no line from its berth: the line passes within ${length(v.allowed)} of its sensors.`,
    );
  },
  'R-finish-reachable': (v) =>
    Number.isFinite(v.measured) && v.measured > v.allowed
      ? said(
          'Finish out of reach',
          measured(v),
          `The line has to come within ${length(v.allowed)} of the middle of the berth.`,
        )
      : { title: 'Finish out of reach', sentence: 'No line leads from the start into the finish berth.' },
};

const REMEDY: Readonly<Record<Remedy, string>> = {
  'blunt-corner': 'Make the corner wider, or round it off.',
  'widen-curve': 'Draw the curve wider.',
  'set-width': 'Draw the line in the usual width.',
  'move-apart': 'Move the lines apart.',
  'move-inside': 'Move the line away from the edge.',
  'slow-down': 'Slow down before the line ends.',
  'slide-mark': 'Slide the mark along the line.',
  'slide-or-slow-down': 'Slide the mark along the line, or slow down before it.',
  'add-bands': 'Add a band.',
  'remove-bands': 'Take a band away.',
  'even-bands': 'Make the bands equal and edge to edge.',
  'choose-mark': 'Choose a mark from the chart.',
  'lead-out': 'Draw the line out of the berth as the robot faces.',
  'draw-from-berth': 'Begin the line in the start berth.',
  'draw-to-berth': 'Draw the line on into the finish berth.',
};

export const findings = {
  said: (finding: Finding): Said =>
    SAID[finding.rule]({
      measured: finding.measured ?? 0,
      allowed: finding.allowed ?? 0,
      variant: finding.variant,
      severity: finding.severity,
    }),
  /** What to do about it, as one sentence; undefined where the rule knows nothing. */
  remedy: (finding: Finding): string | undefined => finding.remedy && REMEDY[finding.remedy.code],
};
