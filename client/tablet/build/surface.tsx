import { useEffect, useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { textIn } from '../../../shared/wording/wording.ts';
import { clearPoints } from '../../canvas/clear-points.ts';
import { type Place, pointsOf } from '../../canvas/placement.ts';
import { type SheetHandle, SheetView } from '../../canvas/sheet-view.tsx';
import { useCamera } from '../../canvas/use-camera.ts';
import { toScreen } from '../../canvas/view.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { Callout } from './callout.tsx';
import { ChosenButtons } from './chosen-buttons.tsx';
import { Hint } from './hint.tsx';
import type { DrawingSession } from './session.ts';
import type { Findings } from './use-findings.ts';
import type { LiveVerdict } from './use-live-verdict.ts';
import { useNotes } from './use-notes.ts';
import { usePainted, useShown } from './use-painted.ts';
import { usePointer } from './use-pointer.ts';
import { useSessionState } from './use-session.ts';
import { useZoomKeys, Zoom } from './zoom.tsx';

export interface SurfaceProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly live: LiveVerdict;
  readonly findings: Findings;
  readonly resting: boolean;
  /** Takes over a drawing in which the engine has mended something. */
  readonly onMend: (mended: Design) => void;
}

/** Names on the sheet, CSS pixels. */
const NAME_SIZE = 16;
/** The line of words under the paper, CSS pixels; callouts stay above it. */
const HINT_HEIGHT = 60;

/** Around the whole sheet, CSS pixels, and beside it for the buttons that enlarge it. */
const ROOM = { pad: 14, beside: 72 } as const;

/** The paper: what is drawn, what is being drawn, and what was found. */
export function Surface({ challenge, session, live, findings, resting, onMend }: SurfaceProps) {
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

  const { layout, picture, under, over } = usePainted({
    session,
    editor,
    fingerDown,
    judged: live.now,
    found: findings.all,
    open: findings.open,
    ghost: findings.mayMend ? 'mended' : findings.withWords ? 'missing' : null,
    pixel: view ? 1 / view.scale : 1,
  });
  const shown = useRef({ layout, picture });
  shown.current = { layout, picture };
  const show = useShown(session, camera, handle, shown);
  usePointer(surface, { session, camera, ready: view !== null, resting, show });
  useZoomKeys(camera, resting);
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, NAME_SIZE) : []),
    [layout, picture, view],
  );
  const notes = useNotes({ session, editor, fingerDown, layout, view, clear });
  const finding = findings.open;
  useEffect(() => {
    if (finding) camera.reveal(finding.place.at);
  }, [camera, finding]);
  const mended = finding?.remedy?.design;
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
          <div className="surface" ref={surface} role="application" aria-label={label} />
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
          {finding && !fingerDown && (
            <Callout
              finding={finding}
              number={findings.all.indexOf(finding) + 1}
              of={findings.all.length}
              at={toScreen(view, finding.place.at)}
              within={clearOfHint}
              clear={buttons && editor.selection ? [...clear, ...pointsOf(buttons)] : clear}
              withWords={findings.withWords}
              triesLeft={mended ? findings.triesLeft : 0}
              onMend={mended && findings.mayMend ? () => onMend(mended) : null}
              onNext={findings.next}
              onClose={findings.close}
            />
          )}
        </SheetView>
      )}
      {view && <Zoom session={session} camera={camera} whole={look === null} side={side} />}
      <Hint session={session} />
    </div>
  );
}
