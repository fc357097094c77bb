import { nanoid } from 'nanoid';
import type { Kit } from '../../shared/documents/kit.ts';
import type { MadeCheck } from '../../shared/evidence/closing-check.ts';
import { gentlerLines } from '../../shared/library/gentler.ts';
import type { RoomCommand } from '../../shared/room/commands.ts';
import { continuation } from '../../shared/room/decide-plan.ts';
import { EVENT_VERSION, type RoomEvent, type Seat } from '../../shared/room/events.ts';
import { mayRead } from '../../shared/room/seen.ts';
import type { DocumentId, RoomId, RoomState, TeamId } from '../../shared/room/state.ts';
import type { Answer, ClientCommand, Fetched, WireRefusal } from '../../shared/wire/protocol.ts';
import { type SeatRecord, type StoredDocument, troubleOf } from '../log/event-log.ts';
import { hashOf, newToken } from '../seats/tokens.ts';
import { askedCheck, madeCheck, type ReadDocument } from './closing-check.ts';
import {
  storedChallenge,
  storedClosingCheck,
  storedDesign,
  withoutTeachersPart,
  withoutWeather,
} from './documents.ts';
import { type HandIn, handedIn } from './handed-in.ts';
import type { LiveRoom } from './live-room.ts';
import { OpenRooms, type RoomsParts } from './open-rooms.ts';
import type { OpenRoom } from './outlet.ts';
import { kitToUse, RoomKits } from './room-kits.ts';
import { isRoomWord, newWord, wordTyped } from './words.ts';

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

export const newRoomId = (): RoomId => nanoid(12);

const MOST_WORDS_TRIED = 40;
const SERVER: Seat = { role: 'server' };
const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;

/** What can be asked of the rooms of this server: finding, opening, joining, commands, documents. */
export class Rooms extends OpenRooms {
  /** Of challenges that were handed in for, which never change; there are as many as the library has. */
  readonly #predicted = new Map<DocumentId, boolean>();
  readonly #kits: RoomKits;

  constructor(parts: RoomsParts) {
    super(parts);
    this.#kits = new RoomKits(parts.log);
  }

  async byWord(word: string): Promise<OpenRoom | undefined> {
    const typed = wordTyped(word);
    const record = typed === undefined ? undefined : await this.parts.log.roomByWord(typed);
    return record && this.byId(record.id);
  }

  /** When each of these rooms was last used; null: all rooms. */
  lastUsed(rooms: readonly RoomId[] | null): Promise<ReadonlyMap<RoomId, number>> {
    return this.parts.log.lastUsed(rooms);
  }

  /** What an empty room begins with; `before` is the lesson that it goes on from. */
  async empty(chargerWatched: boolean, before?: RoomState): Promise<Beginning> {
    const at = this.parts.now();
    const brought = before ? continuation(before) : [];
    const kit = before?.kit ? await this.parts.log.document(before.id, before.kit) : undefined;
    return {
      word: null,
      documents: kit ? [kit] : [],
      events: (room, word) =>
        [{ kind: 'opened', room, word, chargerWatched } as const, ...brought].map((fact, i) => ({
          seq: i + 1,
          at,
          version: EVENT_VERSION,
          fact,
        })),
    };
  }

