import { useCallback, useState } from 'react';
import type { Design } from '../../../shared/documents/design.ts';
import type { Guess } from '../../../shared/documents/reason.ts';
import type { HelpStep } from '../../../shared/room/coaching.ts';
import type { Because, RoomState, Team } from '../../../shared/room/state.ts';

/** So many tries of one's own come before the engine may mend. */
export const TRIES_BEFORE_MENDING = 2;

/** A drawing that was tried: what was foretold, and the reason that was picked since. */
export interface Tried {
  readonly guess: Guess;
  readonly because: Because | null;
}

export interface Help {
  readonly step: HelpStep;
  /** Tries that are left until "Mend it" comes. */
  readonly triesLeft: number;
  /** How this very drawing was tried, if it was. */
  readonly triedAs: (design: Design) => Tried | undefined;
  readonly note: (design: Design, tried: Tried) => void;
}

/** How this team is helped now. Tries count here at once, also while the server is away. */
export function useHelp(room: RoomState, team: Team, round: number): Help {
  const [tried, setTried] = useState<ReadonlyMap<Design, Tried>>(new Map());
  const known = room.tries.filter((one) => one.round === round).length;
  const triedAs = useCallback((design: Design) => tried.get(design), [tried]);
  const note = useCallback(
    (design: Design, how: Tried) => setTried((before) => new Map([...before, [design, how]])),
    [],
  );
  return {
    step: team.help ?? room.help,
    triesLeft: Math.max(0, TRIES_BEFORE_MENDING - Math.max(known, tried.size)),
    triedAs,
    note,
  };
}
