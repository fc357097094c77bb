import type { Finding, FindingVariant, RuleId } from '../../documents/verdict.ts';
import { least, measured, most, type Said, said, turned, type Values } from './finding-values.ts';
import { numbers } from './numbers.ts';

const { angle } = numbers;

const CORNER: Readonly<Record<Finding['severity'], (v: Values) => string>> = {
  stops: (v) => `The robot loses the line here. Open the corner to ${angle(v.allowed)} or more.`,
  'may-stop': (v) =>
    `The robot may take it for a junction. It gets round, but a waiting take left or take right would be used up here. Corners from ${angle(v.allowed)} on are safe.`,
  untidy: (v) =>
    `The robot gets round. It is easier when you open the corner to ${angle(v.allowed)} or more.`,
};

const ARMS: Readonly<Partial<Record<FindingVariant, string>>> = {
  junction: 'Junctions too close',
  corner: 'Corner beside junction',
};

/** What is said of lines, and of how they meet. */
export const LINES = {
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
  'R-junction-angle': (v) =>
    said(
      'Narrow junction',
      turned(v),
      `The robot ${v.severity === 'untidy' ? 'may mix these two ways up' : 'may see these two ways as one'}: ways leave a junction at least ${angle(v.allowed)} apart.`,
    ),
  'R-junction-arms': (v) => {
    const title = ARMS[v.variant ?? 'end'];
    return title
      ? said(
          title,
          measured(v),
          `The robot may take the two for one: leave ${least(v)} of line between them.`,
        )
      : said(
          'Short way',
          measured(v),
          `The robot may overlook it, or stop where it ends: a way from a junction is ${least(v)} long.`,
        );
  },
  'R-open-junction': (v) => ({
    title: 'Left to luck',
    sentence: `The robot chooses by itself so often that there are more than ${v.allowed} ways to drive. Decide this junction first.`,
  }),
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
