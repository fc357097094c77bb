import type { Challenge } from '../documents/challenge.ts';
import type { Drawing } from '../documents/design.ts';
import type { Kit } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import type { Finding, RuleId } from '../documents/verdict.ts';
import { type Start, startOn } from '../track/start.ts';
import type { Track } from '../track/track.ts';
import { type Travel, travelFrom } from '../track/travel.ts';

/** All that a check of a drawing needs: see `ruleContext`. */
export interface RuleContext {
  readonly sheet: Sheet;
  /** As it was drawn: findings name these lines, and remedies change these. */
  readonly drawing: Drawing;
  /** Of the canonical form, so that how something was drawn does not matter to any rule. */
  readonly track: Track;
  readonly kit: Kit;
  /** The berths that robots start from. */
  readonly starts: readonly BerthName[];
  /** How much a team may draw. */
  readonly limits: Limits;
}

export type Limits = Pick<Challenge['limits'], 'ink' | 'marks'>;

export type BerthName = 'start' | 'finish';

/** What every rule looks at: the context, and where robots can come in it. */
export interface RuleView extends RuleContext {
  readonly departures: readonly { readonly berth: Berth; readonly start: Start }[];
  readonly travel: Travel;
}

/** A finding, and the drawings that may mend it, best first; each still has to be checked. */
export interface Draft {
  readonly finding: Finding;
  readonly mends?: () => readonly Drawing[];
}

/** One drawing rule. It is silent at exactly the allowed value. */
export interface Rule {
  readonly id: RuleId;
  readonly check: (view: RuleView) => readonly Draft[];
}

export function viewOf(context: RuleContext): RuleView {
  const { sheet, track, kit } = context;
  const departures = context.starts.flatMap((name) => {
    const berth = name === 'start' ? sheet.start : sheet.finish;
    return berth ? [{ berth, start: startOn(track, berth, kit) }] : [];
  });
  const ready = departures.flatMap(({ start }) =>
    start.kind === 'on' ? [{ edge: start.edge, from: start.bar }] : [],
  );
  return { ...context, departures, travel: travelFrom(track, kit, ready) };
}
