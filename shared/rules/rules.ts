import type { Drawing } from '../documents/design.ts';
import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { Finding } from '../documents/verdict.ts';
import { buildTrack } from '../track/graph.ts';
import { layOut } from '../track/layout.ts';
import type { Rule, RuleContext } from './context.ts';

export type { RuleContext } from './context.ts';

/** Every drawing rule, in the order in which findings are given. */
export const RULES: readonly Rule[] = [];

/** What the rules look at, for a drawing on a sheet. */
export function ruleContext(
  sheet: Sheet,
  drawing: Drawing,
  kit: Kit,
  starts: readonly ('start' | 'finish')[] = ['start'],
): RuleContext {
  const layout = layOut(sheet, drawing);
  return { sheet, drawing, layout, track: buildTrack(layout, kit), kit, starts };
}

/** All findings on a drawing. Severities are proposals from the geometry alone. */
export function checkDrawing(context: RuleContext): Finding[] {
  return RULES.flatMap((rule) => rule.check(context).map((draft) => draft.finding));
}
