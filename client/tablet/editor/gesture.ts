import { distance } from '../../../shared/geometry/exact-math.ts';
import { pathFoot, pathOf } from '../../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import { markMiddle } from './attach.ts';
import { hitAt, lineAt, markAt, nodeAtPoint } from './hit.ts';
import { lineIn, nodesOf } from './lines.ts';
import { anyLine, markIn } from './marks.ts';
import type { EditContext, Editor, EditRefusal, Selection } from './model.ts';
import { canRound } from './shape.ts';
import { type Snap, snap } from './snap.ts';

/** A finger, pen or mouse on the paper. */
export interface Touch {
  readonly at: PaperPoint;
  /** How near counts as "there", mm. */
  readonly reach: Mm;
}

interface Begun {
  readonly down: PaperPoint;
}

/** What a finger that went down is doing, until it goes up. */
export type Gesture =
  | (Begun & { readonly kind: 'straight'; readonly from: Snap; readonly second: boolean })
  | (Begun & { readonly kind: 'bend'; readonly line: string; readonly piece: number })
  | (Begun & { readonly kind: 'round'; readonly line: string; readonly node: number })
  | (Begun & { readonly kind: 'stroke' })
  | (Begun & { readonly kind: 'place'; readonly word: string })
  | (Begun & {
      readonly kind: 'slide';
      readonly mark: string;
      readonly grabbed: Mm;
      readonly chosenBefore: boolean;
    })
  | (Begun & { readonly kind: 'node'; readonly line: string; readonly node: number })
  | (Begun & { readonly kind: 'line'; readonly line: string })
  | (Begun & { readonly kind: 'rub' })
  /** Nothing was under the finger: it only lets go of what was chosen. */
  | (Begun & { readonly kind: 'nothing'; readonly refusal: EditRefusal | null });

const nothing = (down: PaperPoint, refusal: EditRefusal | null = null): Gesture => ({
  kind: 'nothing',
  down,
  refusal,
});
const GIVEN: EditRefusal = { code: 'given' };

/** What a finger begins that goes down at `touch`, with the editor's tool. */
export function begin(editor: Editor, context: EditContext, touch: Touch): Gesture {
  return BEGINNINGS[editor.tool](editor, context, touch);
}

type Beginning = (editor: Editor, context: EditContext, touch: Touch) => Gesture;

const beginStraight: Beginning = (editor, context, { at, reach }) => {
  if (editor.pending)
    return { kind: 'straight', down: at, from: { at: editor.pending, why: 'end' }, second: true };
  const from = snap(at, { design: editor.design, context, reach });
  return { kind: 'straight', down: at, from, second: false };
};

const beginCurve: Beginning = (editor, context, { at, reach }) => {
  const node = nodeAtPoint(at, editor.design, reach);
  const cornerLine = node && lineIn(editor.design, node.line);
  if (node && cornerLine && canRound(cornerLine, node.node))
    return { kind: 'round', down: at, line: node.line, node: node.node };
  const hit = lineAt(at, editor.design, context, reach);
  if (!hit) return nothing(at);
  return hit.given ? nothing(at, GIVEN) : { kind: 'bend', down: at, line: hit.line, piece: hit.piece };
};

const beginMark: Beginning = (editor, context, touch) => {
  const hit = markAt(touch.at, editor.design, context, touch.reach * 0.7);
  if (hit?.kind === 'mark')
    return hit.given ? nothing(touch.at, GIVEN) : beginSlide(editor, context, touch, hit.mark);
  const line = lineAt(touch.at, editor.design, context, touch.reach * 1.5);
  return line && editor.word !== null
    ? { kind: 'place', down: touch.at, word: editor.word }
    : nothing(touch.at);
};

function beginSlide(editor: Editor, context: EditContext, { at }: Touch, id: string): Gesture {
  const mark = markIn(editor.design, id);
  const line = mark && anyLine(editor.design, context, mark.line);
  if (!mark || !line) return nothing(at);
  const grabbed = markMiddle(mark) - pathFoot(pathOf(line), at).s;
  const chosenBefore = editor.selection?.kind === 'mark' && editor.selection.mark === id;
  return { kind: 'slide', down: at, mark: id, grabbed, chosenBefore };
}

const beginMove: Beginning = (editor, context, touch) => {
  const hit = hitAt(touch.at, editor.design, context, touch.reach);
  if (!hit) return nothing(touch.at);
  if (hit.kind === 'mark')
    return hit.given ? nothing(touch.at, GIVEN) : beginSlide(editor, context, touch, hit.mark);
  if (hit.kind === 'node') return { kind: 'node', down: touch.at, line: hit.line, node: hit.node };
  return hit.given ? nothing(touch.at, GIVEN) : { kind: 'line', down: touch.at, line: hit.line };
};

const BEGINNINGS: Readonly<Record<Editor['tool'], Beginning>> = {
  straight: beginStraight,
  curve: beginCurve,
  freehand: (_editor, _context, { at }) => ({ kind: 'stroke', down: at }),
  mark: beginMark,
  move: beginMove,
  rub: (_editor, _context, { at }) => ({ kind: 'rub', down: at }),
};

/** Whether the finger has gone far enough to mean a pull and not a tap. */
export const hasPulled = (gesture: Gesture, touch: Touch): boolean =>
  distance(gesture.down, touch.at) > touch.reach * 0.4;

/** What a gesture has under its hand, so that it can be shown as chosen. */
export function heldBy(gesture: Gesture): Selection | null {
  switch (gesture.kind) {
    case 'bend':
    case 'line':
      return { kind: 'line', line: gesture.line };
    case 'round':
    case 'node':
      return { kind: 'node', line: gesture.line, node: gesture.node };
    case 'slide':
      return { kind: 'mark', mark: gesture.mark };
    default:
      return null;
  }
}

/** The neighbours of a node, to whose angles it catches while it is moved. */
export function neighboursOf(editor: Editor, id: string, node: number): PaperPoint[] {
  const line = lineIn(editor.design, id);
  if (!line) return [];
  const nodes = nodesOf(line);
  const before = line.pieces[node - 1]?.bulge === 0 ? nodes[node - 1] : undefined;
  const after = line.pieces[node]?.bulge === 0 ? nodes[node + 1] : undefined;
  return [before, after].filter((p): p is PaperPoint => p !== undefined);
}
