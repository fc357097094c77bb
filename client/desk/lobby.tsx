import { useEffect, useState } from 'react';
import type { DeskAccess } from '../../shared/wire/desks.ts';
import { DeviceSettingsButton } from '../parts/device-settings-dialog.tsx';
import { Notice } from '../parts/notice.tsx';
import { useDesk } from './desk-store.ts';
import { KeysHelp } from './keys-help.tsx';
import { PrepareLobby } from './prepare.tsx';
import { Rail } from './rail.tsx';
import { deskAccess, goToRoom } from './session.ts';
import { UndoBar } from './undo.tsx';
import { useWholeWords } from './whole-words.ts';

/** The desk before it has a room. */
export function Lobby() {
  const { desk } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const access = useAccess();
  if (access?.kind === 'none') return <NoDesk />;
  return (
    <div className="desk">
      <header className="desk-head">
        <h1>{desk.title}</h1>
        <span className="desk-head-space" />
        <DeviceSettingsButton shortcut="L" />
        <KeysHelp />
      </header>
      <div className="desk-body">
        <Rail room={null} step="prepare" onStep={() => {}} />
        <main className="desk-main">
          <PrepareLobby keysOn={keysOn} givesLinks={access?.kind === 'owner'} />
        </main>
      </div>
      <UndoBar />
    </div>
  );
}

function NoDesk() {
  const { desk } = useWholeWords();
  return (
    <main className="desk-alone">
      <h1>{desk.title}</h1>
      <Notice tone="stops">{desk.noSeat}</Notice>
      <DeviceSettingsButton />
    </main>
  );
}

/** What this browser may do; null while that is asked, or when the server does not say. */
function useAccess(): DeskAccess | null {
  const [access, setAccess] = useState<DeskAccess | null>(null);
  useEffect(() => {
    let current = true;
    void deskAccess().then((answer) => {
      if (!current || !answer.ok) return;
      // A link to one room leads there, whichever address was opened.
      if (answer.value.room !== null) return goToRoom(answer.value.room);
      setAccess(answer.value);
    });
    return () => {
      current = false;
    };
  }, []);
  return access;
}
