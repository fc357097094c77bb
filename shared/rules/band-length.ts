import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { isMark, ownMarks } from './marks.ts';
import { evenBands } from './mend-marks.ts';

/** Every band is long enough to be seen and short enough to be one. The worst band of a mark counts. */
export const bandLength: Rule = {
  id: 'R-band-length',
  check: (view) =>
    ownMarks(view)
      .filter(isMark)
      .flatMap((mark) => checkMark(view, mark)),
};

function checkMark(view: RuleView, mark: LaidMark): Draft[] {
  const { shortest, longest, tidyShortest, tidyLongest } = view.kit.rules.bands;
  const sizes = mark.bands.map((band) => band.to - band.from);
  const worst =
    outside(sizes, shortest, longest, 'may-stop') ?? outside(sizes, tidyShortest, tidyLongest, 'untidy');
  if (!worst) return [];
  const finding = findingAt('R-band-length', markPlace(view.track, mark), {
    variant: worst.measured < worst.allowed ? 'short' : 'long',
    severity: worst.severity,
    ...lengths(worst.measured, worst.allowed),
    remedy: 'even-bands',
  });
  const untidy = (length: Mm): boolean => length < tidyShortest || length > tidyLongest;
  return [{ finding, mends: () => evenBands(view, mark, { length: untidy }) }];
}

interface Worst {
  readonly measured: Mm;
  readonly allowed: Mm;
  readonly severity: 'may-stop' | 'untidy';
}

function outside(sizes: readonly Mm[], least: Mm, most: Mm, severity: Worst['severity']): Worst | undefined {
  const short = Math.min(...sizes);
  const long = Math.max(...sizes);
  const under = least - short;
  const over = long - most;
  if (Math.max(under, over) <= TOLERANCE.samePoint) return undefined;
  return under >= over
    ? { measured: short, allowed: least, severity }
    : { measured: long, allowed: most, severity };
}
