import { actionOf } from '../documents/kit.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { type Meeting, meetings, nodeUnder } from './marks.ts';
import { slidMark } from './mend-marks.ts';
import { isShort, metMarks, type Need, needsAfter, shortfall } from './needs.ts';

/**
 * Plain line after a mark: for the reading, and until its action must be ready at the fastest pace that
 * a run can have there. Room between two marks is the business of `R-before-mark`. Each mark has at
 * most one such finding: the one that lacks most.
 */
export const afterMark: Rule = { id: 'R-after-mark', check };

interface Lack {
  readonly meeting: Meeting;
  readonly need: Need;
}

function check(view: RuleView): Draft[] {
  const worst = new Map<string, Lack>();
  for (const meeting of metMarks(meetings(view))) {
    const { mark } = meeting.mark;
    if (mark.given || nodeUnder(view.track, mark)) continue;
    for (const need of needsAfter(view, meeting).filter(isShort)) {
      const before = worst.get(mark.id);
      if (!before || shortfall(need) > shortfall(before.need)) worst.set(mark.id, { meeting, need });
    }
  }
  return [...worst.values()].map((lack) => draftOf(view, lack));
}

function draftOf(view: RuleView, { meeting, need }: Lack): Draft {
  const { mark, word } = meeting.mark;
  const late = need.allowed !== view.kit.rules.afterMark && meeting.pace > 0;
  const choice = actionOf(view.kit, word)?.kind === 'choose' && need.until === 'junction';
  const finding = findingAt('R-after-mark', markPlace(view.track, mark), {
    variant: need.until,
    severity: choice ? 'may-stop' : 'untidy',
    ...lengths(need.measured, need.allowed),
    remedy: late ? 'slide-or-slow-down' : 'slide-mark',
  });
  return { finding, mends: () => slidMark(view, mark) };
}
