import { useCallback, useEffect, useState } from 'react';
import type { LinkInList, RoomInList } from '../../../shared/wire/desks.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import type { KeptHere } from '../../../shared/wording/en/kept.ts';
import { keptHere } from '../../parts/browser-storage.ts';
import { listLinks, listRooms } from '../session.ts';

/** Everything that this desk can name. */
export interface Kept {
  readonly rooms: readonly RoomInList[];
  /** Not those that were revoked. */
  readonly links: readonly LinkInList[];
  readonly here: readonly KeptHere[];
}

export interface KeptList {
  /** null until it has been read. */
  readonly kept: Kept | null;
  readonly refusal: WireRefusal | null;
  readonly load: () => Promise<void>;
}

export function useKept(): KeptList {
  const [kept, setKept] = useState<Kept | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const load = useCallback(async () => {
    const [rooms, links, here] = await Promise.all([listRooms(), listLinks(), keptHere()]);
    if (!rooms.ok) return setRefusal(rooms.refusal);
    setRefusal(null);
    // A desk of one room has no links to give.
    const live = links.ok ? links.value.filter(({ revokedAt }) => revokedAt === null) : [];
    setKept({ rooms: rooms.value, links: live, here });
  }, []);
  useEffect(() => void load(), [load]);
  return { kept, refusal, load };
}
