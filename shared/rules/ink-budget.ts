import { pointAt } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { lengthsTogether } from '../track/ink-length.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleContext, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';

/** The team draws no more line than the challenge allows. Its ring stands on the longest line. */
export const inkBudget: Rule = { id: 'R-ink-budget', check };

const ownLines = ({ track }: RuleContext): LaidLine[] => track.layout.lines.filter((line) => !line.given);
const inkIn = (context: RuleContext): Mm => lengthsTogether(ownLines(context).map(({ path }) => path.length));

/** Whether a drawing has more line than its challenge allows. */
export const isOverInk = (context: RuleContext): boolean =>
  context.limits.ink !== undefined && inkIn(context) > context.limits.ink + TOLERANCE.samePoint;

function check(view: RuleView): Draft[] {
  const { ink } = view.limits;
  const [first, ...others] = ownLines(view);
  if (ink === undefined || !first || !isOverInk(view)) return [];
  const { path } = others.reduce((best, line) => (line.path.length > best.path.length ? line : best), first);
  const place = stretchPlace(view, path, 0, path.length, pointAt(path, path.length / 2));
  const said = { severity: 'stops', ...lengths(inkIn(view), ink), remedy: 'use-less-line' } as const;
  return [{ finding: findingAt('R-ink-budget', place, said) }];
}
