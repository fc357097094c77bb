import type { FindingVariant, RuleId } from '../../documents/verdict.ts';
import { least, measured, most, percent, type Said, said, type Values } from './finding-values.ts';
import { numbers } from './numbers.ts';

const times = (ratio: number, places: 0 | 1 | 2 = 1): string => `${numbers.short(ratio, places)} times`;

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

const NO_WAY: Readonly<Partial<Record<FindingVariant, string>>> = {
  'no-left': 'No way to the left',
  'no-straight': 'No way straight on',
  'no-right': 'No way to the right',
};

/** What is said of marks and their bands. */
export const MARKS = {
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
  'R-ink-darkness': (v) =>
    said(
      'Dark ink',
      numbers.beside(v.measured, v.allowed, times),
      `The robot may take it for line: an ink is at least ${times(v.allowed)} as light as the line.`,
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
  'R-missing-arm': (v) => ({
    title: NO_WAY[v.variant ?? 'no-straight'] ?? 'No such way',
    sentence: 'The next junction has no such way: the robot drives as if there were no mark.',
  }),
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
