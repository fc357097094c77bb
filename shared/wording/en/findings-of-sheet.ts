import type { Finding, RuleId } from '../../documents/verdict.ts';
import { least, measured, type Said, said, turned, type Values } from './finding-values.ts';
import { numbers } from './numbers.ts';

const { length, angle } = numbers;

const OVER_GAP: Readonly<Record<Finding['severity'], string>> = {
  stops: 'The robot doesn’t find the line beyond it.',
  'may-stop': 'The robot may cross it.',
  untidy: 'The robot crosses it.',
};

/** What is said of a drawing on its sheet. */
export const ON_SHEET = {
  'R-margin': (v) => {
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
  'R-loose-end': (v) => {
    if (v.variant === 'gap') {
      return said(
        'Gap in the line',
        measured(v),
        `There is a gap of ${length(v.measured)} in the line. ${OVER_GAP[v.severity]}`,
      );
    }
    if (v.variant === 'edge') {
      return said(
        'Fast to the edge',
        measured(v),
        `The robot is fast where the line ends: leave ${least(v)} to the edge of the paper.`,
      );
    }
    return { title: 'Loose end', sentence: 'A robot that takes this way stops where the line ends.' };
  },
  'R-keep-out': (v) =>
    v.variant === 'near'
      ? said(
          'Close to keep-out',
          measured(v),
          `The robot’s side would be inside: keep ${least(v)} between the line and what to keep out of.`,
        )
      : said(
          'Line in keep-out',
          length(v.measured),
          'The robot would drive in here: lead the line round what to keep out of.',
        ),
  'R-given-lines': (v) =>
    v.variant === 'gap'
      ? said(
          'Given gap closed',
          length(v.measured),
          'The gap belongs to the sheet: lines that are given stay as they are.',
        )
      : said(
          'Given line drawn over',
          length(v.measured),
          'Lines that are given stay as they are: join them, but don’t draw along them.',
        ),
  'R-ink-budget': (v) =>
    said('Too much line', measured(v), `This challenge allows ${length(v.allowed)} of drawn line.`),
  'R-mark-budget': (v) =>
    said(
      'Too many marks',
      String(v.measured),
      `This challenge allows ${numbers.counted(v.allowed, 'mark', 'marks')}.`,
    ),
  'R-mark-box': (v) =>
    said(
      'Mark outside the boxes',
      length(v.measured),
      `This mark reaches ${length(v.measured)} too far: here marks go wholly into a box.`,
    ),
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
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
