import { distance } from '../../shared/geometry/exact-math.ts';
import { pathFoot } from '../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { markMiddle } from './attach.ts';
import { bandHandles } from './bands.ts';
import { type Hit, hitAt, lineAt, markAt, nodeAtPoint } from './hit.ts';
import { lineIn, nodesOf } from './lines.ts';
import { markOnLine } from './marks.ts';
import type { EditContext, Editor, EditRefusal, Selection } from './model.ts';
import { linePath } from './paths.ts';
import { type Several, selectionOf, severalOf, turnHandle } from './several.ts';
import { canRound } from './shape.ts';
import { type Snap, snap } from './snap.ts';

/** A finger, pen or mouse on the paper. */
export interface Touch {
  readonly at: PaperPoint;
  /** How near counts as "there", mm. */
  readonly reach: Mm;
  /** A CSS pixel on the paper, mm: handles keep their size on the screen. */
  readonly pixel: Mm;
  /** Nothing catches, as the hand wishes. */
  readonly free?: boolean;
  /** It hides what is under it, as a fingertip does. */
  readonly hides?: boolean;
  /** What is touched is added to what is chosen. */
  readonly adds?: boolean;
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
  | (Begun & { readonly kind: 'bands'; readonly line: string; readonly from: Mm })
  | (Begun & { readonly kind: 'band-end'; readonly mark: string; readonly end: number })
  | (Begun & { readonly kind: 'box' })
  /** A tap adds `hit` to what is chosen or takes it away; a pull moves all that is chosen. */
  | (Begun & { readonly kind: 'several'; readonly several: Several; readonly hit: Hit | null })
  | (Begun & { readonly kind: 'turn'; readonly several: Several; readonly about: PaperPoint })
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

const beginStraight: Beginning = (editor, context, { at, reach, free }) => {
  if (editor.pending)
    return { kind: 'straight', down: at, from: { at: editor.pending, why: 'end' }, second: true };
  const from = snap(at, { design: editor.design, context, reach, free });
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
  const end = bandEndAt(editor, context, touch);
  if (end) return end;
  const hit = markAt(touch.at, editor.design, context, touch.reach * 0.7);
  if (hit?.kind === 'mark')
    return hit.given ? nothing(touch.at, GIVEN) : beginSlide(editor, context, touch, hit.mark);
  const line = lineAt(touch.at, editor.design, context, touch.reach * 1.5);
  return line && editor.word !== null
    ? { kind: 'place', down: touch.at, word: editor.word }
    : nothing(touch.at);
};

function beginSlide(editor: Editor, context: EditContext, { at }: Touch, id: string): Gesture {
  const found = markOnLine(editor.design, context, id);
  if (!found) return nothing(at);
  const { mark, line } = found;
  const grabbed = markMiddle(mark) - pathFoot(linePath(line), at).s;
  const chosenBefore = editor.selection?.kind === 'mark' && editor.selection.mark === id;
  return { kind: 'slide', down: at, mark: id, grabbed, chosenBefore };
}

/** The handle of a chosen mark's band that is under the finger. */
function bandEndAt({ selection, design }: Editor, context: EditContext, touch: Touch): Gesture | null {
  if (selection?.kind !== 'mark') return null;
  const { at, pixel } = touch;
  const near = bandHandles(design, context, selection.mark, pixel)
    .map(({ end, at: handle }) => ({ end, away: distance(handle, at) }))
    .sort((a, b) => a.away - b.away)[0];
  if (!near || near.away > HANDLE_REACH * pixel) return null;
  return { kind: 'band-end', down: at, mark: selection.mark, end: near.end };
}

const beginBands: Beginning = (editor, context, touch) => {
  const end = bandEndAt(editor, context, touch);
  if (end) return end;
  const line = lineAt(touch.at, editor.design, context, touch.reach * 1.5);
  return line ? { kind: 'bands', down: touch.at, line: line.line, from: line.s } : nothing(touch.at);
};

/** A handle beside the line is taken hold of from so many CSS pixels. */
const HANDLE_REACH = 22;

/** A finger on one of several chosen things, or on another one while several are chosen. */
function beginSeveral(editor: Editor, touch: Touch, hit: Hit | undefined): Gesture | null {
  const { selection, design } = editor;
  const { at: down, pixel, adds } = touch;
  const several = severalOf(selection);
  if (several) {
    const handle = turnHandle(several, design, pixel);
    if (handle && distance(handle.at, down) < HANDLE_REACH * pixel)
      return { kind: 'turn', down, several, about: handle.about };
  }
  const many = selection?.kind === 'several' || adds;
  if (!hit) return { kind: 'box', down };
  if (!many || ('given' in hit && hit.given)) return null;
  return { kind: 'several', down, several: several ?? { lines: [], marks: [] }, hit };
}

const beginMove: Beginning = (editor, context, touch) => {
  const end = bandEndAt(editor, context, touch);
  if (end) return end;
  const hit = hitAt(touch.at, editor.design, context, touch.reach);
  const several = beginSeveral(editor, touch, hit);
  if (several || !hit) return several ?? nothing(touch.at);
  if (hit.kind === 'middle') return { kind: 'bend', down: touch.at, line: hit.line, piece: hit.piece };
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
  bands: beginBands,
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
    case 'band-end':
      return { kind: 'mark', mark: gesture.mark };
    case 'several':
    case 'turn':
      return selectionOf(gesture.several);
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
