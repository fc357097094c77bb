import type { Way } from '../documents/kit.ts';
import type { FindingVariant } from '../documents/verdict.ts';
import type { MissingArm } from '../track/travel.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, markPlace } from './findings.ts';
import { otherWord } from './mend-marks.ts';

/** A mark chooses only arms that the next junction has; a choice for another one counts as none. */
export const missingArm: Rule = {
  id: 'R-missing-arm',
  check: (view) =>
    view.travel.missing.filter(({ mark }) => !mark.mark.given).map((missing) => draftOf(view, missing)),
};

const VARIANTS: Readonly<Record<Way, FindingVariant>> = {
  left: 'no-left',
  straight: 'no-straight',
  right: 'no-right',
};

function draftOf(view: RuleView, missing: MissingArm): Draft {
  const finding = findingAt('R-missing-arm', markPlace(view.track, missing.mark.mark), {
    variant: VARIANTS[missing.way],
    severity: 'may-stop',
    remedy: 'choose-way',
  });
  const mends = () => wordsInstead(view, missing).flatMap((word) => otherWord(view, missing, word));
  return { finding, mends };
}

/** Where each way points, from the left. */
const ORDER: readonly Way[] = ['left', 'straight', 'right'];

/** Words of the chart for the ways that there are, the one nearest to what was wanted first. */
function wordsInstead({ kit }: RuleView, { way, exits }: MissingArm): string[] {
  const off = (other: Way): number => Math.abs(ORDER.indexOf(other) - ORDER.indexOf(way));
  const ways = [...new Set(exits.map((exit) => exit.way))].sort((a, b) => off(a) - off(b));
  return ways.flatMap((other) =>
    kit.chart
      .filter(({ action }) => action.kind === 'choose' && action.way === other)
      .map(({ word }) => word)
      .sort((a, b) => a.length - b.length),
  );
}
