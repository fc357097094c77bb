import { markMiddle } from './attach.ts';
import { attempt } from './history.ts';
import { nodeOf } from './lines.ts';
import { flipMark, markIn, rubMark, slideMark } from './marks.ts';
import {
  drawsLines,
  type EditContext,
  type Edited,
  type Editor,
  type EditRefusal,
  type Selection,
} from './model.ts';
import { rubLine } from './sections.ts';
import {
  boundsOf,
  copySeveral,
  type Motion,
  middleOfBox,
  moveSeveral,
  rubSeveral,
  selectionOf,
  severalOf,
} from './several.ts';
import { moveNode } from './shape.ts';

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
  const several = severalOf(selection);
  if (several) {
    const by = { x: dx, y: dy };
    return moveSeveral(design, context, several, { about: by, by });
  }
  if (selection.kind === 'node') {
    const place = nodeOf(design, selection);
    if (!place) return { ok: false, refusal: { code: 'not-there' } };
    const to = { x: place.x + dx, y: place.y + dy };
    return moveNode(design, context, selection.line, selection.node, to);
  }
  const mark = selection.kind === 'mark' ? markIn(design, selection.mark) : undefined;
  if (!mark) return { ok: false, refusal: { code: 'not-there' } };
  return slideMark(design, context, mark.id, { line: mark.line, s: markMiddle(mark) + dx + dy });
}

/** Rubs out what is chosen; of a line with a chosen corner, the line. */
export function rubChosen(editor: Editor, context: EditContext): Done {
  const { selection, design } = editor;
  if (!selection) return { editor, refusal: null };
  const several = severalOf(selection);
  if (several) return attempt(editor, rubSeveral(design, several));
  if (selection.kind === 'node') return attempt(editor, rubLine(design, context, selection.line));
  return selection.kind === 'mark'
    ? attempt(editor, rubMark(design, selection.mark))
    : { editor, refusal: null };
}

/** Turns the chosen mark round. */
export function flipChosen(editor: Editor): Done {
  const { selection, design } = editor;
  if (selection?.kind !== 'mark') return { editor, refusal: null };
  return attempt(editor, flipMark(design, selection.mark));
}

/** Turns or mirrors all that is chosen about its middle. */
export function moveChosen(editor: Editor, context: EditContext, how: Omit<Motion, 'about'>): Done {
  const several = severalOf(editor.selection);
  const box = several && boundsOf(several, editor.design);
  if (!several || !box) return { editor, refusal: null };
  return attempt(editor, moveSeveral(editor.design, context, several, { ...how, about: middleOfBox(box) }));
}

/** Copies all that is chosen; the copy is chosen then. */
export function copyChosen(editor: Editor, context: EditContext): Done {
  const several = severalOf(editor.selection);
  return several ? attempt(editor, copySeveral(editor.design, context, several)) : { editor, refusal: null };
}

/** Chooses all that is the team's own. */
export function chooseAll({ design }: Editor, context: EditContext): Selection | null {
  const { lines, marks } = design.drawing;
  const own = drawsLines(context.play) ? lines.map((line) => line.id) : [];
  const loose = marks.filter((mark) => !own.includes(mark.line)).map((mark) => mark.id);
  return selectionOf({ lines: own, marks: loose });
}
