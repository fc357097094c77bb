import { setTimeout as pause } from 'node:timers/promises';
import type { Millis } from '../../shared/geometry/units.ts';
import { apply, stateOf } from '../../shared/room/apply.ts';
import type { RoomCommand } from '../../shared/room/commands.ts';
import { decide } from '../../shared/room/decide.ts';
import { EVENT_VERSION, type RoomEvent, type RoomFact, type Seat } from '../../shared/room/events.ts';
import type { RoomState, TeamId } from '../../shared/room/state.ts';
import { upgraded } from '../../shared/room/upgrade.ts';
import type { Answer, CommandId, WireRefusal } from '../../shared/wire/protocol.ts';
import type { AnswerRecord, EventLog, SeatRecord, StoredDocument } from '../log/event-log.ts';
import type { Meter } from '../meter.ts';

/** A command as it reaches a room, with what must be kept together with it. */
export interface Order {
  readonly seat: Seat;
  /** The client's own id of the command; null for the server's. */
  readonly id: CommandId | null;
  readonly command: RoomCommand;
  readonly documents?: readonly StoredDocument[];
  readonly seats?: readonly SeatRecord[];
  /** All earlier seats of this team become void. */
  readonly freed?: TeamId;
}

export interface RoomParts {
  readonly log: EventLog;
  readonly now: () => number;
  readonly meter: Pick<Meter, 'appended'>;
  /** Called with the events that are new and durable: `own` ones this process has just appended. */
  readonly told: (room: LiveRoom, events: readonly RoomEvent[], own: boolean) => void;
}

/**
 * A clash means that another process was faster. Several busy ones would go on clashing: after the
 * first few each waits a random time, at most so many ms longer for every clash, so that one gets through.
 */
const CLASHES_AT_ONCE = 2;
const LONGER_MS = 2;
const MOST_CLASHES = 30;

export const seatKey = (seat: Seat): string => (seat.role === 'team' ? `team ${seat.team}` : seat.role);

const refused = (refusal: WireRefusal): Answer => ({ ok: false, refusal });

/**
 * A room in this process: the events so far, their fold, and one turn after another. Whatever is told
 * to a page inside a turn stands between two appends, so no page ever sees a hole.
 */
export class LiveRoom {
  readonly #parts: RoomParts;
  #events: RoomEvent[];
  #state: RoomState;
  #ended = false;
  #turn: Promise<unknown> = Promise.resolve();

  private constructor(parts: RoomParts, events: RoomEvent[], state: RoomState) {
    this.#parts = parts;
    this.#events = events;
    this.#state = state;
  }

  /** The room from its log; undefined where the log has none. */
  static async load(parts: RoomParts, id: string): Promise<LiveRoom | undefined> {
    const events = upgraded(await parts.log.eventsAfter(id, 0));
    const state = stateOf(events);
    return state && new LiveRoom(parts, events, state);
  }

  get state(): RoomState {
    return this.#state;
  }

  get events(): readonly RoomEvent[] {
    return this.#events;
  }

  /** Whether the room is to be erased, and takes nothing more. */
  get ended(): boolean {
    return this.#ended;
  }

  /** Lets what has begun come to its end, and takes nothing from then on. */
  end(): Promise<void> {
    this.#ended = true;
    return this.inTurn(() => undefined);
  }

  /** Runs `work` when everything before it is done. */
  inTurn<T>(work: () => T | Promise<T>): Promise<T> {
    const mine = this.#turn.then(work);
    this.#turn = mine.catch(() => undefined);
    return mine;
  }

  /**
   * Decides, appends, and answers once that is durable. That a command is a repeat shows when its answer
   * is appended for the second time: then nothing is written and the first answer holds. Throws only
   * what the log throws.
   */
  carryOut(order: Order): Promise<Answer> {
    return this.inTurn(() => this.#carryOut(order));
  }

  async #carryOut(order: Order): Promise<Answer> {
    if (this.#ended) return refused({ code: 'unknown-room' });
    for (let clashes = 0; clashes < MOST_CLASHES; clashes++) {
      if (clashes > CLASHES_AT_ONCE) await pause(Math.random() * LONGER_MS * clashes);
      const now = this.#now();
      const decision = decide(this.#state, order.command, order.seat, now);
      if (!decision.ok) return this.#remember(order, refused(decision.refusal));
      const events = this.#numbered(decision.facts, now);
      const answer: Answer = { ok: true, seq: this.#state.seq + events.length };
      const result = await this.#append(order, events, answer);
      if (result === 'done') {
        this.#take(events, true);
        return answer;
      }
      if (result === 'full') return this.#firstOr(order, refused({ code: 'store-full' }));
      await this.#readOn();
      const other = await this.#firstAnswer(order);
      if (other) return other;
    }
    // Nothing was written; pages send it again by themselves.
    return refused({ code: 'too-fast' });
  }

  /** The clock of a machine may be set back in the middle of a lesson; a room's time never goes back. */
  #now(): Millis {
    return Math.max(this.#parts.now(), this.#events.at(-1)?.at ?? 0);
  }

  #numbered(facts: readonly RoomFact[], at: Millis): RoomEvent[] {
    const { seq } = this.#state;
    return facts.map((fact, i) => ({ seq: seq + 1 + i, at, version: EVENT_VERSION, fact }));
  }

  async #append(order: Order, events: readonly RoomEvent[], answer: Answer) {
    const record = this.#answerRecord(order, answer);
    const began = performance.now();
    const result = await this.#parts.log.append(this.#state.id, {
      events,
      documents: order.documents ?? [],
      seats: order.seats ?? [],
      ...(order.freed !== undefined && { freed: order.freed }),
      ...(record && { answer: record }),
    });
    this.#parts.meter.appended((performance.now() - began) / 1000);
    return result;
  }

  #answerRecord(order: Order, answer: Answer): AnswerRecord | undefined {
    return order.id === null ? undefined : { seat: seatKey(order.seat), command: order.id, answer };
  }

  async #firstAnswer(order: Order): Promise<Answer | undefined> {
    if (order.id === null) return undefined;
    return this.#parts.log.answer(this.#state.id, seatKey(order.seat), order.id);
  }

  async #firstOr(order: Order, answer: Answer): Promise<Answer> {
    return (await this.#firstAnswer(order)) ?? answer;
  }

  /** A refusal is an answer like any other: a repeat must not be decided anew on a later state. */
  async #remember(order: Order, answer: Answer): Promise<Answer> {
    const record = this.#answerRecord(order, answer);
    if (!record) return answer;
    const result = await this.#parts.log.append(this.#state.id, { events: [], answer: record });
    if (result === 'done') return answer;
    return this.#firstOr(order, result === 'full' ? refused({ code: 'store-full' }) : answer);
  }

  /** Reads on where the log may have events up to `seq` that another process has appended. */
  catchUp(seq = Number.POSITIVE_INFINITY): Promise<void> {
    return this.inTurn(() => (seq > this.#state.seq ? this.#readOn() : undefined));
  }

  async #readOn(): Promise<void> {
    const events = await this.#parts.log.eventsAfter(this.#state.id, this.#state.seq);
    this.#take(upgraded(events, this.#state), false);
  }

  #take(events: readonly RoomEvent[], own: boolean): void {
    if (events.length === 0) return;
    this.#events.push(...events);
    this.#state = events.reduce(apply, this.#state);
    this.#parts.told(this, events, own);
  }
}
