import { useEffect, useState } from 'react';
import type { Challenge, Variant } from '../../../shared/documents/challenge.ts';
import { Design } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import { conditionsFor } from '../../../shared/room/drawn-in.ts';
import { isGentler, type RoomState, type Team } from '../../../shared/room/state.ts';
import type { ClientAsk, Doing } from '../../../shared/wire/protocol.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { Tools } from '../../editor/surface/tools.tsx';
import { Tray } from '../../editor/surface/tray.tsx';
import { useKeys } from '../../editor/surface/use-keys.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { entriesOf } from '../../parts/figures.ts';
import { warmUpJudging } from '../../parts/judging.ts';
import { warmUpStudying } from '../../parts/studying.ts';
import { useLink } from '../../parts/use-link.tsx';
import { useWords } from '../../parts/use-words.ts';
import { drawnOn, onOtherSheet } from '../../parts/variants.ts';
import { DrawnEntry } from '../handing/drawn-entry.tsx';
import { EntriesButton, EntriesDialog } from '../handing/entries.tsx';
import { HandInDialog } from '../handing/hand-in.tsx';
import { handedInBy, Roles } from '../handing/roles.tsx';
import { useHandIn } from '../handing/use-hand-in.ts';
import { WallWishes } from '../handing/wall-wishes.tsx';
import { NoteButton } from '../notes/note-button.tsx';
import { HowButton } from '../playing/how-to-play.tsx';
import { SheetInWords } from '../reading/sheet-in-words.tsx';
import { TryIt } from '../trying/try-it.tsx';
import { Foot } from './foot.tsx';
import { GoalsHead } from './goals-head.tsx';
import { Resting } from './resting.tsx';
import { Surface } from './surface.tsx';
import { TimeLeft } from './time-left.tsx';
import { useFindings } from './use-findings.ts';
import { useHelp } from './use-help.ts';
import { useLiveVerdict } from './use-live-verdict.ts';
import { useSession } from './use-session.ts';
import './build.css';

export interface BuildScreenProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly round: number;
  readonly challenge: Challenge;
}

/** The drawing of this round, once it has been looked up where it was kept. */
export function BuildScreen(props: BuildScreenProps) {
  useEffect(() => {
    warmUpJudging();
    warmUpStudying();
  }, []);
  const { room, team, round, challenge } = props;
  const gentler = isGentler(room, team.id, round);
  const { variant } = conditionsFor(room, team);
  const place = { room: room.id, team: team.id, round, moves: team.moves, gentler };
  const session = useSession(challenge, place, variant);
  return session && <Workbench {...props} session={session} variant={variant} />;
}

const handedIn = ({ editor }: DrawingSession, round: number, variant: Variant | null): ClientAsk => ({
  kind: 'hand-in',
  round,
  variant,
  design: writeDocument(Design, editor.design),
});

type Open = 'trying' | 'handing-in' | 'entries' | 'reading' | null;

function Workbench({
  room,
  team,
  round,
  challenge,
  session,
  variant,
}: BuildScreenProps & { readonly session: DrawingSession; readonly variant: Variant | null }) {
  const { handing } = useWords().tablet;
  const [open, setOpen] = useState<Open>(null);
  // A dialog also says that it closes when another one has taken its place.
  const closed = (which: Open) => setOpen((now) => (now === which ? null : now));
  const live = useLiveVerdict(challenge, session);
  const help = useHelp(room, team, round);
  const design = useSessionState(session, ({ editor }) => editor.design);
  const findings = useFindings(challenge, live.now, design, help);
  const link = useLink();
  const mend = (mended: Design) => {
    session.replace(mended);
    void link.command({ kind: 'mend', round });
  };
  const tryIt = () => setOpen('trying');
  const fingerDown = useSessionState(session, (state) => state.fingerDown);
  // A stroke in progress is finished before the tablet rests.
  const paused = room.paused !== null;
  const resting = (room.lookHere || paused) && !fingerDown;
  const entries = entriesOf(room, team.id, round);
  const sending = useHandIn(() => handedIn(session, round, variant), entries.length);
  useKeys(session, resting || open !== null);
  useDoing(open === 'trying' ? 'trying' : entries.length > 0 ? 'handed-in' : 'drawing', session);

  return (
    <>
      <main className="build" inert={resting}>
        <header className="build-head">
          <EmblemBadge emblem={team.emblem} size={30} />
          <GoalsHead
            challenge={challenge}
            results={live.last?.verdict.goals ?? null}
            ways={live.last?.ways ?? {}}
            onRead={() => setOpen('reading')}
          />
          <NoteButton room={room} team={team} />
          <HowButton challenge={challenge} />
          <EntriesButton entries={entries} waiting={sending.waiting} onOpen={() => setOpen('entries')} />
          <TimeLeft room={room} />
        </header>
        {open === 'trying' ? (
          <TryIt
            challenge={challenge}
            session={session}
            round={round}
            help={help}
            onBack={() => setOpen(null)}
          />
        ) : (
          <>
            <Tools session={session} />
            <Surface
              challenge={challenge}
              session={session}
              live={live}
              findings={findings}
              resting={room.lookHere || paused}
              onMend={mend}
              keys={{ t: tryIt, r: () => setOpen('reading') }}
            />
            <Tray session={session} />
            <Foot
              session={session}
              findings={findings}
              looked={live.now !== null}
              onTry={tryIt}
              onHandIn={() => setOpen('handing-in')}
            />
          </>
        )}
        <SheetInWords session={session} open={open === 'reading'} onClose={() => closed('reading')} />
        <HandInDialog
          open={open === 'handing-in'}
          challenge={challenge}
          session={session}
          late={room.building?.ended ?? false}
          onClose={() => closed('handing-in')}
          onYes={() => {
            sending.handIn();
            setOpen('entries');
          }}
        />
        <EntriesDialog
          open={open === 'entries'}
          title={handing.entriesTitle}
          closeWord={handing.close}
          entries={entries}
          sending={sending}
          onClose={() => closed('entries')}
          before={entries.length > 0 && <Roles handedIn={handedInBy(room, team)} />}
          after={<WallWishes team={team} />}
          view={(entry, close) => (
            <DrawnEntry
              entry={entry}
              challenge={onOtherSheet(challenge, variant, entry.variant)}
              onTakeUp={(design) => {
                session.replace(drawnOn(design, entry.variant, variant, challenge));
                close();
              }}
            />
          )}
        />
      </main>
      {resting && <Resting paused={paused} />}
    </>
  );
}

/** Tells the room, as one word, what this team is at. A new stroke after handing in is drawing again. */
function useDoing(doing: Doing, session: DrawingSession): void {
  const link = useLink();
  const design = useSessionState(session, (state) => state.editor.design);
  const [handedIn, setHandedIn] = useState(design);
  useEffect(() => {
    if (doing === 'handed-in') setHandedIn(session.editor.design);
  }, [doing, session]);
  const now = doing === 'handed-in' && design !== handedIn ? 'drawing' : doing;
  useEffect(() => link.tell({ kind: 'doing', doing: now }), [link, now]);
}
