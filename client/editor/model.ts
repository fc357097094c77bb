import type { Play } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';

export const TOOLS = ['straight', 'curve', 'freehand', 'mark', 'bands', 'move', 'rub'] as const;
export type Tool = (typeof TOOLS)[number];

/** What a challenge lets a team do; the same for the whole of its building phase. */
export interface EditContext {
  readonly sheet: Sheet;
  readonly kit: Kit;
  readonly play: Play;
  /** The most marks of one's own, or null without a limit. */
  readonly mostMarks: number | null;
  /** What a draft begins as, and what "start again" leads back to. */
  readonly begin: Design;
}

/** `node` is an end or corner of a line: 0 is the line's beginning, n the end of its nth piece. */
export type Selection =
  | { readonly kind: 'line'; readonly line: string }
  | { readonly kind: 'node'; readonly line: string; readonly node: number }
  | { readonly kind: 'mark'; readonly mark: string }
  | { readonly kind: 'several'; readonly lines: readonly string[]; readonly marks: readonly string[] };

/** One step of the way back. A list without a limit that shares everything with the next one. */
export interface Step {
  readonly design: Design;
  readonly before: Step | null;
}

export interface Editor {
  readonly design: Design;
  readonly past: Step | null;
  readonly future: Step | null;
  readonly tool: Tool;
  /** The word in the tray that a tap on a line places. */
  readonly word: string | null;
  /** The ink that bands are painted with; null takes bands away. */
  readonly ink: string | null;
  /** Whether rubbing out takes a piece between corners, or the whole line. */
  readonly rub: 'piece' | 'line';
  readonly selection: Selection | null;
  /** Where a straight was begun with a first tap. */
  readonly pending: PaperPoint | null;
}

/** Why an edit was not made. The sentence is the wording's. */
export type EditRefusal =
  | { readonly code: 'only-marks' }
  | { readonly code: 'given' }
  | { readonly code: 'no-marks-left'; readonly most: number }
  | { readonly code: 'too-short' }
  | { readonly code: 'line-too-short-for-mark' }
  | { readonly code: 'too-many-bands' }
  | { readonly code: 'drawing-full' }
  | { readonly code: 'not-there' };

export type Edited =
  | { readonly ok: true; readonly design: Design; readonly selection: Selection | null }
  | { readonly ok: false; readonly refusal: EditRefusal };

export const refused = (code: Exclude<EditRefusal['code'], 'no-marks-left'>): Edited => ({
  ok: false,
  refusal: { code },
});

/** A fresh editor on a design; with marks as the only tool where lines are given. */
export const openEditor = (design: Design, context: EditContext): Editor => ({
  design,
  past: null,
  future: null,
  tool: context.play === 'draw' ? 'straight' : context.play === 'fill-in' ? 'mark' : 'move',
  word: context.kit.chart[0]?.word ?? null,
  ink: context.kit.inks[0]?.id ?? null,
  rub: 'piece',
  selection: null,
  pending: null,
});

/** Whether lines are the team's to draw. */
export const drawsLines = (play: Play): boolean => play === 'draw' || play === 'mend';

/** The tools of a way to play: where lines are given, only marks are the team's; or nothing is. */
export function toolsOf(play: Play): readonly Tool[] {
  if (play === 'predict') return [];
  return drawsLines(play)
    ? TOOLS
    : TOOLS.filter((tool) => tool === 'mark' || tool === 'bands' || tool === 'move' || tool === 'rub');
}
