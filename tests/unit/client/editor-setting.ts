import { begin, type Touch } from '../../../client/editor/gesture.ts';
import { type EditContext, type Editor, openEditor, type Tool } from '../../../client/editor/model.ts';
import { finish, follow, start } from '../../../client/editor/propose.ts';
import type { Play } from '../../../shared/documents/challenge.ts';
import { type Design, type Drawing, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';

/** A made-up sheet of 297 × 210 mm with both berths and, where asked for, one given line. */
export const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 40, y: 160 }, heading: 0, r: 20 },
  finish: { name: { en: 'lighthouse' }, at: { x: 250, y: 60 }, heading: 0, r: 20 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

export const GIVEN: Drawing = {
  lines: [{ id: 'g1', width: 5, from: { x: 40, y: 160 }, pieces: [{ to: { x: 200, y: 160 }, bulge: 0 }] }],
  marks: [],
};

export const contextOf = (play: Play, given: Drawing = SHEET.given, mostMarks: number | null = null) =>
  ({ sheet: { ...SHEET, given }, kit: DEMO_KIT, play, mostMarks, begin: EMPTY_DESIGN }) satisfies EditContext;

export const DRAW: EditContext = contextOf('draw');

export const editorWith = (tool: Tool, design: Design = EMPTY_DESIGN, context = DRAW): Editor => ({
  ...openEditor(design, context),
  tool,
});

/** One finger: down at the first point, over the others, up at the last. Points as [x, y]. */
export function drag(
  editor: Editor,
  context: EditContext,
  points: readonly (readonly [number, number])[],
  reach = 8,
  more: Partial<Touch> = {},
) {
  const touches = points.map(([x, y]): Touch => ({ at: { x, y }, reach, pixel: 0.4, ...more }));
  const first = touches[0]!;
  let progress = start(begin(editor, context, first), editor, context, first);
  for (const touch of touches.slice(1)) progress = follow(progress, editor, context, [touch.at], reach);
  return finish(progress, editor, context, touches.at(-1)!);
}

export const tap = (editor: Editor, context: EditContext, at: readonly [number, number]) =>
  drag(editor, context, [at]);

/** A design with one line of straights through these points. */
export const lineThrough = (...points: readonly (readonly [number, number])[]): Design => {
  const [from, ...rest] = points.map(([x, y]) => ({ x, y }));
  return {
    version: 1,
    drawing: {
      lines: [{ id: 'l1', width: 5, from: from!, pieces: rest.map((to) => ({ to, bulge: 0 })) }],
      marks: [],
    },
  };
};
