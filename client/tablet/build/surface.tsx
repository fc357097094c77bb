import { ArrowLeftRight, Trash2 } from 'lucide-react';
import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { cos, sin } from '../../../shared/geometry/exact-math.ts';
import { middleOf } from '../../../shared/picture/replay.ts';
import type { Picture } from '../../../shared/picture/shapes.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { textIn } from '../../../shared/wording/wording.ts';
import { clearPoints } from '../../canvas/clear-points.ts';
import { together } from '../../canvas/painter.ts';
import { PlacedBox } from '../../canvas/placed-box.tsx';
import { type SheetHandle, SheetView } from '../../canvas/sheet-view.tsx';
import { useFitted } from '../../canvas/use-fitted.ts';
import { toScreen } from '../../canvas/view.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { drawsLines } from '../editor/model.ts';
import type { Proposal } from '../editor/propose.ts';
import { Callout } from './callout.tsx';
import { overGesture, overInk, overVerdict, pictureOfDesign, underInk, waitingRobot } from './overlay.ts';
import type { DrawingSession } from './session.ts';
import type { Findings } from './use-findings.ts';
import type { LiveVerdict } from './use-live-verdict.ts';
import { type ShowProposal, usePointer } from './use-pointer.ts';
import { useSessionState } from './use-session.ts';

export interface SurfaceProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly live: LiveVerdict;
  readonly findings: Findings;
  readonly resting: boolean;
}

/** Names on the sheet, CSS pixels. */
const NAME_SIZE = 16;
/** The line of words under the paper, CSS pixels; callouts stay above it. */
const HINT_HEIGHT = 60;

/** The paper: what is drawn, what is being drawn, and what was found. */
export function Surface({ challenge, session, live, findings, resting }: SurfaceProps) {
  const words = useWords().tablet.building;
  const label = words.sheet(textIn(challenge.sentence, useLocale()));
  const { sheet } = challenge;
  const { frame, box, view } = useFitted(sheet, 14);
  const surface = useRef<HTMLDivElement>(null);
  const handle = useRef<SheetHandle>(null);
  const editor = useSessionState(session, (state) => state.editor);
  const fingerDown = useSessionState(session, (state) => state.fingerDown);
  const layout = useMemo(() => layOut(sheet, editor.design.drawing), [sheet, editor.design]);
  const picture = useMemo(() => pictureOfDesign(editor.design, session.context), [editor.design, session]);
  const [proposal, setProposal] = useState<Proposal | null>(null);
  const show = useShown(session, handle, setProposal);
  usePointer(surface, { session, view, resting, show });

  const mended = findings.open?.remedy?.design;
  const ghost = useMemo(
    () => (mended ? { of: pictureOfDesign(mended, session.context), now: picture } : null),
    [mended, picture, session],
  );
  const robot = useMemo(
    () => waitingRobot(session.context, cos(sheet.start.heading), sin(sheet.start.heading)),
    [session, sheet],
  );
  const under = useMemo(() => underInk(editor, robot), [editor, robot]);
  const over = useMemo(
    () =>
      fingerDown
        ? null
        : together(
            overVerdict(live.now, layout, findings.all, findings.open, ghost),
            overInk(editor, picture),
          ),
    [fingerDown, live.now, layout, findings, ghost, editor, picture],
  );
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, NAME_SIZE) : []),
    [layout, picture, view],
  );
  const chosenMark = editor.selection?.kind === 'mark' ? middleOf(editor.selection.mark, layout) : undefined;
  const finding = findings.open;
  const clearOfHint = box && { width: box.width, height: box.height - HINT_HEIGHT };
  return (
    <div className="surface-frame" ref={frame}>
      {box && view && clearOfHint && (
        <SheetView
          picture={picture}
          box={box}
          view={view}
          textSize={NAME_SIZE}
          under={under}
          over={over}
          handle={handle}
          label={label}
        >
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys move what is chosen on it */}
          <div className="surface" ref={surface} tabIndex={0} role="application" aria-label={label} />
          {chosenMark && !fingerDown && (
            <PlacedBox
              className="mark-buttons"
              about={toScreen(view, chosenMark)}
              within={clearOfHint}
              clear={clear}
              gap={26}
            >
              <Button icon={<Icon of={ArrowLeftRight} />} onClick={session.flip}>
                {words.flip}
              </Button>
              <Button icon={<Icon of={Trash2} />} onClick={session.rubChosen}>
                {words.rubOut}
              </Button>
            </PlacedBox>
          )}
          {finding && !chosenMark && !fingerDown && (
            <Callout
              finding={finding}
              number={findings.all.indexOf(finding) + 1}
              of={findings.all.length}
              at={toScreen(view, finding.place.at)}
              within={clearOfHint}
              clear={clear}
              onMend={mended ? () => session.replace(mended) : null}
              onNext={findings.next}
              onClose={findings.close}
            />
          )}
        </SheetView>
      )}
      <Hint session={session} proposal={proposal} />
    </div>
  );
}

/** Draws what a gesture proposes past React; only what it caught on is said by the page. */
function useShown(
  session: DrawingSession,
  handle: React.RefObject<SheetHandle | null>,
  setProposal: (change: (before: Proposal | null) => Proposal | null) => void,
): ShowProposal {
  return useCallback(
    (proposal, progress) => {
      const sheet = handle.current;
      if (!proposal || !progress) {
        sheet?.preview(null);
        sheet?.over(null);
        setProposal(() => null);
        return;
      }
      const { editor, context } = session;
      const { edited } = proposal;
      const changed: Picture | null =
        edited.ok && edited.design !== editor.design ? pictureOfDesign(edited.design, context) : null;
      sheet?.preview(changed);
      sheet?.over(overGesture(proposal, progress, editor, context));
      setProposal((before) =>
        before?.snap?.why === proposal.snap?.why &&
        before?.snap?.degrees === proposal.snap?.degrees &&
        before?.caught === proposal.caught
          ? before
          : proposal,
      );
    },
    [session, handle, setProposal],
  );
}

/** One line under the paper: what the tool does, what the finger caught on, or why nothing happened. */
function Hint({
  session,
  proposal,
}: {
  readonly session: DrawingSession;
  readonly proposal: Proposal | null;
}) {
  const words = useWords().tablet.building;
  const locale = useLocale();
  const { tool, pending, rub } = useSessionState(session, (state) => state.editor);
  const refusal = useSessionState(session, (state) => state.refusal);
  const { sheet, play } = session.context;
  const most = refusal && 'most' in refusal ? refusal.most : 0;
  let said: ReactNode = pending ? words.secondTap : words.how(tool, drawsLines(play));
  if (refusal) said = words.notDone(refusal.code, most);
  if (proposal?.snap) {
    const { at, why, degrees = 0 } = proposal.snap;
    const berth = at === sheet.finish?.at ? sheet.finish : sheet.start;
    said = words.caught(why, textIn(berth.name, locale), degrees) ?? said;
  }
  if (proposal?.caught) said = words.bent(proposal.caught);
  return (
    <div className="hint" data-refused={refusal !== null && !proposal}>
      <p role="status">{said}</p>
      {tool === 'rub' && drawsLines(play) && (
        <div className="hint-choice" role="radiogroup" aria-label={words.rubWhat}>
          {(['piece', 'line'] as const).map((what) => (
            <label key={what} className="choice" data-chosen={rub === what}>
              <input
                type="radio"
                name="rub"
                className="tool-input"
                checked={rub === what}
                onChange={() => session.choose({ rub: what })}
              />
              {what === 'piece' ? words.rubPiece : words.rubLine}
            </label>
          ))}
        </div>
      )}
    </div>
  );
}
