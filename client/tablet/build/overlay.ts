import type { Finding } from '../../../shared/documents/verdict.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import type { Judged } from '../../../shared/judge/judge.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { footOnLine } from '../../../shared/picture/replay.ts';
import type { Picture } from '../../../shared/picture/shapes.ts';
import { type Layout, layOut } from '../../../shared/track/layout.ts';
import { paintCatch, paintRings } from '../../canvas/paint-findings.ts';
import { paintGhost, paintGlow, paintHandles, paintMarkFrame, paintSamples } from '../../canvas/paint-ink.ts';
import { paintActs } from '../../canvas/paint-replay.ts';
import { paintRobot } from '../../canvas/paint-robot.ts';
import { type Painter, together } from '../../canvas/painter.ts';
import { lineIn, nodesOf } from '../editor/lines.ts';
import type { EditContext, Editor } from '../editor/model.ts';
import type { Progress, Proposal } from '../editor/propose.ts';
import { gripsOf } from '../editor/sections.ts';

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

/** Over the ink: handles of what can be pulled, the chosen mark's frame, the first end of a straight. */
export function overInk(editor: Editor, picture: Picture): Painter {
  const { selection, tool, design, pending } = editor;
  const handles =
    tool === 'move'
      ? design.drawing.lines.flatMap((line) => gripsOf(line).map((node) => nodesOf(line)[node]!))
      : [];
  const chosen =
    selection?.kind === 'mark' ? picture.bands.filter((band) => band.mark === selection.mark) : [];
  return together(
    paintHandles(handles),
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
  ghost: { readonly of: Picture; readonly now: Picture } | null,
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
  return together(paintActs(acts), ghost ? paintGhost(ghost.of, ghost.now) : null, paintRings(rings));
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
