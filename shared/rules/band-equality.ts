import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, markPlace } from './findings.ts';
import { isMark, ownMarks } from './marks.ts';
import { evenBands } from './mend-marks.ts';

/** The bands of a mark are alike: each within a share of their mean length. */
export const bandEquality: Rule = {
  id: 'R-band-equality',
  check: (view) =>
    ownMarks(view)
      .filter(isMark)
      .flatMap((mark) => checkMark(view, mark)),
};

function checkMark(view: RuleView, mark: LaidMark): Draft[] {
  const allowed = view.kit.rules.bands.equalWithin;
  const sizes = mark.bands.map((band) => band.to - band.from);
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  const off = Math.max(...sizes.map((size) => Math.abs(size - mean)));
  if (off <= allowed * mean + TOLERANCE.samePoint) return [];
  const finding = findingAt('R-band-equality', markPlace(view.track, mark), {
    severity: 'may-stop',
    measured: off / mean,
    allowed,
    unit: 'ratio',
    remedy: 'even-bands',
  });
  const unlike = (size: Mm): boolean => Math.abs(size - mean) > allowed * mean;
  return [{ finding, mends: () => evenBands(view, mark, { length: unlike }) }];
}
