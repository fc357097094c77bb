import { createHash } from 'node:crypto';
import { EVENT_VERSION, type RoomFact } from '../../shared/room/events.ts';
import type { Answer } from '../../shared/wire/protocol.ts';
import { isWhole, type Row, summed } from './sums.ts';
import type { Tables } from './tables.ts';

/** Makes sound rooms out of the rows that could be read from a damaged file. Pure. */

export type Rows = { readonly [T in keyof Tables]: readonly Tables[T][] };
/** Rows as they were read; nothing is known of their columns. */
export type FoundRows = { readonly [T in keyof Tables]: readonly Row[] };

export interface Salvaged {
  readonly rows: Rows;
  readonly rooms: number;
  readonly events: number;
  /** Events that are known to be missing; what stood behind the last one that was found is not known. */
  readonly lost: number;
}

function parsed(text: unknown): unknown {
  try {
    return typeof text === 'string' ? JSON.parse(text) : undefined;
  } catch {
    return undefined;
  }
}

const factOf = (event: Tables['events']) => parsed(event.fact) as RoomFact;
const openingOf = (events: Tables['events'][]) => {
  const fact = events[0] && factOf(events[0]);
  return events[0]?.seq === 1 && fact?.kind === 'opened' ? fact : undefined;
};

function hasSense(table: keyof Tables, row: Row): boolean {
  if (table === 'events') return typeof (parsed(row.fact) as RoomFact | null)?.kind === 'string';
  if (table === 'documents' && row.sum === null) {
    return row.id === createHash('sha256').update(String(row.body)).digest('hex');
  }
  if (table === 'answers') return parsed(row.answer) !== undefined;
  return (table !== 'latest' && table !== 'server_values') || parsed(row.value) !== undefined;
}

/** The rows of a table that are what was written once, each once, with their sums. */
function sound<T extends keyof Tables>(found: FoundRows, table: T, keys: readonly (keyof Tables[T])[]) {
  const kept = new Map<string, Tables[T]>();
  for (const { row_number: _, ...row } of found[table]) {
    if (!isWhole(table, row) || !hasSense(table, row)) continue;
    const own = summed(table, row) as unknown as Tables[T];
    kept.set(JSON.stringify(keys.map((key) => own[key])), own);
  }
  return [...kept.values()];
}

function fill(room: Tables['rooms'], found: readonly Tables['events'][]): Tables['events'][] {
  const bySeq = new Map(found.map((event) => [event.seq, event]));
  const last = Math.max(1, ...bySeq.keys());
  let at = Number(room.opened_at);
  return Array.from({ length: last }, (_, i) => {
    const known = bySeq.get(i + 1);
    at = Number(known?.at ?? at);
    if (known) return known;
    const opened: RoomFact = { kind: 'opened', room: room.id, word: room.word, chargerWatched: false };
    const fact: RoomFact = i === 0 ? opened : { kind: 'lost' };
    const row = { room: room.id, seq: i + 1, at, version: EVENT_VERSION, fact: JSON.stringify(fact) };
    return summed('events', row);
  });
}

/** Rooms by their own rows, and those of which only events are left. */
function roomsOf(rows: readonly Tables['rooms'][], events: Map<string, Tables['events'][]>) {
  const known = new Set(rows.map((room) => room.id));
  const words = new Set(rows.map((room) => room.word));
  let nameless = 0;
  const others = [...events].flatMap(([id, own]) => {
    if (known.has(id)) return [];
    let word = openingOf(own)?.word;
    while (word === undefined || words.has(word)) word = `found-${++nameless}`;
    words.add(word);
    return [summed('rooms', { id, word, opened_at: Number(own[0]?.at ?? 0) })];
  });
  return [...rows, ...others];
}

/**
 * Rooms that hang together: every number up to the last one found, in place of a lost event a fact
 * that says so; no answer to a command whose event is lost, so that it may be sent again; no seat of a
 * team that the room does not know, so that its tablet can join anew.
 */
export function salvaged(found: FoundRows): Salvaged {
  const byRoom = new Map<string, Tables['events'][]>();
  for (const event of sound(found, 'events', ['room', 'seq'])) {
    byRoom.set(event.room, [...(byRoom.get(event.room) ?? []), event]);
  }
  for (const own of byRoom.values()) own.sort((a, b) => a.seq - b.seq);
  const rooms = roomsOf(sound(found, 'rooms', ['id']), byRoom);
  const events = rooms.flatMap((room) => fill(room, byRoom.get(room.id) ?? []));
  const foundOnes = new Set([...byRoom].flatMap(([room, own]) => own.map((e) => `${room} ${e.seq}`)));
  const teams = new Set(
    events.flatMap((event) => {
      const fact = factOf(event);
      return fact.kind === 'team-joined' ? [`${event.room} ${fact.team}`] : [];
    }),
  );
  const ids = new Set(rooms.map((room) => room.id));
  const answers = sound(found, 'answers', ['room', 'seat', 'command']).filter((row) => {
    const answer = parsed(row.answer) as Answer;
    return !answer.ok || foundOnes.has(`${row.room} ${answer.seq}`);
  });
  const rows: Rows = {
    rooms,
    events,
    documents: sound(found, 'documents', ['room', 'id']),
    answers: answers.filter((row) => ids.has(row.room)),
    seats: sound(found, 'seats', ['token_hash']).filter((row) => teams.has(`${row.room} ${row.team}`)),
    latest: sound(found, 'latest', ['room', 'key']).filter((row) => ids.has(row.room)),
    server_values: sound(found, 'server_values', ['key']),
  };
  return { rows, rooms: rooms.length, events: foundOnes.size, lost: events.length - foundOnes.size };
}
