import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Rule } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { isMark, ownMarks, radiusUnder } from './marks.ts';
import { slidMark } from './mend-marks.ts';

/** A mark stands on line that counts as straight. */
export const markOnCurve: Rule = {
  id: 'R-mark-on-curve',
  check: (view) => {
    const allowed = view.kit.rules.straightFrom;
    return ownMarks(view)
      .filter(isMark)
      .map((mark) => ({ mark, radius: radiusUnder(view.track, mark) }))
      .filter(({ radius }) => radius < allowed - TOLERANCE.step)
      .map(({ mark, radius }) => ({
        finding: findingAt('R-mark-on-curve', markPlace(view.track, mark), {
          severity: 'may-stop',
          ...lengths(radius, allowed),
          remedy: 'slide-mark',
        }),
        mends: () => slidMark(view, mark),
      }));
  },
};
