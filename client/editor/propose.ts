import type { Design } from '../../shared/documents/design.ts';
import { pathFoot } from '../../shared/geometry/path.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { bandHandles, paintBand, pullBand } from './bands.ts';
import { type Gesture, hasPulled, heldBy, neighboursOf, type Touch } from './gesture.ts';
import { attempt, kept } from './history.ts';
import { lineAt, markAt } from './hit.ts';
import { joinEnds, lineIn, nodeOf, nodesOf, samePlace } from './lines.ts';
import { anyLine, flipMark, markOnLine, placeMark, rubMark, slideMark } from './marks.ts';
import type { EditContext, Edited, Editor, EditRefusal, Selection } from './model.ts';
import { linePath } from './paths.ts';
import { type Proposal, plain, unchanged } from './proposal.ts';
import { proposeBox, proposeSeveral, proposeShift, proposeTurn } from './propose-several.ts';
import { rubLine, rubSection } from './sections.ts';
import { severalOf } from './several.ts';
import { bend, bulgeThrough, moveNode, roundCorner } from './shape.ts';
import { type SnapQuery, snap, snapEnd } from './snap.ts';
import { addStraight, addStroke } from './stroke.ts';

/** A gesture with everything it has passed: the samples of a stroke, what rubbing has taken so far. */
export interface Progress {
  readonly gesture: Gesture;
  readonly samples: readonly PaperPoint[];
  readonly rubbed: Design;
}

/** Marks slide in steps of half a millimetre. */
const SLIDE_STEP = 0.5;

/** Works out the drawing as it would be; pure, so that it can be asked for at every move. */
export function propose(progress: Progress, editor: Editor, context: EditContext, touch: Touch): Proposal {
  const { gesture } = progress;
  const { design } = editor;
  const query: SnapQuery = { design, context, reach: touch.reach, free: touch.free };
  switch (gesture.kind) {
    case 'straight': {
      const to = snap(touch.at, { ...query, from: [gesture.from.at] });
      return plain(addStraight(design, context, gesture.from.at, to.at), to);
    }
    case 'bend':
      return proposeBend(gesture, editor, context, touch);
    case 'round':
      return plain(roundCorner(design, context, gesture.line, gesture.node, touch.at));
    case 'stroke':
      return plain(unchanged(editor, null), snapEnd(touch.at, query));
    case 'place': {
      const line = lineAt(touch.at, design, context, touch.reach * 3);
      return plain(line ? placeMark(design, context, stepped(line), gesture.word) : unchanged(editor, null));
    }
    case 'slide':
      return proposeSlide(gesture, editor, context, touch);
    case 'node':
      return proposeNode(gesture, editor, context, touch);
    case 'line': {
      const held = { lines: [gesture.line], marks: [] };
      if (!hasPulled(gesture, touch)) return plain(unchanged(editor, heldBy(gesture)));
      return proposeShift(held, gesture.down, editor, context, touch);
    }
    case 'box':
      return proposeBox(gesture, editor, context, touch);
    case 'several':
      return proposeSeveral(gesture, editor, context, touch);
    case 'turn':
      return proposeTurn(gesture, editor, context, touch);
    case 'bands':
      return proposeBands(gesture, editor, context, touch);
    case 'band-end':
      return proposeBandEnd(gesture, editor, context, touch);
    case 'rub':
      return plain({ ok: true, design: progress.rubbed, selection: null });
    case 'nothing':
      return plain(gesture.refusal ? { ok: false, refusal: gesture.refusal } : unchanged(editor, null));
  }
}

const stepped = <T extends { readonly line: string; readonly s: number }>({ line, s }: T) => ({
  line,
  s: Math.round(s / SLIDE_STEP) * SLIDE_STEP,
});

