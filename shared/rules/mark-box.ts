import { TOLERANCE } from '../geometry/tolerances.ts';
import { roomInBoxes } from '../track/mark-boxes.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { ownMarks } from './marks.ts';
import { markIntoBox } from './mend-marks.ts';

/** Where a sheet has boxes for marks, each mark of the team lies wholly inside one of them. */
export const markBox: Rule = { id: 'R-mark-box', check };

function check(view: RuleView): Draft[] {
  const { boxes } = view.sheet;
  if (!boxes) return [];
  return ownMarks(view).flatMap((mark) => {
    const { line } = view.track.lines.find((l) => l.line.id === mark.line)!;
    // A band that is painted over may end behind the last one.
    const end = Math.max(...mark.bands.map(({ to }) => to));
    const room = roomInBoxes(boxes, line, mark.from, end);
    if (room >= -TOLERANCE.step) return [];
    const finding = findingAt('R-mark-box', markPlace(view.track, mark), {
      severity: 'stops',
      ...lengths(-room, 0),
      remedy: 'into-box',
    });
    return [{ finding, mends: () => markIntoBox(view, mark) }];
  });
}
