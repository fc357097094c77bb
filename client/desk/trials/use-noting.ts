import type { Foretold, Outcome } from '../../../shared/room/driving.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import type { Link } from '../../link/connect.ts';
import { entryOf, teamOf } from '../../parts/figures.ts';
import type { Asking } from '../../parts/use-ask.ts';
import { useLink } from '../../parts/use-link.tsx';
import { useDesk } from '../desk-store.ts';
import { useUndoable } from '../use-undoable.ts';
import { useWholeWords } from '../whole-words.ts';
import { saidOf } from './said.ts';

/** One note, as it is sent. */
export interface Note {
  readonly entry: string;
  readonly robot: number;
  readonly outcome: Outcome;
  readonly foretold: Foretold | null;
}

export interface Noting extends Pick<Asking, 'refusal' | 'busy'> {
  /** Resolves to whether it was kept. */
  readonly note: (note: Note) => Promise<boolean>;
  /** By the trial's place in the list of all. */
  readonly takeBack: (place: number) => void;
}

/** Takes back the newest note of this entry and robot; another desk may have noted others meanwhile. */
function withdrawLast(link: Link, { entry, robot }: Note): void {
  const trials = link.state().room?.driving.trials ?? [];
  const trial = trials.findLastIndex(
    (each) => !each.withdrawn && each.entry === entry && each.robot === robot,
  );
  if (trial >= 0) void link.command({ kind: 'withdraw-trial', trial });
}

/** Notes trials and takes notes back; both can be undone for a while. */
export function useNoting(room: RoomState): Noting {
  const { driving, emblems } = useWholeWords();
  const { ask, askUndoable, refusal, busy } = useUndoable();
  const link = useLink();
  const offerUndo = useDesk((state) => state.offerUndo);
  const note = async (noted: Note) => {
    if (!(await ask({ kind: 'note-trial', ...noted }))) return false;
    const team = teamOf(room, entryOf(room, noted.entry)?.team ?? '');
    const name = team ? emblems.name(team.emblem) : '';
    const said = driving.noted(name, noted.robot, saidOf(noted.outcome, driving));
    offerUndo({ said, back: () => withdrawLast(link, noted) });
    return true;
  };
  const takeBack = (place: number) => {
    const trial = room.driving.trials[place];
    if (!trial) return;
    const { entry, robot, outcome, foretold } = trial;
    const again = { kind: 'note-trial', entry, robot, outcome, foretold } as const;
    void askUndoable({ kind: 'withdraw-trial', trial: place }, again, driving.tookBack);
  };
  return { note, takeBack, refusal, busy };
}
