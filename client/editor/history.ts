import type { EditContext, Edited, Editor, EditRefusal, Selection } from './model.ts';
import { selectionOf } from './several.ts';

/** Takes over an edit as one step that can be taken back; what changes nothing makes no step. */
export function commit(editor: Editor, edited: Edited & { ok: true }): Editor {
  const { design, selection } = edited;
  if (sameDesign(design, editor.design)) return { ...editor, selection, pending: null };
  return {
    ...editor,
    design,
    selection,
    pending: null,
    past: { design: editor.design, before: editor.past },
    future: null,
  };
}

const sameDesign = (a: Editor['design'], b: Editor['design']): boolean =>
  a === b || JSON.stringify(a.drawing) === JSON.stringify(b.drawing);

/** Commits what was done, or says why it was not. */
export function attempt(editor: Editor, edited: Edited): { editor: Editor; refusal: EditRefusal | null } {
  return edited.ok ? { editor: commit(editor, edited), refusal: null } : { editor, refusal: edited.refusal };
}

export function undo(editor: Editor): Editor {
  if (!editor.past) return editor.pending ? { ...editor, pending: null } : editor;
  return {
    ...editor,
    design: editor.past.design,
    past: editor.past.before,
    future: { design: editor.design, before: editor.future },
    selection: kept(editor.selection, editor.past.design),
    pending: null,
  };
}

export function redo(editor: Editor): Editor {
  if (!editor.future) return editor;
  return {
    ...editor,
    design: editor.future.design,
    future: editor.future.before,
    past: { design: editor.design, before: editor.past },
    selection: kept(editor.selection, editor.future.design),
    pending: null,
  };
}

/** Back to what the challenge began with, as a step like any other. */
export const startAgain = (editor: Editor, context: EditContext): Editor =>
  commit(editor, { ok: true, design: context.begin, selection: null });

/** A selection stays only while what it names is there. */
export function kept(selection: Selection | null, design: Editor['design']): Selection | null {
  if (!selection) return null;
  if (selection.kind === 'mark')
    return design.drawing.marks.some((mark) => mark.id === selection.mark) ? selection : null;
  const { lines, marks } = design.drawing;
  if (selection.kind === 'several')
    return selectionOf({
      lines: selection.lines.filter((id) => lines.some((line) => line.id === id)),
      marks: selection.marks.filter((id) => marks.some((mark) => mark.id === id)),
    });
  const line = lines.find((candidate) => candidate.id === selection.line);
  if (!line) return null;
  return selection.kind === 'node' && selection.node > line.pieces.length ? null : selection;
}
