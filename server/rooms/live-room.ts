import { setTimeout as pause } from 'node:timers/promises';
import type { Millis } from '../../shared/geometry/units.ts';
import { apply, stateOf } from '../../shared/room/apply.ts';
import type { RoomCommand } from '../../shared/room/commands.ts';
import { decide } from '../../shared/room/decide.ts';
import { EVENT_VERSION, type RoomEvent, type RoomFact, type Seat } from '../../shared/room/events.ts';
import type { RoomState, TeamId } from '../../shared/room/state.ts';
import { upgraded } from '../../shared/room/upgrade.ts';
import type { Answer, CommandId, WireRefusal } from '../../shared/wire/protocol.ts';
import {
  type AnswerRecord,
  type Appended,
  type EventLog,
  type SeatRecord,
  StoreAway,
  type StoredDocument,
} from '../log/event-log.ts';
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
/** More than a class that hands in as the time ends. */
const MOST_TOGETHER = 50;

export const seatKey = (seat: Seat): string => (seat.role === 'team' ? `team ${seat.team}` : seat.role);

/** With these a room says that it could not write; they say nothing of what was asked. */
const NOT_WRITTEN: readonly string[] = ['store-full', 'too-fast'] satisfies WireRefusal['code'][];
export const isNotWritten = (answer: Answer): boolean =>
  !answer.ok && NOT_WRITTEN.includes(answer.refusal.code);

const refused = (refusal: WireRefusal): Answer => ({ ok: false, refusal });

const numbered = (facts: readonly RoomFact[], after: number, at: Millis): RoomEvent[] =>
  facts.map((fact, i) => ({ seq: after + 1 + i, at, version: EVENT_VERSION, fact }));

/** An order whose turn has not come, and who waits for the answer. */
interface Waiting {
  readonly order: Order;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * A room in this process: the events so far, their fold, and one turn after another. Whatever is told
 * to a page inside a turn stands between two appends, so no page ever sees a hole.
 */
export class LiveRoom {
  readonly #parts: RoomParts;
  #events: RoomEvent[];
  #state: RoomState;
  #ended = false;
  readonly #waiting: Waiting[] = [];
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

  /** Whether the room is no longer at hand here, and takes nothing more. */
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
   * is appended for the second time: then nothing is written and the first answer holds. Rejects only
   * with what the log throws.
   */
  carryOut(order: Order): Promise<Answer> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ order, resolve, reject });
      void this.inTurn(() => this.#carryOutWaiting());
    });
  }

  /** What has come during the turn before is appended as one, and told as one. */
  async #carryOutWaiting(): Promise<void> {
    const group = this.#nextGroup();
    try {
      await this.#carryOut(group);
    } catch (error) {
      if (group.length === 1 || error instanceof StoreAway) {
        for (const { reject } of group) reject(error);
        return;
      }
      // What the store does not take of one must not cost the others their answer.
      for (const one of group) await this.#carryOut([one]).catch(one.reject);
    }
  }

  /** The next ones that can be appended as one. What gives a seat, and a repeat of one of them, waits. */
  #nextGroup(): Waiting[] {
    const ids = new Set<string>();
    const end = this.#waiting.findIndex(({ order }, i) => {
      const id = order.id === null ? `${i}` : `${seatKey(order.seat)} ${order.id}`;
      const alone = order.seats !== undefined || order.freed !== undefined || ids.has(id);
      ids.add(id);
      return alone || i === MOST_TOGETHER;
    });
    return this.#waiting.splice(0, end === -1 ? this.#waiting.length : Math.max(1, end));
  }

  async #carryOut(group: readonly Waiting[]): Promise<void> {
    let left = group;
    const end = (answer: Answer) => {
      for (const { resolve } of left) resolve(answer);
    };
    if (this.#ended) return end(refused({ code: 'unknown-room' }));
    for (let clashes = 0; clashes < MOST_CLASHES && left.length > 0; clashes++) {
      if (clashes > CLASHES_AT_ONCE) await pause(Math.random() * LONGER_MS * clashes);
      const { events, answers } = this.#decided(left.map(({ order }) => order));
      const result = await this.#append(left, events, answers);
      if (result === 'done') {
        this.#take(events, true);
        for (const [i, { resolve }] of left.entries()) resolve(answers[i]!);
        return;
      }
      if (result === 'gone') {
        // Erased at another process, of which this one has not heard yet.
        this.#ended = true;
        return end(refused({ code: 'unknown-room' }));
      }
      if (result !== 'full') await this.#readOn();
      left = await this.#unanswered(left);
      if (result === 'full') return end(refused({ code: 'store-full' }));
    }
    // Nothing was written; pages send it again by themselves.
    end(refused({ code: 'too-fast' }));
  }

  /** What follows from some orders, each on the state that the one before has left. */
  #decided(orders: readonly Order[]): { events: readonly RoomEvent[]; answers: readonly Answer[] } {
    const at = this.#now();
    const events: RoomEvent[] = [];
    let state = this.#state;
    const answers = orders.map(({ command, seat }): Answer => {
      const decision = decide(state, command, seat, at);
      if (!decision.ok) return refused(decision.refusal);
      const own = numbered(decision.facts, state.seq, at);
      state = own.reduce(apply, state);
      events.push(...own);
      return { ok: true, seq: state.seq };
    });
    return { events, answers };
  }

  /** The clock of a machine may be set back in the middle of a lesson; a room's time never goes back. */
  #now(): Millis {
    return Math.max(this.#parts.now(), this.#events.at(-1)?.at ?? 0);
  }

  /** A refusal is an answer like any other: a repeat must not be decided anew on a later state. */
  async #append(
    group: readonly Waiting[],
    events: readonly RoomEvent[],
    answers: readonly Answer[],
  ): Promise<Appended> {
    const records = group.flatMap(({ order: { id, seat } }, i): AnswerRecord[] =>
      id === null ? [] : [{ seat: seatKey(seat), command: id, answer: answers[i]! }],
    );
    if (events.length === 0 && records.length === 0) return 'done';
    const accepted = group.filter((_, i) => answers[i]!.ok).map(({ order }) => order);
    // Who frees a seat is alone.
    const freed = accepted[0]?.freed;
    const began = performance.now();
    const result = await this.#parts.log.append(this.#state.id, {
      events,
      documents: accepted.flatMap(({ documents = [] }) => documents),
      seats: accepted.flatMap(({ seats = [] }) => seats),
      ...(freed !== undefined && { freed }),
      answers: records,
    });
    this.#parts.meter.appended((performance.now() - began) / 1000);
    return result;
  }

  /** Those without an earlier answer; the others get theirs. */
  async #unanswered(group: readonly Waiting[]): Promise<Waiting[]> {
    const left: Waiting[] = [];
    for (const one of group) {
      const { id, seat } = one.order;
      const first = id === null ? undefined : await this.#parts.log.answer(this.#state.id, seatKey(seat), id);
      if (first) one.resolve(first);
      else left.push(one);
    }
    return left;
  }

  /** Reads on where the log may have events up to `seq` that another process has appended. */
  catchUp(seq = Number.POSITIVE_INFINITY): Promise<void> {
    return this.inTurn(() => (seq > this.#state.seq && !this.#ended ? this.#readOn() : undefined));
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
