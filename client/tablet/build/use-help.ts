import { useCallback, useState } from 'react';
import type { Design } from '../../../shared/documents/design.ts';
import type { HelpStep, RoomState, Team } from '../../../shared/room/state.ts';

/** So many tries of one's own come before the engine may mend. */
export const TRIES_BEFORE_MENDING = 2;

export interface Help {
  readonly step: HelpStep;
  /** Tries that are left until "Mend it" comes. */
  readonly triesLeft: number;
  /** Whether this very drawing has been tried. */
  readonly hasTried: (design: Design) => boolean;
  readonly noteTry: (design: Design) => void;
}

/** How this team is helped now. Tries count here at once, also while the server is away. */
export function useHelp(room: RoomState, team: Team, round: number): Help {
  const [tried, setTried] = useState<ReadonlySet<Design>>(new Set());
  const known = room.tries.filter((one) => one.round === round).length;
  const hasTried = useCallback((design: Design) => tried.has(design), [tried]);
  const noteTry = useCallback((design: Design) => setTried((before) => new Set([...before, design])), []);
  return {
    step: team.help ?? room.help,
    triesLeft: Math.max(0, TRIES_BEFORE_MENDING - Math.max(known, tried.size)),
    hasTried,
    noteTry,
  };
}
