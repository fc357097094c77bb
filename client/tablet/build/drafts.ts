import { createStore, get, set, type UseStore } from 'idb-keyval';
import { Design } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import type { RoomId, TeamId } from '../../../shared/room/state.ts';

/** Which drawing a draft is: one team's of one round of one room. */
export interface DraftPlace {
  readonly room: RoomId;
  readonly team: TeamId;
  readonly round: number;
}

const keyOf = ({ room, team, round }: DraftPlace): string => `${room} ${team} ${round}`;

let opened: UseStore | null = null;
const shelf = (): UseStore => {
  opened ??= createStore('harbour-lines', 'drafts');
  return opened;
};

/** A draft from its file form; anything else is no draft. */
export function readDraft(raw: unknown): Design | null {
  const read = parseDocument(Design, raw);
  return read.ok ? read.value : null;
}

/** The draft that this browser kept, or null. A browser without storage has none and still works. */
export async function keptDraft(place: DraftPlace): Promise<Design | null> {
  try {
    return readDraft(await get<unknown>(keyOf(place), shelf()));
  } catch {
    return null;
  }
}

/** Keeps a draft in this browser. Resolves to whether it could. */
export async function keepDraft(place: DraftPlace, design: Design): Promise<boolean> {
  try {
    await set(keyOf(place), writeDocument(Design, design), shelf());
    return true;
  } catch {
    return false;
  }
}
