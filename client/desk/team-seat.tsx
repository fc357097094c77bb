import { DoorOpen, Moon, Sun } from 'lucide-react';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useDesk } from './desk-store.ts';
import { MoveSeat } from './move-seat.tsx';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';
import './team-seat.css';

/** A team's seat: another tablet, a tablet that rests, out of the room. */
export function TeamSeatDialog({ room }: { readonly room: RoomState }) {
  const { desk, emblems } = useWholeWords();
  const { seatOf, openSeat } = useDesk();
  const team = room.teams.find((each) => each.id === seatOf);
  const name = team ? emblems.name(team.emblem) : '';
  return (
    <Dialog
      open={team !== undefined}
      title={desk.seats.of(name)}
      closeWord={desk.close}
      onClose={() => openSeat(null)}
    >
      {team && (
        <div className="team-seat">
          <MoveSeat key={team.id} room={room} team={team} />
          <RestSeat team={team} name={name} />
          <RemoveTeam team={team} name={name} />
        </div>
      )}
    </Dialog>
  );
}

interface PartProps {
  readonly team: Team;
  readonly name: string;
}

function RestSeat({ team, name }: PartProps) {
  const { seats, undo } = useWholeWords().desk;
  const { ask, askUndoable, refusal, busy } = useUndoable();
  const { openSeat } = useDesk();
  const keep = { kind: 'keep-seat', team: team.id } as const;
  const free = async () => {
    if (await askUndoable({ kind: 'free-seat', team: team.id }, keep, undo.freed(name))) openSeat(null);
  };
  return (
    <section>
      <h3>{seats.rest}</h3>
      <p>{team.seatFree ? seats.isFree : seats.restHow}</p>
      <Button
        icon={<Icon of={team.seatFree ? Sun : Moon} />}
        disabled={busy}
        onClick={() => void (team.seatFree ? ask(keep) : free())}
      >
        {team.seatFree ? seats.keep : seats.free}
      </Button>
      <Refused refusal={refusal} />
    </section>
  );
}

function RemoveTeam({ team, name }: PartProps) {
  const { seats, undo } = useWholeWords().desk;
  const { askUndoable, refusal, busy } = useUndoable();
  const { openSeat } = useDesk();
  const remove = async () => {
    const back = { kind: 'put-back-team', team: team.id } as const;
    if (await askUndoable({ kind: 'remove-team', team: team.id }, back, undo.removed(name))) openSeat(null);
  };
  return (
    <section>
      <h3>{seats.remove}</h3>
      <p>{seats.removeHow}</p>
      <Button icon={<Icon of={DoorOpen} />} disabled={busy} onClick={() => void remove()}>
        {seats.removeGo}
      </Button>
      <Refused refusal={refusal} />
    </section>
  );
}
