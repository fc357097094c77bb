import { TOLERANCE } from '../geometry/tolerances.ts';
import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { isMark, ownMarks } from './marks.ts';
import { evenBands } from './mend-marks.ts';

/** Bands lie edge to edge: hardly any white between them, hardly any ink over ink. */
export const bandGap: Rule = {
  id: 'R-band-gap',
  check: (view) =>
    ownMarks(view)
      .filter(isMark)
      .flatMap((mark) => checkMark(view, mark)),
};

function checkMark(view: RuleView, mark: LaidMark): Draft[] {
  const { gap, overlap } = view.kit.rules.bands;
  const whites = mark.bands.slice(1).map((band, i) => band.from - mark.bands[i]!.to);
  const measures = [
    { variant: 'gap', measured: Math.max(...whites), allowed: gap },
    { variant: 'overlap', measured: -Math.min(...whites), allowed: overlap },
  ] as const;
  return measures
    .filter(({ measured, allowed }) => measured > allowed + TOLERANCE.samePoint)
    .map(({ variant, measured, allowed }) => ({
      finding: findingAt('R-band-gap', markPlace(view.track, mark), {
        variant,
        severity: 'may-stop',
        ...lengths(measured, allowed),
        remedy: 'even-bands',
      }),
      mends: () => evenBands(view, mark, { gap: (white) => white > gap || white < -overlap }),
    }));
}
