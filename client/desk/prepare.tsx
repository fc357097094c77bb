import { Plus } from 'lucide-react';
import { useState } from 'react';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useTicks } from './before/ticks.ts';
import { OwnBox } from './builder/own-box.tsx';
import { useKeys } from './keys.ts';
import { useRoomKit } from './kit/room-kit.ts';
import { LinkList } from './links.tsx';
import { PrepareLeaves } from './prepare-leaves.tsx';
import { RestoreRoom, RoomList } from './rooms.tsx';
import { goToRoom, openRoom } from './session.ts';
import { useWholeWords } from './whole-words.ts';
import './prepare.css';

/** Preparing before any room is open: cautions, opening a room, going on with one. */
export function PrepareLobby(props: { readonly keysOn: boolean; readonly givesLinks: boolean }) {
  const { keysOn, givesLinks } = props;
  const opening = useOpening();
  const { prepCheck } = useWholeWords();
  useKeys({ n: opening.open }, keysOn);
  return (
    <div className="prepare">
      <PrepareLeaves
        room={null}
        kit={DEMO_KIT}
        onStay={null}
        end={
          <Button look="primary" shortcut="N" disabled={opening.busy} onClick={opening.open}>
            {prepCheck.open}
          </Button>
        }
      />
      <div className="prepare-side">
        <OpenRoom opening={opening} />
        <RoomList />
        <OwnBox />
        <RestoreRoom />
        {givesLinks && <DeskLinks />}
      </div>
    </div>
  );
}

/** The owner's: a desk for each teacher. */
function DeskLinks() {
  const { links } = useWholeWords().desk;
  return (
    <section className="prepare-box" aria-labelledby="links-title">
      <h2 id="links-title">{links.title}</h2>
      <LinkList asked={{ kind: 'desk' }} note={links.note} none={links.none} make={links.make} />
    </section>
  );
}

interface Opening {
  readonly busy: boolean;
  readonly refusal: WireRefusal | null;
  readonly open: () => void;
}

/** Opens a room and goes there; what was ticked of the charger goes along. */
function useOpening(): Opening {
  const watched = useTicks(({ ticked }) => ticked.includes('charger'));
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const open = async () => {
    if (busy) return;
    setBusy(true);
    setRefusal(null);
    const answer = await openRoom(watched);
    if (answer.ok) goToRoom(answer.value.room);
    else {
      setRefusal(answer.refusal);
      setBusy(false);
    }
  };
  return { busy, refusal, open: () => void open() };
}

function OpenRoom({ opening }: { readonly opening: Opening }) {
  const { desk } = useWholeWords();
  const { ticked, setTick } = useTicks();
  const watched = ticked.includes('charger');
  return (
    <section className="prepare-box" aria-labelledby="open-title">
      <h2 id="open-title">{desk.preparing.openTitle}</h2>
      <StaysTick checked={watched} disabled={false} onChange={(on) => setTick('charger', on)} />
      {!watched && <p className="prepare-quiet">{desk.preparing.unwatched}</p>}
      <Button
        look="primary"
        icon={<Icon of={Plus} />}
        shortcut="N"
        disabled={opening.busy}
        onClick={opening.open}
      >
        {opening.busy ? desk.preparing.opening : desk.preparing.open}
      </Button>
      <Refused refusal={opening.refusal} />
      <p className="prepare-quiet">{desk.preparing.openNote}</p>
    </section>
  );
}

interface StaysTickProps {
  readonly checked: boolean;
  readonly disabled: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** Somebody says that they stay with the charger. */
function StaysTick({ checked, disabled, onChange }: StaysTickProps) {
  const { safety } = useWholeWords();
  return (
    <label className="prepare-tick">
      <input
        type="checkbox"
        checked={checked}
        disabled={disabled}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>
        <strong>{safety.stays}</strong>
        <br />
        {safety.staysNote}
      </span>
    </label>
  );
}

/** Preparing again while a room is open. */
export function PrepareStep({ room }: { readonly room: RoomState }) {
  const { desk, safety } = useWholeWords();
  const watched = room.chargerWatched;
  const { ask, refusal, busy } = useAsk();
  const stay = () => void ask({ kind: 'watch-charger' });
  return (
    <main className="desk-main prepare">
      <PrepareLeaves room={room} kit={useRoomKit(room)} onStay={stay} end={null} />
      <div className="prepare-side">
        <section className="prepare-box">
          {watched ? (
            <Notice tone="met">{desk.preparing.thanks}</Notice>
          ) : (
            <>
              <Notice tone="caution">{safety.nobodyStays}</Notice>
              <StaysTick checked={false} disabled={busy} onChange={stay} />
            </>
          )}
          <Refused refusal={refusal} />
        </section>
      </div>
    </main>
  );
}
