import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { type Meeting, meetings, nodeUnder } from './marks.ts';
import { slidMark } from './mend-marks.ts';
import { isShort, metMarks, type Need, needBefore, shortfall } from './needs.ts';

/**
 * Plain straight line before a mark, from every side from which a robot can come to it, and between
 * two marks. Each mark has at most one such finding: the one that lacks most.
 */
export const beforeMark: Rule = { id: 'R-before-mark', check };

interface Lack {
  readonly mark: LaidMark;
  readonly need: Need;
}

function check(view: RuleView): Draft[] {
  const worst = new Map<string, Lack>();
  for (const meeting of metMarks(meetings(view))) {
    const lack = lackOf(view, meeting);
    if (!lack) continue;
    const key = lack.need.other ? pairKey(meeting.mark.mark, lack.need.other.mark) : lack.mark.id;
    const before = worst.get(key);
    if (!before || shortfall(lack.need) > shortfall(before.need)) worst.set(key, lack);
  }
  return [...worst.values()].map(({ mark, need }) => draftOf(view, mark, need));
}

const pairKey = (a: LaidMark, b: LaidMark): string => [a.id, b.id].sort().join(' ');

/** Who lacks room here: the mark that is met, or, where it is given, the team's mark before it. */
function lackOf(view: RuleView, meeting: Meeting): Lack | undefined {
  const { mark } = meeting.mark;
  if (nodeUnder(view.track, mark)) return undefined;
  const need = needBefore(view, meeting);
  if (!isShort(need)) return undefined;
  const own = [mark, ...(need.other ? [need.other.mark] : [])].filter((m) => !m.given);
  const blamed = own.length === 2 ? own.reduce((a, b) => (a.id > b.id ? a : b)) : own[0];
  return blamed && { mark: blamed, need };
}

function draftOf(view: RuleView, mark: LaidMark, need: Need): Draft {
  const finding = findingAt('R-before-mark', markPlace(view.track, mark), {
    variant: need.until,
    severity: 'may-stop',
    ...lengths(need.measured, need.allowed),
    remedy: 'slide-mark',
  });
  return { finding, mends: () => slidMark(view, mark) };
}
