import { nanoid } from 'nanoid';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { RoomCommand } from '../../shared/room/commands.ts';
import { EVENT_VERSION, type RoomEvent, type Seat } from '../../shared/room/events.ts';
import { mayRead } from '../../shared/room/seen.ts';
import type { TeamId } from '../../shared/room/state.ts';
import type { Answer, ClientCommand, Fetched, RoomInList, WireRefusal } from '../../shared/wire/protocol.ts';
import { checkDesign } from '../../shared/wire/schemas.ts';
import { EntryJudge } from '../judging/entries.ts';
import type { Judging } from '../judging/judging.ts';
import type { EventLog, SeatRecord, StoredDocument } from '../log/event-log.ts';
import type { Meter } from '../meter.ts';
import { hashOf, newToken } from '../seats/tokens.ts';
import { settledWithin } from '../settled.ts';
import { Deadlines } from './deadlines.ts';
import { storedChallenge, storedDesign, withoutTeachersPart } from './documents.ts';
import { LiveRoom } from './live-room.ts';
import { Newest } from './newest.ts';
import { newWord, wordTyped } from './words.ts';

/** A room as this process has it at hand. */
export interface OpenRoom {
  readonly room: LiveRoom;
  readonly newest: Newest;
}

/** Who must be told. The sockets listen; a test may listen too. */
export interface Outlet {
  readonly events: (room: LiveRoom, events: readonly RoomEvent[]) => void;
  readonly opened: (room: OpenRoom) => void;
}

export interface RoomsParts {
  readonly log: EventLog;
  readonly judging: Judging;
  readonly now: () => number;
  /** A ready challenge by its key. */
  readonly challenge: (key: string) => Challenge | undefined;
  readonly trouble: (what: string, error: unknown) => void;
  readonly meter: Meter;
}

export type Opened =
  | { readonly ok: true; readonly room: string; readonly word: string }
  | { readonly ok: false; readonly refusal: WireRefusal };

export type Joined =
  | { readonly ok: true; readonly token: string; readonly team: TeamId }
  | { readonly ok: false; readonly refusal: WireRefusal };

/** What a new room begins with: `events` gets the room's id and word. */
export interface Beginning {
  readonly word: string | null;
  readonly events: (room: string, word: string) => readonly RoomEvent[];
  readonly documents: readonly StoredDocument[];
}

const MOST_WORDS_TRIED = 40;
/** Rooms in which time may be running or an entry waiting when the server comes back. */
const ROOMS_WOKEN = 20;

const SERVER: Seat = { role: 'server' };
const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;
const nobody: Outlet = { events: () => undefined, opened: () => undefined };

/** All rooms of this server: finds them, opens them, carries commands into them. */
export class Rooms {
  readonly #parts: RoomsParts;
  readonly #judge: EntryJudge;
  readonly #deadlines: Deadlines;
  readonly #open = new Map<string, Promise<OpenRoom | undefined>>();
  #outlet: Outlet = nobody;
  #newest: string | null = null;

