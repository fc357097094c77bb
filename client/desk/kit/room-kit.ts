import { useMemo } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { type ReadyChallenge, readyChallenges } from '../../../shared/library/ready.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { hereOf, useDocument } from '../../parts/use-document.ts';

/** The kit that a room's next challenges are made for; null until it is here. */
export function useRoomKit({ kit }: Pick<RoomState, 'kit'>): Kit | null {
  const loaded = hereOf(useDocument('kit', kit));
  return kit === null ? DEMO_KIT : loaded;
}

/** Every ready challenge as it stands with the room's kit; none until that is here. */
export function useReadyChallenges(room: Pick<RoomState, 'kit'>): readonly ReadyChallenge[] {
  const kit = useRoomKit(room);
  return useMemo(() => (kit === null ? [] : readyChallenges(kit)), [kit]);
}
