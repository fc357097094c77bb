import { markMiddle } from './attach.ts';
import { attempt } from './history.ts';
import { lineIn, nodesOf } from './lines.ts';
import { flipMark, markIn, rubMark, slideMark } from './marks.ts';
import type { EditContext, Edited, Editor, EditRefusal, Selection } from './model.ts';
import { rubLine } from './sections.ts';
import { moveLine, moveNode } from './shape.ts';

interface Done {
  readonly editor: Editor;
  readonly refusal: EditRefusal | null;
}

/** Moves what is chosen by so many millimetres: a mark along its line, by whichever is not 0. */
export function nudge(editor: Editor, context: EditContext, dx: number, dy: number): Done {
  const { selection, design } = editor;
  if (!selection) return { editor, refusal: null };
  return attempt(editor, keeping(selection, nudged(selection, design, context, dx, dy)));
}

const keeping = (selection: Selection, edited: Edited): Edited =>
  edited.ok ? { ...edited, selection } : edited;

function nudged(
  selection: Selection,
  design: Editor['design'],
  context: EditContext,
  dx: number,
  dy: number,
): Edited {
  if (selection.kind === 'line') return moveLine(design, context, selection.line, { x: dx, y: dy });
  if (selection.kind === 'node') {
    const line = lineIn(design, selection.line);
    const place = line && nodesOf(line)[selection.node];
    if (!place) return { ok: false, refusal: { code: 'not-there' } };
    const to = { x: place.x + dx, y: place.y + dy };
    return moveNode(design, context, selection.line, selection.node, to);
  }
  const mark = markIn(design, selection.mark);
  if (!mark) return { ok: false, refusal: { code: 'not-there' } };
  return slideMark(design, context, mark.id, { line: mark.line, s: markMiddle(mark) + dx + dy });
}

/** Rubs out what is chosen; of a line with a chosen corner, the line. */
export function rubChosen(editor: Editor, context: EditContext): Done {
  const { selection, design } = editor;
  if (!selection) return { editor, refusal: null };
  return selection.kind === 'mark'
    ? attempt(editor, rubMark(design, selection.mark))
    : attempt(editor, rubLine(design, context, selection.line));
}

/** Turns the chosen mark round. */
export function flipChosen(editor: Editor): Done {
  const { selection, design } = editor;
  if (selection?.kind !== 'mark') return { editor, refusal: null };
  return attempt(editor, flipMark(design, selection.mark));
}
