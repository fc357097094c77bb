import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { isMark, nodeUnder, ownMarks } from './marks.ts';
import { slidMark } from './mend-marks.ts';

/** No mark lies over a junction, a corner or the end of its line. */
export const markOnJunction: Rule = {
  id: 'R-mark-on-junction',
  check: (view) =>
    ownMarks(view)
      .filter(isMark)
      .flatMap((mark) => checkMark(view, mark)),
};

function checkMark(view: RuleView, mark: LaidMark): Draft[] {
  const variant = nodeUnder(view.track, mark);
  if (!variant) return [];
  const finding = findingAt('R-mark-on-junction', markPlace(view.track, mark), {
    variant,
    severity: 'may-stop',
    ...lengths(0, view.kit.rules.beforeMark),
    remedy: 'slide-mark',
  });
  return [{ finding, mends: () => slidMark(view, mark) }];
}
