import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { type ReadyChallenge, readyChallenges } from '../../../shared/library/ready.ts';
import type { RoomId, RoomState } from '../../../shared/room/state.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { hereOf, useDocument } from '../../parts/use-document.ts';

/** The room that a kit can be used in, as the leaf of kits knows it. */
export interface KitRoom {
  readonly id: RoomId;
  /** null until it is here. */
  readonly kit: Kit | null;
  readonly choose: (kit: Kit) => Promise<boolean>;
  /** Why the last use was refused. */
  readonly refusal: WireRefusal | null;
  readonly busy: boolean;
}

/** The kit that a room's next challenges are made for; null until it is here. */
export function useRoomKit({ kit }: Pick<RoomState, 'kit'>): Kit | null {
  const loaded = hereOf(useDocument('kit', kit));
  return kit === null ? DEMO_KIT : loaded;
}

/** Worked out once a kit: several parts of the desk ask at once. */
const READY = new WeakMap<Kit, readonly ReadyChallenge[]>();
const NONE: readonly ReadyChallenge[] = [];

/** Every ready challenge as it stands with the room's kit; none until that is here. */
export function useReadyChallenges(room: Pick<RoomState, 'kit'>): readonly ReadyChallenge[] {
  const kit = useRoomKit(room);
  if (kit === null) return NONE;
  const known = READY.get(kit) ?? readyChallenges(kit);
  READY.set(kit, known);
  return known;
}
