import { Check, Undo2 } from 'lucide-react';
import { useState } from 'react';
import { RETURN_REASONS, type ReturnReason } from '../../shared/room/coaching.ts';
import type { Entry, RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { teamOf } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';

interface Props {
  readonly room: RoomState;
  readonly entry: Entry;
}

/** Gives an entry back with a reason, so that it counts no longer; or accepts it after all. */
export function ReturnEntry({ room, entry }: Props) {
  const { desk, emblems } = useWholeWords();
  const { coaching, undo } = desk;
  const { ask, askUndoable, refusal, busy } = useUndoable();
  const [asked, setAsked] = useState(false);
  const name = emblems.name(teamOf(room, entry.team)?.emblem ?? '');
  const accept = { kind: 'accept-entry', entry: entry.id } as const;
  const giveBack = (reason: ReturnReason) => {
    setAsked(false);
    const command = { kind: 'return-entry', entry: entry.id, reason } as const;
    return askUndoable(command, accept, undo.returned(name, entry.number));
  };
  if (entry.returned)
    return (
      <>
        <Button icon={<Icon of={Check} />} disabled={busy} onClick={() => void ask(accept)}>
          {coaching.accept}
        </Button>
        <Refused refusal={refusal} />
      </>
    );
  return (
    <>
      <Button
        icon={<Icon of={Undo2} />}
        aria-expanded={asked}
        disabled={busy}
        onClick={() => setAsked(!asked)}
      >
        {coaching.giveBack}
      </Button>
      {asked && (
        <fieldset className="return-reasons">
          <legend>{coaching.because}</legend>
          {RETURN_REASONS.map((reason) => (
            <Button key={reason} onClick={() => void giveBack(reason)}>
              {coaching.reason(reason)}
            </Button>
          ))}
        </fieldset>
      )}
      <Refused refusal={refusal} />
    </>
  );
}