  /** Opens room `id`, with its past, under its own word where that is free and one of ours. */
  async begin(id: RoomId, beginning: Beginning): Promise<Opened> {
    const others = (await this.parts.log.rooms()).length;
    const own = beginning.word !== null && isRoomWord(beginning.word) ? beginning.word : null;
    for (let tried = 0; tried < MOST_WORDS_TRIED; tried++) {
      const word = tried === 0 && own !== null ? own : newWord(others);
      const record = { id, word, openedAt: this.parts.now() };
      const { documents } = beginning;
      const result = await this.parts.log.openRoom(record, {
        events: beginning.events(id, word),
        documents,
      });
      if (result === 'full') return refused({ code: 'store-full' });
      if (result === 'taken') continue;
      await this.moveTo(id);
      this.parts.neighbours.tell({ kind: 'opened', room: id });
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
      const wasHere = known !== undefined && known.room === room.state.plan.from?.room;
      const command: RoomCommand = { kind: 'join', team, ...(wasHere && { before: known.team }) };
      const answer = await room.carryOut({ seat: SERVER, id: null, command, seats: [seat] });
      // A repeat after a clash finds the team there: it was this very one that had been appended.
      const there = answer.ok || answer.refusal.code === 'already-so';
      return there ? { ok: true, token: own, team } : answer;
    } catch (error) {
      // The same browser asked twice at once, and the other request was faster.
      const now = await this.seat(own);
      if (now?.room === room.state.id) return { ok: true, token: own, team: now.team };
      this.parts.trouble('joining', error);
      return refused(troubleOf(error));
    }
  }

  /** Another tablet has come with the desk's leave: it gets the team's seat, all earlier tokens are void. */
  async moveSeat({ room }: OpenRoom, team: TeamId): Promise<Joined> {
    const token = newToken();
    const seat = { tokenHash: hashOf(token), room: room.state.id, team };
    const command: RoomCommand = { kind: 'move-seat', team };
    const answer = await room.carryOut({ seat: SERVER, id: null, command, seats: [seat], freed: team });
    return answer.ok ? { ok: true, token, team } : answer;
  }

  async seat(token: string | undefined): Promise<SeatRecord | undefined> {
    return token === undefined ? undefined : this.parts.log.seat(hashOf(token));
  }

  /** A client's command, whose form has been checked. */
  async take(room: LiveRoom, seat: Seat, { id, ask }: ClientCommand): Promise<Answer> {
    try {
      if (ask.kind === 'hand-in' || ask.kind === 'hand-in-answers') {
        return await this.#handIn(room, seat, id, ask);
      }
      if (ask.kind === 'choose-challenge') return await this.#choose(room, seat, id, ask.key);
      if (ask.kind === 'choose-kit') {
        const kit = kitToUse(ask.kit);
        if (!kit.ok) return kit;
        const command = { kind: ask.kind, kit: kit.value?.id ?? null };
        return await room.carryOut({ seat, id, command, documents: kit.value ? [kit.value] : [] });
      }
      // What waits already may be moved, whatever has become of it.
      if (ask.kind === 'queue-challenge' && ask.place !== null && !room.state.plan.queue.includes(ask.key)) {
        const known = await this.parts.challenge(ask.key, room.state.id, await this.kitOf(room));
        if (!known) return refused({ code: 'unknown-challenge', key: ask.key });
      }
      if (ask.kind === 'start-check') return await this.#startCheck(room, seat, id, ask.questions);
      return await room.carryOut({ seat, id, command: ask });
    } catch (error) {
      this.parts.trouble(`command ${ask.kind}`, error);
      return refused(troubleOf(error));
    }
  }

