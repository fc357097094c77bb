import { createStore, get, set } from 'idb-keyval';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { openedState } from '../../shared/room/apply.ts';
import type { DocumentId, RoomState } from '../../shared/room/state.ts';
import type { Link } from '../link/connect.ts';
import type { Kept } from '../link/state.ts';
import { currentRound } from '../parts/figures.ts';
import { loadDocument, takeUpDocument } from '../parts/use-document.ts';

/** What a tablet needs to go on with while the server is away: its room, its seat, the challenge. */
interface KeptRoom {
  /** The page's own clock when it was kept, ms. */
  readonly at: number;
  readonly link: Kept;
  readonly challenge: { readonly id: DocumentId; readonly body: unknown } | null;
}

/** A server that has said nothing for so long after the page was opened is taken for away, ms. */
const PATIENCE_MS = 2500;
/** A room kept for longer belongs to another lesson. */
const KEPT_MS = 4 * 3_600_000;

const shelf = createStore('harbour-lines-room', 'room');

async function keep(link: Link): Promise<void> {
  const { room, you, clockOffset, status } = link.state();
  if (!room || !you || status.kind !== 'live') return;
  const id = room.rounds[currentRound(room)]?.challenge ?? null;
  const challenge = id === null ? null : await loadDocument(link, 'challenge', id);
  const body =
    id !== null && challenge?.kind === 'here'
      ? { id, body: writeDocument(Challenge, challenge.value) }
      : null;
  const kept: KeptRoom = { at: Date.now(), link: { room, you, clockOffset }, challenge: body };
  await set('room', kept, shelf);
}

/** An older page knew nothing of some parts of a room: those are as they are in a new one. */
function completed(room: RoomState): RoomState {
  const opened = { kind: 'opened', room: room.id, word: room.word, chargerWatched: false } as const;
  return { ...openedState(opened, { seq: room.seq, at: room.openedAt }), ...room };
}

async function goOn(link: Link): Promise<void> {
  const kept = await get<KeptRoom>('room', shelf);
  if (!kept || Date.now() - kept.at > KEPT_MS) return;
  if (kept.challenge) takeUpDocument('challenge', kept.challenge.id, kept.challenge.body);
  link.takeUp({ ...kept.link, room: completed(kept.link.room) });
}

/**
 * Keeps the newest room in this browser, and goes on with it when the page is opened while the server
 * is away. A browser without storage only waits, as it would without this.
 */
export function keepRoom(link: Link): void {
  const quietly = (work: Promise<void>) => void work.catch(() => undefined);
  let before: RoomState | null = null;
  link.subscribe(() => {
    const { room } = link.state();
    if (room === before) return;
    before = room;
    quietly(keep(link));
  });
  setTimeout(() => quietly(goOn(link)), PATIENCE_MS);
}