  constructor(parts: RoomsParts) {
    this.#parts = parts;
    this.#deadlines = new Deadlines(parts.now, (error) => parts.trouble('deadline', error));
    this.#judge = new EntryJudge({
      log: parts.log,
      judging: parts.judging,
      failed: (room, entry, error) => parts.trouble(`judging entry ${entry} of room ${room}`, error),
    });
  }

  /** Names who hears of events. Call before anything else. */
  tell(outlet: Outlet): void {
    this.#outlet = outlet;
  }

  /** Goes on where the last process stopped: running building times, entries without a verdict. */
  async start(): Promise<void> {
    const records = await this.#parts.log.rooms();
    this.#newest = records[0]?.id ?? null;
    for (const { id } of records.slice(0, ROOMS_WOKEN)) await this.byId(id);
  }

  byId(id: string): Promise<OpenRoom | undefined> {
    const known = this.#open.get(id);
    if (known) return known;
    const loading = this.#load(id);
    this.#open.set(id, loading);
    void loading.then(
      (found) => !found && this.#open.delete(id),
      () => this.#open.delete(id),
    );
    return loading;
  }

  async #load(id: string): Promise<OpenRoom | undefined> {
    const { log, now, meter } = this.#parts;
    const newest = await Newest.load(log, id);
    const told = (r: LiveRoom, events: readonly RoomEvent[]) => {
      newest.look(events);
      this.#told(r, events);
    };
    const room = await LiveRoom.load({ log, now, meter, told }, id);
    if (!room) return undefined;
    this.#deadlines.look(room);
    this.#judge.look(room);
    return { room, newest };
  }

  #told(room: LiveRoom, events: readonly RoomEvent[]): void {
    this.#deadlines.look(room);
    this.#judge.look(room);
    this.#outlet.events(room, events);
  }

  async byWord(word: string): Promise<OpenRoom | undefined> {
    const record = await this.#parts.log.roomByWord(wordTyped(word));
    return record && this.byId(record.id);
  }

  async newest(): Promise<OpenRoom | undefined> {
    return this.#newest === null ? undefined : this.byId(this.#newest);
  }

  async list(): Promise<RoomInList[]> {
    const records = await this.#parts.log.rooms();
    return records.map(({ id, word, openedAt }) => ({ room: id, word, openedAt }));
  }

  /** Opens an empty room under a free word. */
  open(chargerWatched: boolean): Promise<Opened> {
    const at = this.#parts.now();
    return this.begin({
      word: null,
      documents: [],
      events: (room, word) => [
        { seq: 1, at, version: EVENT_VERSION, fact: { kind: 'opened', room, word, chargerWatched } },
      ],
    });
  }

  /** Opens a room with the given past, under its own word where that is free. */
  async begin(beginning: Beginning): Promise<Opened> {
    for (let tried = 0; tried < MOST_WORDS_TRIED; tried++) {
      const word = tried === 0 && beginning.word !== null ? beginning.word : newWord();
      const id = nanoid(12);
      const record = { id, word, openedAt: this.#parts.now() };
      const { documents } = beginning;
      const result = await this.#parts.log.openRoom(record, {
        events: beginning.events(id, word),
        documents,
      });
      if (result === 'full') return refused({ code: 'store-full' });
      if (result === 'taken') continue;
      this.#newest = id;
      const opened = await this.byId(id);
      if (opened) this.#outlet.opened(opened);
      return { ok: true, room: id, word };
    }
    return refused({ code: 'server-trouble' });
  }

  /** A seat for the holder of `token`: the one it has in this room, or a new one. */
  async join({ room }: OpenRoom, token: string | undefined): Promise<Joined> {
    const known = await this.seat(token);
    if (token && known?.room === room.state.id) return { ok: true, token, team: known.team };
    const own = token && !known ? token : newToken();
    const team = nanoid(8);
    const seat = { tokenHash: hashOf(own), room: room.state.id, team };
    try {
      const command: RoomCommand = { kind: 'join', team };
      const answer = await room.carryOut({ seat: SERVER, id: null, command, seats: [seat] });
      return answer.ok ? { ok: true, token: own, team } : answer;
    } catch (error) {
      // The same browser asked twice at once, and the other request was faster.
      const now = await this.seat(own);
      if (now?.room === room.state.id) return { ok: true, token: own, team: now.team };
      this.#parts.trouble('joining', error);
      return refused({ code: 'server-trouble' });
    }
  }

  async seat(token: string | undefined): Promise<SeatRecord | undefined> {
    return token === undefined ? undefined : this.#parts.log.seat(hashOf(token));
  }

  /** A client's command, whose form has been checked. */
  async take(room: LiveRoom, seat: Seat, { id, ask }: ClientCommand): Promise<Answer> {
    try {
      if (ask.kind === 'hand-in') {
        const design = checkDesign(ask.design);
        if (!design.ok) return design;
        const document = storedDesign(design.value);
        const command = { kind: ask.kind, round: ask.round, entry: nanoid(10), design: document.id };
        return await room.carryOut({ seat, id, command, documents: [document] });
      }
      if (ask.kind === 'choose-challenge') {
        const challenge = this.#parts.challenge(ask.key);
        if (!challenge) return refused({ code: 'unknown-challenge', key: ask.key });
        const document = storedChallenge(challenge);
        const command = { kind: ask.kind, key: ask.key, challenge: document.id };
        return await room.carryOut({ seat, id, command, documents: [document] });
      }
      return await room.carryOut({ seat, id, command: ask });
    } catch (error) {
      this.#parts.trouble(`command ${ask.kind}`, error);
      return refused({ code: 'server-trouble' });
    }
  }

  /** A document of the room, for those who may read it; teams don't get the teacher's part of a challenge. */
  async read(room: LiveRoom, seat: Seat, id: string): Promise<Fetched> {
    const unknown = refused({ code: 'unknown-document' });
    if (!mayRead(room.state, seat, id)) return unknown;
    const document = await this.#parts.log.document(room.state.id, id);
    if (!document) return unknown;
    const body: unknown = JSON.parse(document.body);
    const whole = document.kind !== 'challenge' || seat.role === 'desk';
    return { ok: true, kind: document.kind, body: whole ? body : withoutTeachersPart(body) };
  }

  /** Documents of a room as they are kept, for a download of the whole room. */
  documents(room: LiveRoom): Promise<StoredDocument[]> {
    return this.#parts.log.documents(room.state.id);
  }

  counts(): { readonly rooms: number; readonly judging: number } {
    return { rooms: this.#open.size, judging: this.#judge.size };
  }

  async storeAnswers(): Promise<boolean> {
    try {
      await this.#parts.log.roomByWord('');
      return true;
    } catch (error) {
      this.#parts.trouble('the store does not answer', error);
      return false;
    }
  }

  /** Lets judging that has begun end within `withinMs`, and writes what is still only in memory. */
  async close(withinMs: number): Promise<void> {
    this.#deadlines.close();
    this.#judge.stop();
    await settledWithin(this.#judge.stopped(), withinMs);
    await this.#parts.judging.close();
    await this.#judge.stopped();
    for (const opening of this.#open.values()) {
      const open = await opening.catch(() => undefined);
      await open?.room.inTurn(() => undefined);
      await open?.newest.keep();
    }
  }
}
