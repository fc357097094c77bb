import type { Draft, Rule, RuleContext, RuleView } from './context.ts';
import { findingAt, markPlace } from './findings.ts';
import { ownMarks } from './marks.ts';

/** The team draws no more marks than the challenge allows. Its ring stands on the last one. */
export const markBudget: Rule = { id: 'R-mark-budget', check };

/** Whether a drawing has more marks than its challenge allows. */
export const isOverMarks = ({ limits, drawing }: RuleContext): boolean =>
  limits.marks !== undefined && drawing.marks.length > limits.marks;

function check(view: RuleView): Draft[] {
  const { marks: allowed } = view.limits;
  const last = ownMarks(view).at(-1);
  if (allowed === undefined || !last || !isOverMarks(view)) return [];
  const finding = findingAt('R-mark-budget', markPlace(view.track, last), {
    severity: 'stops',
    measured: view.drawing.marks.length,
    allowed,
    unit: 'count',
    remedy: 'remove-mark',
  });
  return [{ finding }];
}
