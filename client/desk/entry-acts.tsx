import { Presentation } from 'lucide-react';
import type { Entry, RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { LateSwitch } from './late.tsx';
import { ReturnEntry } from './return-entry.tsx';
import { useWholeWords } from './whole-words.ts';

interface ActsProps {
  readonly room: RoomState;
  readonly entry: Entry;
}

/** What the desk can do with an entry. */
export function EntryActs({ room, entry }: ActsProps) {
  return (
    <>
      <StageButton room={room} entry={entry} />
      {entry.unjudged && <JudgeAgain entry={entry} />}
      {!entry.returned && <LateSwitch entry={entry} />}
      <ReturnEntry key={entry.id} room={room} entry={entry} />
    </>
  );
}

function JudgeAgain({ entry }: { readonly entry: Entry }) {
  const { desk } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  return (
    <>
      <Button disabled={busy} onClick={() => void ask({ kind: 'judge-again', entry: entry.id })}>
        {desk.team.judgeAgain}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}

function StageButton({ room, entry }: ActsProps) {
  const { desk } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  if (room.phase !== 'show' || !entry.verdict) return null;
  const on = room.stage.includes(entry.id);
  return (
    <>
      <Button
        icon={<Icon of={Presentation} />}
        aria-pressed={on}
        disabled={busy}
        onClick={() => void ask({ kind: 'stage', entries: on ? [] : [entry.id] })}
      >
        {on ? desk.team.showing : desk.team.show}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}
