import { useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { clearPoints } from '../../canvas/clear-points.ts';
import { type Place, pointsOf } from '../../canvas/placement.ts';
import { type SheetHandle, SheetView } from '../../canvas/sheet-view.tsx';
import { useCamera } from '../../canvas/use-camera.ts';
import { KeysHelp } from '../../editor/keyboard/keys-help.tsx';
import { Paper } from '../../editor/keyboard/paper.tsx';
import { useKeyboard } from '../../editor/keyboard/use-keyboard.ts';
import { ChosenButtons } from '../../editor/surface/chosen-buttons.tsx';
import { Hint } from '../../editor/surface/hint.tsx';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useNotes } from '../../editor/surface/use-notes.ts';
import { usePainted, useShown } from '../../editor/surface/use-painted.ts';
import { usePointer } from '../../editor/surface/use-pointer.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { useZoomKeys, Zoom } from '../../editor/surface/zoom.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { OpenFinding } from './open-finding.tsx';
import type { Findings } from './use-findings.ts';
import type { LiveVerdict } from './use-live-verdict.ts';

export interface SurfaceProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly live: LiveVerdict;
  readonly findings: Findings;
  readonly resting: boolean;
  /** Takes over a drawing in which the engine has mended something. */
  readonly onMend: (mended: Design) => void;
  /** What letters do on the paper, beside drawing. */
  readonly keys: Readonly<Record<string, () => void>>;
}

/** Names on the sheet, CSS pixels. */
const NAME_SIZE = 16;
/** The line of words under the paper, CSS pixels; callouts stay above it. */
const HINT_HEIGHT = 60;

/** Around the whole sheet, CSS pixels, and beside it for the buttons that enlarge it. */
const ROOM = { pad: 14, beside: 72 } as const;

/** The paper: what is drawn, what is being drawn, and what was found. */
export function Surface({ challenge, session, live, findings, resting, onMend, keys }: SurfaceProps) {
  const words = useWords().tablet.building;
  const label = words.sheet(textIn(challenge.sentence, useLocale()));
  const { sheet } = challenge;
  const surface = useRef<HTMLDivElement>(null);
  const handle = useRef<SheetHandle>(null);
  const editor = useSessionState(session, (state) => state.editor);
  const fingerDown = useSessionState(session, (state) => state.fingerDown);
  const look = useSessionState(session, (state) => state.look);
  const { frame, box, view, side, camera } = useCamera(sheet, ROOM, { look, onLook: session.look });
  const [buttons, setButtons] = useState<Place | null>(null);
  const [help, setHelp] = useState(false);

  const { layout, picture, under, over } = usePainted({
    session,
    editor,
    fingerDown,
    judged: live.now,
    found: findings.all,
    open: findings.open,
    mended: findings.mayMend ? findings.mended : null,
    missing: findings.withWords,
    pixel: view ? 1 / view.scale : 1,
  });
  const shown = useRef({ layout, picture });
  shown.current = { layout, picture };
  const show = useShown(session, camera, handle, shown);
  const others = { ...keys, g: findings.next, '?': () => setHelp(true) };
  const cursor = useKeyboard(surface, { session, camera, ready: view !== null, resting, show, others });
  usePointer(surface, { session, camera, ready: view !== null, resting, show });
  useZoomKeys(camera, resting);
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, NAME_SIZE) : []),
    [layout, picture, view],
  );
  const notes = useNotes({ session, editor, fingerDown, layout, view, clear });
  const clearOfHint = box && { width: box.width, height: box.height - HINT_HEIGHT };
  return (
    <div className="surface-frame" ref={frame}>
      {box && view && clearOfHint && (
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
              within={clearOfHint}
              clear={clear}
              onPlace={setButtons}
            />
          )}
          {!fingerDown && (
            <OpenFinding
              findings={findings}
              camera={camera}
              view={view}
              within={clearOfHint}
              clear={buttons && editor.selection ? [...clear, ...pointsOf(buttons)] : clear}
              onMend={onMend}
            />
          )}
        </SheetView>
      )}
      <KeysHelp open={help} button={cursor !== null} onOpen={setHelp} />
      {view && <Zoom session={session} camera={camera} whole={look === null} side={side} />}
      <Hint session={session} />
    </div>
  );
}
