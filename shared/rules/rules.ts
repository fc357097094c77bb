import type { Drawing } from '../documents/design.ts';
import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { Finding } from '../documents/verdict.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { buildTrack } from '../track/graph.ts';
import { layOut } from '../track/layout.ts';
import { afterMark } from './after-mark.ts';
import { bandCount } from './band-count.ts';
import { bandEquality } from './band-equality.ts';
import { bandGap } from './band-gap.ts';
import { bandLength } from './band-length.ts';
import { beforeMark } from './before-mark.ts';
import { clearance } from './clearance.ts';
import {
  type BerthName,
  type Draft,
  type Limits,
  type Rule,
  type RuleContext,
  type RuleView,
  viewOf,
} from './context.ts';
import { corner } from './corner.ts';
import { curveRadius } from './curve-radius.ts';
import { keepsMarks } from './drawn.ts';
import { finishReachable } from './finish-reachable.ts';
import { givenLines } from './given-lines.ts';
import { inkBudget } from './ink-budget.ts';
import { inkDarkness } from './ink-darkness.ts';
import { junctionAngle } from './junction-angle.ts';
import { junctionArms } from './junction-arms.ts';
import { keepOut } from './keep-out.ts';
import { lineWidth } from './line-width.ts';
import { looseEnd } from './loose-end.ts';
import { margin } from './margin.ts';
import { markBox } from './mark-box.ts';
import { markBudget } from './mark-budget.ts';
import { markOnCurve } from './mark-on-curve.ts';
import { markOnJunction } from './mark-on-junction.ts';
import { missingArm } from './missing-arm.ts';
import { startOnLine } from './start-on-line.ts';
import { unknownMark } from './unknown-mark.ts';

export type { RuleContext } from './context.ts';

/** Every drawing rule, in the order in which findings are given. */
export const RULES: readonly Rule[] = [
  lineWidth,
  corner,
  curveRadius,
  clearance,
  margin,
  junctionAngle,
  junctionArms,
  beforeMark,
  afterMark,
  bandCount,
  bandLength,
  bandEquality,
  bandGap,
  inkDarkness,
  unknownMark,
  markOnCurve,
  markOnJunction,
  markBox,
  missingArm,
  keepOut,
  givenLines,
  inkBudget,
  markBudget,
  looseEnd,
  startOnLine,
  finishReachable,
];

/** What the rules look at, for a drawing on a sheet: its canonical form, laid out and built into a track. */
export function ruleContext(
  sheet: Sheet,
  drawing: Drawing,
  kit: Kit,
  starts: readonly BerthName[] = ['start'],
  limits: Limits = {},
): RuleContext {
  const layout = layOut(sheet, canonicalDrawing(drawing, sheet.given));
  return { sheet, drawing, track: buildTrack(layout, kit), kit, starts, limits };
}

/** The same for another drawing on the same sheet, whose lines mostly lie where they lay. */
function changedTo(context: RuleContext, drawing: Drawing): RuleContext {
  const { sheet, kit } = context;
  const layout = layOut(sheet, canonicalDrawing(drawing, sheet.given), context.track.layout);
  return { ...context, drawing, track: buildTrack(layout, kit, context.track.pairs) };
}

/**
 * A check tries no more mended drawings than this, and fewer where they are long: what is worse than
 * that has no quick remedy, and a draft is checked while somebody waits.
 */
const MOST_TRIES = 12;
const MOST_PIECES_TRIED = 500;

function triesFor(drawing: Drawing): number {
  const pieces = drawing.lines.reduce((sum, line) => sum + line.pieces.length, 0);
  return Math.min(MOST_TRIES, Math.max(1, Math.floor(MOST_PIECES_TRIED / Math.max(1, pieces))));
}

/**
 * All findings on a drawing, in the order of the rules, then of their ids. Severities are proposals
 * from the geometry alone. A remedy carries a design only where that design was checked: the finding is
 * gone, and no rule finds more than before.
 */
export function checkDrawing(context: RuleContext): Finding[] {
  const drafts = draftsOf(context);
  let tries = triesFor(context.drawing);
  return drafts.map((draft) => {
    const candidates = candidatesOf(draft, tries);
    tries -= candidates.length;
    const drawing = candidates.find((candidate) => isMended(context, drafts, draft.finding, candidate));
    const { finding } = draft;
    if (!drawing || !finding.remedy) return finding;
    return { ...finding, remedy: { ...finding.remedy, design: { version: 1, drawing } } };
  });
}

/** The drawing in which this finding is mended, as `checkDrawing` has it; null where none is known. */
export function mendedDrawing(context: RuleContext, id: Finding['id']): Drawing | null {
  const drafts = draftsOf(context);
  const draft = drafts.find(({ finding }) => finding.id === id);
  if (!draft) return null;
  const mends = (candidate: Drawing) => isMended(context, drafts, draft.finding, candidate);
  return candidatesOf(draft, triesFor(context.drawing)).find(mends) ?? null;
}

const candidatesOf = ({ mends }: Draft, tries: number): Drawing[] =>
  tries > 0 && mends ? mends().filter(keepsMarks).slice(0, tries) : [];

/** The same findings without mended designs, for those who only count or compare. */
export const plainFindings = (context: RuleContext): Finding[] =>
  draftsOf(context).map((draft) => draft.finding);

const draftsOf = (context: RuleContext): Draft[] => {
  const view = viewOf(context);
  return RULES.flatMap((rule) => draftsBy(rule, view));
};

function draftsBy(rule: Rule, view: RuleView): Draft[] {
  const byId = (a: Draft, b: Draft): number => (a.finding.id < b.finding.id ? -1 : 1);
  return withOwnIds([...rule.check(view)].sort(byId));
}

/** Two findings of one rule at one place (the paper's corner, say) are told apart by a number. */
function withOwnIds(drafts: readonly Draft[]): Draft[] {
  const seen = new Map<string, number>();
  return drafts.map((draft) => {
    const { id } = draft.finding;
    const times = (seen.get(id) ?? 0) + 1;
    seen.set(id, times);
    return times === 1 ? draft : { ...draft, finding: { ...draft.finding, id: `${id}~${times}` } };
  });
}

/** Whether the candidate has the finding no more, and no rule finds more in it than before. */
function isMended(
  context: RuleContext,
  before: readonly Draft[],
  finding: Finding,
  candidate: Drawing,
): boolean {
  const view = viewOf(changedTo(context, candidate));
  const allowed = (rule: Rule): number =>
    before.filter((draft) => draft.finding.rule === rule.id).length - (rule.id === finding.rule ? 1 : 0);
  // The finding's own rule first: most that fails fails there.
  const ordered = [...RULES].sort((a, b) => Number(b.id === finding.rule) - Number(a.id === finding.rule));
  return ordered.every((rule) => {
    const after = draftsBy(rule, view);
    return after.length <= allowed(rule) && after.every((draft) => draft.finding.id !== finding.id);
  });
}
