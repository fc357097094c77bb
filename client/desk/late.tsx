import { Check, X } from 'lucide-react';
import type { Entry, RoomState } from '../../shared/room/state.ts';
import { LIMITS } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { teamOf, waitingLate } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';
import './late.css';

/** Has late entries count, or no longer, and offers to take that back. */
function useTakeLate(entries: readonly Entry[], on: boolean) {
  const { undo } = useWholeWords().desk;
  const { askUndoable, refusal, busy } = useUndoable();
  const ids = entries.slice(0, LIMITS.lateAtOnce).map((entry) => entry.id);
  const command = { kind: 'take-late', entries: ids, on } as const;
  const said = on ? undo.lateTaken(ids.length) : undo.lateLeft(ids.length);
  const take = () => askUndoable(command, { ...command, on: !on }, said);
  return { take, refusal, busy };
}

/** What came after the time, which counts once the desk says so: all of it in one line. */
export function LateOnes({ room }: { readonly room: RoomState }) {
  const { late } = useWholeWords().desk;
  const waiting = waitingLate(room);
  const { take, refusal, busy } = useTakeLate(waiting, true);
  if (waiting.length === 0) return null;
  const teams = [...new Set(waiting.map((entry) => entry.team))].flatMap((id) => teamOf(room, id) ?? []);
  return (
    <section className="late-ones" aria-label={late.waiting(waiting.length)}>
      <strong>{late.waiting(waiting.length)}</strong>
      {teams.map((team) => (
        <EmblemBadge key={team.id} emblem={team.emblem} size={18} />
      ))}
      <Button icon={<Icon of={Check} />} disabled={busy} onClick={() => void take()}>
        {late.takeAll(waiting.length)}
      </Button>
      <Refused refusal={refusal} />
    </section>
  );
}

/** Beside one late entry: it counts, or not. */
export function LateSwitch({ entry }: { readonly entry: Entry }) {
  const { late } = useWholeWords().desk;
  const { take, refusal, busy } = useTakeLate([entry], !entry.taken);
  if (!entry.late) return null;
  return (
    <>
      <Button icon={<Icon of={entry.taken ? X : Check} />} disabled={busy} onClick={() => void take()}>
        {entry.taken ? late.leave : late.take}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}