  async #choose(room: LiveRoom, seat: Seat, id: string, key: string): Promise<Answer> {
    const { kit } = room.state;
    const challenge = await this.parts.challenge(key, room.state.id, await this.kitOf(room));
    if (!challenge) return refused({ code: 'unknown-challenge', key });
    const document = storedChallenge(challenge);
    const drawn = gentlerLines(challenge);
    const lines = drawn && storedDesign(drawn);
    const command = {
      kind: 'choose-challenge',
      key,
      challenge: document.id,
      ...(kit !== null && { kit }),
      ...(lines && { gentler: lines.id }),
    } as const;
    return room.carryOut({ seat, id, command, documents: lines ? [document, lines] : [document] });
  }

  /** What challenges to come are made for in a room, and what goes to paper beside any challenge. */
  kitOf(room: LiveRoom): Promise<Kit> {
    return this.#kits.of(room.state);
  }

  async #handIn(room: LiveRoom, seat: Seat, id: string, ask: HandIn): Promise<Answer> {
    const checked = handedIn(ask);
    if (!checked.ok) return checked;
    const document = checked.value;
    const isPredicted = await this.#isPredicted(room, ask.round);
    if (isPredicted !== undefined && isPredicted !== (document.kind === 'answers')) {
      return refused({ code: 'bad-form', path: 'ask', problem: 'other-way-to-play' });
    }
    const command = {
      kind: 'hand-in',
      round: ask.round,
      entry: nanoid(10),
      design: document.id,
      ...(ask.kind === 'hand-in' && { variant: ask.variant }),
    } as const;
    return room.carryOut({ seat, id, command, documents: [document] });
  }

  async #startCheck(room: LiveRoom, seat: Seat, id: string, questions: number): Promise<Answer> {
    // For anybody else nothing is worked out.
    if (seat.role !== 'desk') return refused({ code: 'not-for-this-seat' });
    const open = room.state.checks.at(-1);
    // Asked already, or by this very command before: nothing is made anew.
    if (open?.ended === false && open.key)
      return room.carryOut({
        seat,
        id,
        command: { kind: 'start-check', check: open.document, key: open.key },
      });
    const made = await madeCheck(room.state, this.#reader(room), questions);
    if (!made) return refused({ code: 'nothing-to-ask' });
    const document = storedClosingCheck(made.check);
    const command = { kind: 'start-check', check: document.id, key: made.key } as const;
    return room.carryOut({ seat, id, command, documents: [document] });
  }

  /** The room's last closing check for paper; undefined before one was asked. */
  closingCheck(room: LiveRoom): Promise<MadeCheck | undefined> {
    return askedCheck(room.state, this.#reader(room));
  }

  #reader({ state }: LiveRoom): ReadDocument {
    return (document) => this.parts.log.document(state.id, document);
  }

  /** Whether answers are handed in in this round; undefined where there is no such round. */
  async #isPredicted(room: LiveRoom, round: number): Promise<boolean | undefined> {
    const { id, rounds } = room.state;
    const chosen = rounds[round]?.challenge;
    if (chosen === undefined) return undefined;
    const known = this.#predicted.get(chosen);
    if (known !== undefined) return known;
    const challenge = await this.parts.log.document(id, chosen);
    if (!challenge) return undefined;
    const isPredicted = (JSON.parse(challenge.body) as { play?: unknown }).play === 'predict';
    this.#predicted.set(chosen, isPredicted);
    return isPredicted;
  }

  /**
   * A document of the room, for those who may read it, and of it what they may know: the teacher's part of a
   * challenge is the desk's.
   */
  async read(room: LiveRoom, seat: Seat, id: string): Promise<Fetched> {
    const unknown = refused({ code: 'unknown-document' });
    if (!mayRead(room.state, seat, id)) return unknown;
    const document = await this.parts.log.document(room.state.id, id);
    if (!document) return unknown;
    const { kind } = document;
    const body: unknown = JSON.parse(document.body);
    if (kind === 'challenge' && seat.role !== 'desk')
      return { ok: true, kind, body: withoutTeachersPart(body) };
    if (kind === 'verdict' && seat.role === 'board') return { ok: true, kind, body: withoutWeather(body) };
    return { ok: true, kind, body };
  }

  /** Documents of a room as they are kept, for a download of the whole room. */
  documents(room: LiveRoom): Promise<StoredDocument[]> {
    return this.parts.log.documents(room.state.id);
  }

  /** Why nothing can be kept now; null where all is well. */
  async storeTrouble(): Promise<ReturnType<typeof troubleOf>['code'] | null> {
    try {
      await this.parts.log.check();
      return null;
    } catch (error) {
      this.parts.trouble('the store does not answer', error);
      return troubleOf(error).code;
    }
  }
}