function proposeBend(
  gesture: Gesture & { kind: 'bend' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const line = lineIn(editor.design, gesture.line);
  const nodes = line ? nodesOf(line) : [];
  const [a, b] = [nodes[gesture.piece], nodes[gesture.piece + 1]];
  if (!a || !b || !hasPulled(gesture, touch)) return plain(unchanged(editor, heldBy(gesture)));
  const { bulge, caught } = bulgeThrough(a, b, touch.at, touch.free);
  return { edited: bend(editor.design, context, gesture.line, gesture.piece, bulge), snap: null, caught };
}

/** Along its own line; onto another one only when the finger is clearly there. */
function proposeSlide(
  gesture: Gesture & { kind: 'slide' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const line = markOnLine(editor.design, context, gesture.mark)?.line;
  if (!line || !hasPulled(gesture, touch)) return plain(unchanged(editor, heldBy(gesture)));
  const foot = pathFoot(linePath(line), touch.at);
  const other =
    foot.distance > touch.reach * 1.5 ? lineAt(touch.at, editor.design, context, touch.reach) : undefined;
  const to = other ?? { line: line.id, s: foot.s + gesture.grabbed };
  return plain(slideMark(editor.design, context, gesture.mark, touch.free ? to : stepped(to)));
}

/** A band from where the finger came down to where it is. */
function proposeBands(
  gesture: Gesture & { kind: 'bands' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const line = anyLine(editor.design, context, gesture.line);
  if (!line) return plain(unchanged(editor, null));
  const { s } = pathFoot(linePath(line), touch.at);
  const stroke = { line: line.id, from: gesture.from, to: s, ink: editor.ink, free: touch.free };
  return plain(paintBand(editor.design, context, stroke));
}

function proposeBandEnd(
  gesture: Gesture & { kind: 'band-end' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const line = markOnLine(editor.design, context, gesture.mark)?.line;
  if (!line || !hasPulled(gesture, touch)) return plain(unchanged(editor, heldBy(gesture)));
  // The handle stands beside the line: what counts is how far it is pulled along.
  const path = linePath(line);
  const pulled = pathFoot(path, touch.at).s - pathFoot(path, gesture.down).s;
  const end = bandHandles(editor.design, context, gesture.mark, touch.pixel)[gesture.end];
  if (!end) return plain(unchanged(editor, heldBy(gesture)));
  const way = pathFoot(path, end.foot).s + pulled;
  const s = touch.free ? way : Math.round(way / SLIDE_STEP) * SLIDE_STEP;
  return plain(pullBand(editor.design, context, gesture.mark, gesture.end, s));
}

function proposeNode(
  gesture: Gesture & { kind: 'node' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const place = nodeOf(editor.design, gesture);
  if (!place || !hasPulled(gesture, touch)) return plain(unchanged(editor, heldBy(gesture)));
  const to = snap(touch.at, {
    design: editor.design,
    context,
    reach: touch.reach,
    free: touch.free,
    from: neighboursOf(editor, gesture.line, gesture.node),
    without: [place],
    withoutLines: [gesture.line],
  });
  const edited = moveNode(editor.design, context, gesture.line, gesture.node, to.at);
  return plain(edited.ok ? { ...edited, selection: heldBy(gesture) } : edited, to);
}

/** Takes another place of the finger into a gesture. */
export function follow(
  progress: Progress,
  editor: Editor,
  context: EditContext,
  points: readonly PaperPoint[],
  reach: number,
): Progress {
  const { gesture } = progress;
  if (gesture.kind === 'stroke') return { ...progress, samples: [...progress.samples, ...points] };
  if (gesture.kind !== 'rub') return progress;
  const rubbed = points.reduce(
    (design, at) => rubAt(design, { ...editor, design }, context, at, reach),
    progress.rubbed,
  );
  return { ...progress, rubbed };
}

function rubAt(design: Design, editor: Editor, context: EditContext, at: PaperPoint, reach: number): Design {
  const mark = markAt(at, design, context, reach * 0.5);
  if (mark?.kind === 'mark' && !mark.given) return designOrSame(rubMark(design, mark.mark), design);
  const line = lineAt(at, design, context, reach * 0.5);
  if (!line || line.given) return design;
  const edited =
    editor.rub === 'line'
      ? rubLine(design, context, line.line)
      : rubSection(design, context, line.line, line.s);
  return designOrSame(edited, design);
}

const designOrSame = (edited: Edited, design: Design): Design => (edited.ok ? edited.design : design);

/** The finger goes down. */
export function start(gesture: Gesture, editor: Editor, context: EditContext, touch: Touch): Progress {
  const fresh: Progress = { gesture, samples: [], rubbed: editor.design };
  return follow(fresh, editor, context, [touch.at], touch.reach);
}

/** The finger goes up: the edit, as one step, or why there is none. */
export function finish(
  progress: Progress,
  editor: Editor,
  context: EditContext,
  touch: Touch,
): { readonly editor: Editor; readonly refusal: EditRefusal | null } {
  const { gesture, samples } = progress;
  const query: SnapQuery = { design: editor.design, context, reach: touch.reach, free: touch.free };
  if (gesture.kind === 'stroke') {
    const drawn = attempt(editor, addStroke(samples, query));
    // A tap with the pen is a slip, not a wish that needs an answer.
    return drawn.refusal?.code === 'too-short' ? { editor: deselected(editor), refusal: null } : drawn;
  }
  if (gesture.kind === 'straight' && !gesture.second && !hasPulled(gesture, touch))
    return { editor: { ...editor, pending: gesture.from.at, selection: null }, refusal: null };
  if (gesture.kind === 'slide' && !hasPulled(gesture, touch) && flips(gesture, editor))
    return attempt(editor, flipMark(editor.design, gesture.mark));
  const done = attempt(editor, joined(gesture, propose(progress, editor, context, touch).edited, context));
  const letGo = gesture.kind === 'straight' && done.refusal?.code === 'too-short';
  return letGo ? { editor: deselected(editor), refusal: null } : done;
}

/** With the tool for marks a tap flips at once; elsewhere the first one chooses. */
const flips = (gesture: Gesture & { kind: 'slide' }, editor: Editor): boolean =>
  gesture.chosenBefore || editor.tool === 'mark';

/** Lines whose ends were moved onto others' become one with them. */
function joined(gesture: Gesture, edited: Edited, context: EditContext): Edited {
  const held = heldBy(gesture);
  const moves = gesture.kind === 'node' || gesture.kind === 'line' || severalOf(held) !== null;
  if (!edited.ok || !moves || !held) return edited;
  const ids = held.kind === 'node' ? [held.line] : (severalOf(held)?.lines ?? []);
  const place = held.kind === 'node' ? nodeOf(edited.design, held) : undefined;
  const design = joinEnds(edited.design, context, ids);
  if (design === edited.design) return edited;
  return { ...edited, design, selection: (place && nodeAt(design, place)) ?? kept(edited.selection, design) };
}

/** The end or corner that lies in a place, of whichever line. */
function nodeAt(design: Design, place: PaperPoint): Selection | undefined {
  for (const line of design.drawing.lines) {
    const node = nodesOf(line).findIndex((p) => samePlace(p, place));
    if (node >= 0) return { kind: 'node', line: line.id, node };
  }
  return undefined;
}

const deselected = (editor: Editor): Editor => ({ ...editor, selection: null, pending: null });
