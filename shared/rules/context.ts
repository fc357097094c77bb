import type { Drawing } from '../documents/design.ts';
import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { Finding, RuleId } from '../documents/verdict.ts';
import type { Layout } from '../track/layout.ts';
import type { Track } from '../track/track.ts';

/** All that a drawing rule may look at. `layout` and `track` are those of `sheet` and `drawing`. */
export interface RuleContext {
  readonly sheet: Sheet;
  readonly drawing: Drawing;
  readonly layout: Layout;
  readonly track: Track;
  readonly kit: Kit;
  /** The berths that robots start from. */
  readonly starts: readonly ('start' | 'finish')[];
}

/** A finding, and how its mended drawing is made where one can be computed. */
export interface Draft {
  readonly finding: Finding;
  readonly mend?: () => Drawing | undefined;
}

/** One drawing rule. It is silent at exactly the allowed value. */
export interface Rule {
  readonly id: RuleId;
  readonly check: (context: RuleContext) => readonly Draft[];
}
