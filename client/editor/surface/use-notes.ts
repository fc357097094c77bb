import { useMemo } from 'react';
import type { Action } from '../../../shared/documents/kit.ts';
import type { ScreenPoint } from '../../../shared/geometry/units.ts';
import type { Layout } from '../../../shared/track/layout.ts';
import { paintNotes } from '../../canvas/paint-notes.ts';
import type { Painter } from '../../canvas/painter.ts';
import { readingNotes } from '../../canvas/reading-notes.ts';
import type { View } from '../../canvas/view.ts';
import { useWords } from '../../parts/use-words.ts';
import type { Editor } from '../model.ts';
import type { DrawingSession } from './session.ts';

export interface NotesOptions {
  readonly session: DrawingSession;
  readonly editor: Editor;
  readonly fingerDown: boolean;
  readonly layout: Layout;
  readonly view: View | null;
  readonly clear: readonly ScreenPoint[];
}

/** Of the words beside marks, CSS pixels. */
const SIZE = 16;

/**
 * What marks tell those who come from either side, beside each of them. Put away while a finger may be
 * moving marks, and where only new lines are drawn left standing.
 */
export function useNotes({ session, editor, fingerDown, layout, view, clear }: NotesOptions): Painter | null {
  const { actions } = useWords();
  const { kit } = session.context;
  const draws = editor.tool === 'straight' || editor.tool === 'freehand';
  const away = fingerDown && !draws;
  const chosen = editor.selection?.kind === 'mark' ? editor.selection.mark : null;
  return useMemo(() => {
    if (!view || away) return null;
    const nameOf = (action: Action | undefined) => (action ? actions.name(action) : '?');
    const all = readingNotes({ layout, kit, view, clear, nameOf, size: SIZE, chosen });
    return paintNotes(all, view, SIZE);
  }, [away, layout, kit, view, clear, actions, chosen]);
}
