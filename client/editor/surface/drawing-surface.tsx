import { type ReactNode, useMemo, useRef, useState } from 'react';
import type { ScreenPoint } from '../../../shared/geometry/units.ts';
import { clearPoints } from '../../canvas/clear-points.ts';
import { type Place, pointsOf } from '../../canvas/placement.ts';
import { type SheetHandle, SheetView } from '../../canvas/sheet-view.tsx';
import { type Camera, useCamera } from '../../canvas/use-camera.ts';
import type { Box, View } from '../../canvas/view.ts';
import { KeysHelp } from '../keyboard/keys-help.tsx';
import { Paper } from '../keyboard/paper.tsx';
import { useKeyboard } from '../keyboard/use-keyboard.ts';
import { ChosenButtons } from './chosen-buttons.tsx';
import { Hint } from './hint.tsx';
import { useNotes } from './use-notes.ts';
import { type PaintedOptions, usePainted, useShown } from './use-painted.ts';
import { usePointer } from './use-pointer.ts';
import { useSessionState } from './use-session-state.ts';
import { useZoomKeys, Zoom } from './zoom.tsx';

/** Where something may stand over the paper, CSS pixels. */
export interface AbovePaper {
  readonly camera: Camera;
  readonly view: View;
  readonly within: Box;
  /** Points that are to stay clear. */
  readonly clear: readonly ScreenPoint[];
}

export interface DrawingSurfaceProps
  extends Pick<PaintedOptions, 'session' | 'judged' | 'found' | 'open' | 'mended' | 'missing'> {
  readonly label: string;
  readonly resting: boolean;
  /** What letters do on the paper, beside drawing. */
  readonly keys: Readonly<Record<string, () => void>>;
  /** Stands over the paper while no finger is on it. */
  readonly above?: (place: AbovePaper) => ReactNode;
}

/** Names on the sheet, CSS pixels. */
const NAME_SIZE = 16;
/** The line of words under the paper, CSS pixels; what stands over the paper stays above it. */
const HINT_HEIGHT = 60;

/** Around the whole sheet, CSS pixels, and beside it for the buttons that enlarge it. */
const ROOM = { pad: 14, beside: 72 } as const;

/** The paper: what is drawn, what is being drawn, and what was found. */
export function DrawingSurface(props: DrawingSurfaceProps) {
  const { session, label, judged, found, open, mended, missing, resting, keys, above } = props;
  const { sheet } = session.context;
  const surface = useRef<HTMLDivElement>(null);
  const handle = useRef<SheetHandle>(null);
  const editor = useSessionState(session, (state) => state.editor);
  const fingerDown = useSessionState(session, (state) => state.fingerDown);
  const look = useSessionState(session, (state) => state.look);
  const { frame, box, view, side, camera } = useCamera(sheet, ROOM, { look, onLook: session.look });
  const [buttons, setButtons] = useState<Place | null>(null);
  const [help, setHelp] = useState(false);
  const pixel = view ? 1 / view.scale : 1;
  const { layout, picture, under, over } = usePainted({
    session,
    editor,
    fingerDown,
    judged,
    found,
    open,
    mended,
    missing,
    pixel,
  });
  const shown = useRef({ layout, picture });
  shown.current = { layout, picture };
  const show = useShown(session, camera, handle, shown);
  const others = { ...keys, '?': () => setHelp(true) };
  const cursor = useKeyboard(surface, { session, camera, ready: view !== null, resting, show, others });
  usePointer(surface, { session, camera, ready: view !== null, resting, show });
  useZoomKeys(camera, resting);
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, NAME_SIZE) : []),
    [layout, picture, view],
  );
  const notes = useNotes({ session, editor, fingerDown, layout, view, clear });
  const within = box && { width: box.width, height: box.height - HINT_HEIGHT };
  return (
    <div className="surface-frame" ref={frame}>
      {box && view && within && (
        <SheetView
          picture={picture}
          box={box}
          view={view}
          textSize={NAME_SIZE}
          notes={notes}
          under={under}
          over={over}
          handle={handle}
          label={label}
        >
          <Paper surface={surface} label={label} cursor={cursor} view={view} />
          {!fingerDown && (
            <ChosenButtons
              session={session}
              editor={editor}
              layout={layout}
              view={view}
              within={within}
              clear={clear}
              onPlace={setButtons}
            />
          )}
          {!fingerDown &&
            above?.({
              camera,
              view,
              within,
              clear: buttons && editor.selection ? [...clear, ...pointsOf(buttons)] : clear,
            })}
        </SheetView>
      )}
      <KeysHelp open={help} button={cursor !== null} onOpen={setHelp} />
      {view && <Zoom session={session} camera={camera} whole={look === null} side={side} />}
      <Hint session={session} />
    </div>
  );
}
