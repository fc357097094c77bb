import type { Design } from '../../../shared/documents/design.ts';
import type { Locale } from '../../../shared/documents/values.ts';
import type { Finding } from '../../../shared/documents/verdict.ts';
import { boxOf } from '../../../shared/geometry/box.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import type { Judged } from '../../../shared/judge/judge.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { footOnLine } from '../../../shared/picture/replay.ts';
import type { Picture } from '../../../shared/picture/shapes.ts';
import { type Layout, layOut } from '../../../shared/track/layout.ts';
import { paintBandHandles, paintChoosing, paintChosen, paintGuide } from '../../canvas/paint-chosen.ts';
import { paintCatch, paintRings } from '../../canvas/paint-findings.ts';
import {
  paintChosenHandle,
  paintGlow,
  paintHandles,
  paintMarkFrame,
  paintSamples,
} from '../../canvas/paint-ink.ts';
import { paintActs } from '../../canvas/paint-replay.ts';
import { paintRobot } from '../../canvas/paint-robot.ts';
import { type Painter, together } from '../../canvas/painter.ts';
import { bandHandles } from '../bands.ts';
import type { Touch } from '../gesture.ts';
import { middlesOf } from '../hit.ts';
import { lineIn, nodeOf, nodesOf } from '../lines.ts';
import type { EditContext, Editor, Selection, Tool } from '../model.ts';
import { linePath } from '../paths.ts';
import type { Proposal } from '../proposal.ts';
import type { Progress } from '../propose.ts';
import { gripsOf } from '../sections.ts';
import { boundsOf, severalOf, turnHandle } from '../several.ts';
import { canRound } from '../shape.ts';
import { isPlace } from '../snap.ts';

export interface PictureWish {
  /** Of names of places; English where nobody sees them. */
  readonly language?: Locale;
  /** Lines that lie as they do here take their paths over. */
  readonly before?: Layout;
}

export const pictureOfDesign = (
  design: Design,
  { sheet, kit }: EditContext,
  { language, before }: PictureWish = {},
): Picture => pictureOf({ sheet, kit, layout: layOut(sheet, design.drawing, before), language });

/** Under the ink: a faint robot in its berth, and a glow round the chosen line. */
export function underInk(editor: Editor, robot: Painter): Painter {
  return together(robot, glowOf(editor.selection, editor.design));
}

/** A glow round all chosen lines. */
function glowOf(selection: Selection | null, design: Design): Painter | null {
  const ids = selection?.kind === 'node' ? [selection.line] : (severalOf(selection)?.lines ?? []);
  const lines = ids.flatMap((id) => lineIn(design, id) ?? []);
  const [first] = lines;
  return first
    ? paintGlow(
        lines.map((line) => linePath(line).pieces),
        first.width,
      )
    : null;
}

/** A robot as it would stand in the start berth. */
export function waitingRobot({ sheet, kit }: EditContext, cos: number, sin: number): Painter {
  const pose = { at: sheet.start.at, heading: { x: cos, y: sin } };
  return paintRobot(pose, kit.robot, { faint: true });
}

/** Where each tool can take hold of a line: ends and corners, middles, or only the ends to go on from. */
function handlesOf({ drawing }: Design, tool: Tool): PaperPoint[] {
  return drawing.lines.flatMap((line) => {
    const nodes = nodesOf(line);
    if (tool === 'move')
      return [
        ...gripsOf(line).map((node) => nodes[node]!),
        ...middlesOf(line, (piece) => piece.kind === 'arc'),
      ];
    if (tool === 'straight' || tool === 'freehand') return [nodes[0]!, nodes.at(-1)!];
    if (tool !== 'curve') return [];
    return [
      ...middlesOf(line),
      ...gripsOf(line).flatMap((node) => (canRound(line, node) ? [nodes[node]!] : [])),
    ];
  });
}

/** Over the ink: handles of what can be pulled, the chosen mark's frame, the first end of a straight. */
export function overInk(editor: Editor, context: EditContext, picture: Picture, pixel: Mm): Painter {
  const { selection, tool, design, pending } = editor;
  return together(
    paintHandles(handlesOf(design, tool)),
    selection?.kind === 'node' ? paintChosenHandle(nodeOf(design, selection)) : null,
    ...framesOf(selection, picture),
    selection?.kind === 'mark' ? paintBandHandles(bandHandles(design, context, selection.mark, pixel)) : null,
    tool === 'move' ? frameOf(selection, design, pixel) : null,
    pending ? together(paintHandles([pending]), paintCatch(pending, 'place')) : null,
  );
}

/** A frame round each chosen mark. */
function framesOf(selection: Selection | null, picture: Picture): (Painter | null)[] {
  const ids =
    selection?.kind === 'mark' ? [selection.mark] : selection?.kind === 'several' ? selection.marks : [];
  return ids.map((id) => {
    const bands = picture.bands.filter((band) => band.mark === id);
    return bands.length > 0 ? paintMarkFrame(bands) : null;
  });
}

/** A frame round all chosen lines, with the handle that turns them. */
function frameOf(selection: Selection | null, design: Design, pixel: Mm): Painter | null {
  const several = severalOf(selection);
  const box = several && boundsOf(several, design);
  const handle = several && turnHandle(several, design, pixel);
  return box && handle ? paintChosen(box, handle.at) : null;
}

/** What the engine found: ticks where marks act, rings, and the ghost of a mended drawing. */
export function overVerdict(
  judged: Judged | null,
  layout: Layout,
  findings: readonly Finding[],
  chosen: Finding | null,
  ghost: Painter | null,
): Painter {
  const acts = (judged?.verdict.runs ?? []).flatMap((run) =>
    run.readings.flatMap(({ acted }) => {
      const foot = acted && footOnLine(acted, layout);
      return foot ? [foot] : [];
    }),
  );
  const rings = findings.map((finding) => ({
    at: finding.place.at,
    severity: finding.severity,
    chosen: finding === chosen,
  }));
  return together(paintActs(acts), ghost, paintRings(rings));
}

/** What a gesture under way shows. */
export interface Shown {
  readonly proposal: Proposal;
  readonly progress: Progress;
  readonly touch: Touch;
  readonly editor: Editor;
  /** Of the drawing as it would be. */
  readonly picture: Picture;
}

/** While the finger is down: the stroke so far, and what it has caught on. */
export function overGesture(shown: Shown, context: EditContext): Painter {
  const { proposal, progress, touch, editor, picture } = shown;
  const { snap, edited } = proposal;
  const width = context.kit.rules.lineWidth.nominal;
  const stroke = progress.gesture.kind === 'stroke' ? paintSamples(progress.samples, width) : null;
  const design = edited.ok ? edited.design : editor.design;
  const selection = edited.ok ? edited.selection : null;
  const framed = selection?.kind === 'mark' || selection?.kind === 'several';
  const { gesture } = progress;
  const choosing = gesture.kind === 'box' ? paintChoosing(boxOf([gesture.down, touch.at])) : null;
  return together(
    stroke,
    choosing,
    choosing ? glowOf(selection, design) : null,
    ...(framed ? framesOf(selection, picture) : []),
    snap?.guide ? paintGuide(snap.guide.from, snap.at, snap.guide.like) : null,
    snap && snap.why !== 'free' ? paintCatch(snap.at, isPlace(snap) ? 'place' : 'spot') : null,
  );
}
