import type { Edited, Editor, Selection } from './model.ts';
import type { BendCatch } from './shape.ts';
import type { Snap } from './snap.ts';

/** What would come of a gesture if the finger went up now. */
export interface Proposal {
  readonly edited: Edited;
  /** What the finger caught on, and the shape a bend caught on. */
  readonly snap: Snap | null;
  readonly caught: BendCatch;
}

export const unchanged = (editor: Editor, selection: Selection | null): Edited => ({
  ok: true,
  design: editor.design,
  selection,
});

export const plain = (edited: Edited, snap: Snap | null = null): Proposal => ({ edited, snap, caught: null });
