import { createStore, type StoreApi } from 'zustand';
import type { Design } from '../../../shared/documents/design.ts';
import type { Rad } from '../../../shared/geometry/units.ts';
import type { Look } from '../../canvas/view.ts';
import { commit, redo, startAgain, undo } from '../history.ts';
import { chooseAll, copyChosen, flipChosen, moveChosen, nudge, rubChosen } from '../keys.ts';
import { type EditContext, type Editor, type EditRefusal, openEditor, type Tool } from '../model.ts';
import type { Proposal } from '../proposal.ts';

/** A team's drawing of one round: the editor, and what the page must know around it. */
export interface Session {
  readonly editor: Editor;
  /** Why the last edit was not made, until the next one. */
  readonly refusal: EditRefusal | null;
  /** Whether a finger is on the paper. */
  readonly fingerDown: boolean;
  /** A pen draws on this tablet, so that fingers only move the paper. */
  readonly pen: boolean;
  /** What of the sheet is looked at closely; null is all of it. */
  readonly look: Look | null;
  /** Nothing catches while this is held. */
  readonly free: boolean;
  /** What a gesture under way would come to, as far as words are said about it. */
  readonly proposal: Proposal | null;
}

export interface Done {
  readonly editor: Editor;
  readonly refusal: EditRefusal | null;
}

const saysTheSame = (a: Proposal | null, b: Proposal | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.snap?.why === b.snap?.why &&
    a.snap?.degrees === b.snap?.degrees &&
    a.caught === b.caught);

/** Everything that a page may do to a drawing. */
export class DrawingSession {
  readonly store: StoreApi<Session>;
  readonly context: EditContext;

  constructor(design: Design, context: EditContext, way: Pick<Editor, 'past' | 'future'>) {
    this.context = context;
    this.store = createStore<Session>(() => ({
      editor: { ...openEditor(design, context), ...way },
      refusal: null,
      fingerDown: false,
      pen: false,
      look: null,
      free: false,
      proposal: null,
    }));
  }

  get editor(): Editor {
    return this.store.getState().editor;
  }

  /** Takes over what an edit came to. */
  readonly take = ({ editor, refusal }: Done): void => this.store.setState({ editor, refusal });

  readonly finger = (fingerDown: boolean): void => this.#now({ fingerDown });
  readonly usesPen = (pen: boolean): void => this.#now({ pen });
  /** Only news are taken over: a finger asks at every move. */
  readonly propose = (proposal: Proposal | null): void => {
    const before = this.store.getState().proposal;
    if (!saysTheSame(before, proposal)) this.store.setState({ proposal });
  };
  readonly free = (free: boolean): void => this.#now({ free });
  readonly look = (look: Look | null): void => this.#now({ look });

  readonly choose = (change: Partial<Pick<Editor, 'tool' | 'word' | 'ink' | 'rub' | 'selection'>>): void =>
    this.take({ editor: { ...this.editor, ...change, pending: null }, refusal: null });

  readonly tool = (tool: Tool): void => {
    const keepsChoice = tool === 'mark' || tool === 'bands' || tool === 'move';
    this.choose({ tool, selection: keepsChoice ? this.editor.selection : null });
  };

  readonly undo = (): void => this.take({ editor: undo(this.editor), refusal: null });
  readonly redo = (): void => this.take({ editor: redo(this.editor), refusal: null });
  readonly again = (): void => this.take({ editor: startAgain(this.editor, this.context), refusal: null });
  readonly flip = (): void => this.take(flipChosen(this.editor));
  readonly rubChosen = (): void => this.take(rubChosen(this.editor, this.context));
  readonly turn = (turned: Rad): void => this.take(moveChosen(this.editor, this.context, { turned }));
  readonly mirror = (): void => this.take(moveChosen(this.editor, this.context, { mirrored: true }));
  readonly copy = (): void => this.take(copyChosen(this.editor, this.context));
  readonly chooseAll = (): void =>
    this.choose({ tool: 'move', selection: chooseAll(this.editor, this.context) });
  readonly nudge = (dx: number, dy: number): void => this.take(nudge(this.editor, this.context, dx, dy));

  /** Many events say the same again, and those who look at the session need not hear of that. */
  #now(change: Partial<Pick<Session, 'fingerDown' | 'pen' | 'look' | 'free'>>): void {
    const now = this.store.getState();
    const news = Object.entries(change).some(([key, value]) => now[key as keyof Session] !== value);
    if (news) this.store.setState(change);
  }

  /** Puts another drawing on the sheet, as a step like any other: a mended one, or an earlier entry. */
  readonly replace = (design: Design): void =>
    this.take({
      editor: commit(this.editor, { ok: true, design, selection: null }),
      refusal: null,
    });
}
