import type { Design } from '../../../shared/documents/design.ts';
import type { Finding } from '../../../shared/documents/verdict.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import { pieceAt } from '../../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import type { Judged } from '../../../shared/judge/judge.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { footOnLine } from '../../../shared/picture/replay.ts';
import type { Picture } from '../../../shared/picture/shapes.ts';
import { type Layout, layOut } from '../../../shared/track/layout.ts';
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
import { lineIn, nodesOf } from '../editor/lines.ts';
import type { EditContext, Editor, Selection, Tool } from '../editor/model.ts';
import type { Progress, Proposal } from '../editor/propose.ts';
import { gripsOf } from '../editor/sections.ts';
import { canRound } from '../editor/shape.ts';

export const pictureOfDesign = (design: Editor['design'], { sheet, kit }: EditContext): Picture =>
  pictureOf({ sheet, kit, layout: layOut(sheet, design.drawing) });

/** Under the ink: a faint robot in its berth, and a glow round the chosen line. */
export function underInk(editor: Editor, robot: Painter): Painter {
  const { selection } = editor;
  const line = selection && selection.kind !== 'mark' ? lineIn(editor.design, selection.line) : undefined;
  return together(robot, line ? paintGlow([pathOf(line).pieces], line.width) : null);
}

/** A robot as it would stand in the start berth. */
export function waitingRobot({ sheet, kit }: EditContext, cos: number, sin: number): Painter {
  const pose = { at: sheet.start.at, heading: { x: cos, y: sin } };
  return paintRobot(pose, kit.robot, { faint: true });
}

/** Shorter pieces, as freehand lines have many, show no handle of their own. */
const LEAST_PULLED: Mm = 25;

/** Where each tool can take hold of a line: ends and corners, middles, or only the ends to go on from. */
function handlesOf({ drawing }: Design, tool: Tool): PaperPoint[] {
  return drawing.lines.flatMap((line) => {
    const nodes = nodesOf(line);
    if (tool === 'move') return gripsOf(line).map((node) => nodes[node]!);
    if (tool === 'straight' || tool === 'freehand') return [nodes[0]!, nodes.at(-1)!];
    if (tool !== 'curve') return [];
    const middles = pathOf(line)
      .pieces.filter((piece) => piece.length > LEAST_PULLED)
      .map((piece) => pieceAt(piece, piece.length / 2));
    return [...middles, ...gripsOf(line).flatMap((node) => (canRound(line, node) ? [nodes[node]!] : []))];
  });
}

function nodeOf(design: Design, { line, node }: Selection & { kind: 'node' }): PaperPoint | undefined {
  const found = lineIn(design, line);
  return found && nodesOf(found)[node];
}

/** Over the ink: handles of what can be pulled, the chosen mark's frame, the first end of a straight. */
export function overInk(editor: Editor, picture: Picture): Painter {
  const { selection, tool, design, pending } = editor;
  const chosen =
    selection?.kind === 'mark' ? picture.bands.filter((band) => band.mark === selection.mark) : [];
  return together(
    paintHandles(handlesOf(design, tool)),
    selection?.kind === 'node' ? paintChosenHandle(nodeOf(design, selection)) : null,
    chosen.length > 0 ? paintMarkFrame(chosen) : null,
    pending ? together(paintHandles([pending]), paintCatch(pending, 'end')) : null,
  );
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

/** While the finger is down: the stroke so far, and what it has caught on. */
export function overGesture(
  proposal: Proposal,
  progress: Progress,
  editor: Editor,
  context: EditContext,
): Painter {
  const { snap, edited } = proposal;
  const width = context.kit.rules.lineWidth.nominal;
  const stroke = progress.gesture.kind === 'stroke' ? paintSamples(progress.samples, width) : null;
  const design = edited.ok ? edited.design : editor.design;
  const selection = edited.ok ? edited.selection : null;
  const marks =
    selection?.kind === 'mark'
      ? pictureOfDesign(design, context).bands.filter((band) => band.mark === selection.mark)
      : [];
  return together(
    stroke,
    marks.length > 0 ? paintMarkFrame(marks) : null,
    snap && snap.why !== 'free' ? paintCatch(snap.at, snap.why) : null,
  );
}
