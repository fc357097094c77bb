import { type Ink, inkLighterOf } from '../documents/kit.ts';
import { timesAsLight } from '../kit/light.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, markPlace } from './findings.ts';
import { isMark, ownMarks } from './marks.ts';

/** The inks of a mark are well lighter than the line. Each dark ink is said once, at its first mark. */
export const inkDarkness: Rule = {
  id: 'R-ink-darkness',
  check: (view) => view.kit.inks.flatMap((ink) => checkInk(view, ink)),
};

function checkInk(view: RuleView, ink: Ink): Draft[] {
  const { kit, track } = view;
  const allowed = inkLighterOf(kit.rules);
  const lighter = timesAsLight(ink.color, kit.line.color);
  if (lighter >= allowed) return [];
  const mark = ownMarks(view).find((m) => isMark(m) && m.bands.some((band) => band.ink === ink.id));
  if (!mark) return [];
  const finding = findingAt('R-ink-darkness', markPlace(track, mark), {
    severity: 'may-stop',
    measured: lighter,
    allowed,
    unit: 'ratio',
    remedy: 'lighter-ink',
  });
  return [{ finding }];
}
