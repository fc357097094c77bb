import { type RefObject, useCallback, useMemo } from 'react';
import type { Design } from '../../../shared/documents/design.ts';
import type { Finding } from '../../../shared/documents/verdict.ts';
import { cos, distance, sin } from '../../../shared/geometry/exact-math.ts';
import type { Mm } from '../../../shared/geometry/units.ts';
import type { Judged } from '../../../shared/judge/judge.ts';
import { missingOf } from '../../../shared/picture/missing.ts';
import type { Picture } from '../../../shared/picture/shapes.ts';
import { type Layout, layOut } from '../../../shared/track/layout.ts';
import { paintMissing } from '../../canvas/paint-findings.ts';
import { paintGhost } from '../../canvas/paint-ink.ts';
import { type Painter, together } from '../../canvas/painter.ts';
import type { SheetHandle } from '../../canvas/sheet-view.tsx';
import type { Camera } from '../../canvas/use-camera.ts';
import { toScreen } from '../../canvas/view.ts';
import { useKitOnScreen } from '../../parts/kit-on-screen.ts';
import { useLocale } from '../../parts/use-words.ts';
import type { EditContext, Editor } from '../model.ts';
import type { ShowProposal } from './hand.ts';
import { overGesture, overInk, overVerdict, pictureOfDesign, underInk, waitingRobot } from './overlay.ts';
import type { DrawingSession } from './session.ts';

/** What the canvas shows of a drawing at rest. */
export interface Painted {
  readonly layout: Layout;
  readonly picture: Picture;
  readonly under: Painter;
  readonly over: Painter | null;
}

export interface PaintedOptions {
  readonly session: DrawingSession;
  readonly editor: Editor;
  /** What was found is put away while a finger is on the paper. */
  readonly fingerDown: boolean;
  readonly judged: Judged | null;
  readonly found: readonly Finding[];
  readonly open: Finding | null;
  /** The drawing in which the open finding is mended, as a ghost; undefined while it is worked out. */
  readonly mended: Design | null | undefined;
  /** Whether, where there is none, it is drawn how much is missing. */
  readonly missing: boolean;
  /** A CSS pixel on the paper, mm. */
  readonly pixel: Mm;
}

/** The session's sheet and kit as this device shows them. */
function useShownContext({ context }: DrawingSession): EditContext {
  const kit = useKitOnScreen(context.kit);
  return useMemo(() => ({ ...context, kit }), [context, kit]);
}

export function usePainted(options: PaintedOptions): Painted {
  const { session, editor, fingerDown, judged, found, open, pixel } = options;
  const context = useShownContext(session);
  const { design } = editor;
  const layout = useMemo(() => layOut(context.sheet, design.drawing), [context, design]);
  const locale = useLocale();
  const picture = useMemo(
    () => pictureOfDesign(design, context, { language: locale }),
    [design, context, locale],
  );
  const { mended } = options;
  const missing = open && options.missing && mended === null ? open : undefined;
  const ghost = useMemo(() => {
    if (mended) return paintGhost(pictureOfDesign(mended, context), picture);
    const shape = missing && missingOf(missing, layout);
    return shape ? paintMissing(shape, context.kit.rules.lineWidth.nominal) : null;
  }, [mended, missing, picture, layout, context]);
  const robot = useMemo(() => {
    const { heading } = context.sheet.start;
    return waitingRobot(context, cos(heading), sin(heading));
  }, [context]);
  const under = useMemo(() => underInk(editor, robot), [editor, robot]);
  const over = useMemo(
    () =>
      fingerDown
        ? null
        : together(overVerdict(judged, layout, found, open, ghost), overInk(editor, context, picture, pixel)),
    [fingerDown, judged, layout, found, open, ghost, editor, context, picture, pixel],
  );
  return { layout, picture, under, over };
}

/** A tap needs no loupe: it appears when a finger has gone so far, CSS pixels. */
const STIRRED = 4;

/** Draws what a gesture proposes past React; only what it caught on is said by the page. */
export function useShown(
  session: DrawingSession,
  camera: Camera,
  handle: RefObject<SheetHandle | null>,
  shown: RefObject<Pick<Painted, 'layout' | 'picture'>>,
): ShowProposal {
  const locale = useLocale();
  const context = useShownContext(session);
  return useCallback(
    (proposal, progress, touch) => {
      const sheet = handle.current;
      if (!proposal || !progress || !touch) {
        sheet?.preview(null);
        sheet?.over(null);
        sheet?.loupe(null);
        session.propose(null);
        return;
      }
      const { editor } = session;
      const { edited } = proposal;
      const { layout: before, picture: now } = shown.current;
      const changed =
        edited.ok && edited.design !== editor.design
          ? pictureOfDesign(edited.design, context, { language: locale, before })
          : null;
      sheet?.preview(changed);
      const picture = changed ?? now;
      sheet?.over(overGesture({ proposal, progress, touch, editor, picture }, context));
      const view = camera.view();
      const pulls = touch.hides && distance(progress.gesture.down, touch.at) > STIRRED * touch.pixel;
      if (view && pulls) sheet?.loupe(toScreen(view, touch.at));
      session.propose(proposal);
    },
    [session, context, camera, handle, shown, locale],
  );
}
