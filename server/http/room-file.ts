import type { RoomEvent } from '../../shared/room/events.ts';
import {
  checkRoomFile,
  cleanBody,
  type FiledDocument,
  ROOM_FILE,
  type RoomFile,
} from '../../shared/wire/room-file.ts';
import type { Checked } from '../../shared/wire/schemas.ts';
import type { StoredDocument } from '../log/event-log.ts';
import { storedDocument } from '../rooms/documents.ts';
import type { LiveRoom } from '../rooms/live-room.ts';
import type { Beginning } from '../rooms/rooms.ts';

/** The largest room file that is read, bytes: a long lesson of forty teams. */
export const LARGEST_ROOM_FILE = 64_000_000;

/** The room as one JSON file. */
export function writeRoomFile(room: LiveRoom, documents: readonly StoredDocument[]): string {
  const file: RoomFile = {
    ...ROOM_FILE,
    events: room.events,
    documents: documents.map(({ id, kind, body }) => ({ id, kind, body: JSON.parse(body) as unknown })),
  };
  return `${JSON.stringify(file)}\n`;
}

function readDocument(document: FiledDocument, i: number): Checked<StoredDocument> {
  const body = cleanBody(document);
  if (!body.ok) {
    const path = body.refusal.code === 'bad-form' ? body.refusal.path : 'body';
    return { ok: false, refusal: { code: 'bad-form', path: `documents.${i}.${path}`, problem: 'invalid' } };
  }
  const stored = storedDocument(document.kind, body.value);
  if (stored.id === document.id) return { ok: true, value: stored };
  return {
    ok: false,
    refusal: { code: 'bad-form', path: `documents.${i}.id`, problem: 'not-the-hash-of-its-body' },
  };
}

/** What a room file says a new room shall begin with. The room gets an id of its own. */
export function readRoomFile(input: unknown): Checked<Beginning> {
  const file = checkRoomFile(input);
  if (!file.ok) return file;
  const documents: StoredDocument[] = [];
  for (const [i, document] of file.value.documents.entries()) {
    const read = readDocument(document, i);
    if (!read.ok) return read;
    documents.push(read.value);
  }
  const { events } = file.value;
  const first = events[0]?.fact;
  const word = first?.kind === 'opened' ? first.word : null;
  return { ok: true, value: { word, documents, events: (room, w) => renamed(events, room, w) } };
}

const renamed = (events: readonly RoomEvent[], room: string, word: string): RoomEvent[] =>
  events.map((event) =>
    event.fact?.kind === 'opened' ? { ...event, fact: { ...event.fact, room, word } } : event,
  );
