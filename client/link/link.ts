import type { Millis } from '../../shared/geometry/units.ts';
import type { DocumentId, TeamId } from '../../shared/room/state.ts';
import {
  type Answer,
  type ClientAsk,
  type Fetched,
  type Handshake,
  type LatestDown,
  type LatestUp,
  PROTOCOL_VERSION,
  type Welcome,
} from '../../shared/wire/protocol.ts';
import { Documents } from './documents.ts';
import { foldEvents, foldLatest, foldWelcome, helloOf } from './fold.ts';
import { LatestSender, type Timers } from './latest-up.ts';
import { NOTHING_KEPT, Outbox, type Pending, type Shelf } from './outbox.ts';
import { tooLarge, valueTooLarge } from './size.ts';
import { FIRST_STATE, type Kept, type LinkState } from './state.ts';
import type { OpenWire, Wire } from './wire.ts';

export interface LinkParts {
  readonly handshake: Handshake;
  readonly openWire: OpenWire;
  readonly shelf: Shelf;
  readonly timers: Timers;
  readonly newId: () => string;
}

/** How long an answer may take before the link is taken for dead or the command is sent again, ms. */
const ANSWER_MS = 6000;
/** A tablet that woke up asks the server; without an answer in this time its socket is a ghost. */
const PROBE_MS = 2500;
/** A refused seat or a room that is not open yet is asked for again. */
const ASK_AGAIN_MS = 3000;
/** How often the page's clock is looked at, and how far off it may be then, ms. */
const CLOCK = { lookMs: 5000, slackMs: 2000 } as const;

/**
 * One page's link to its room: says hello with the last number it has, folds events, sends commands
 * until they are answered. Knows nothing of the page that shows it.
 */
export class Link {
  readonly #parts: LinkParts;
  readonly #wire: Wire;
  readonly #outbox: Outbox;
  readonly #latest: LatestSender;
  readonly #listeners = new Set<() => void>();
  readonly #documents: Documents;
  #state: LinkState = FIRST_STATE;
  /** The room is what this browser kept, and no server has said that it is so. */
  #onlyKept = false;
  #greeting = false;
  /** Values that came while a hello is on its way: newer than those of its answer. */
  #early: LatestDown[] = [];
  /** Something has happened since the hello that is on its way. */
  #anew = false;
  #unwatch: () => void = () => undefined;
  #sending = false;
  #askAgain: (() => void) | null = null;

  constructor(parts: LinkParts) {
    this.#parts = parts;
    this.#outbox = new Outbox(parts.shelf);
    this.#state = { ...FIRST_STATE, ...this.#outbox.counts };
    this.#latest = new LatestSender((value) => this.#tell(value), parts.timers);
    this.#wire = parts.openWire(parts.handshake, {
      opened: () => void this.#greet(ANSWER_MS),
      closed: () => this.#closed(),
      events: (events) => this.#take(foldEvents(this.#state, events)),
      latest: (value) => this.#hear(value),
      quiet: () => this.#quiet(),
      moved: () => this.#greetAnew(),
    });
    this.#documents = new Documents(this.#wire, parts.timers, ANSWER_MS);
    this.#wire.start();
    this.#watchClock();
  }

  /** The newest state; the same object until something changes. */
  readonly state = (): LinkState => this.#state;

  /** Calls `listener` after every change; returns how to stop it. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** The server's time now, by the offset of the last welcome. */
  readonly serverNow = (): Millis => this.#parts.timers.now() + this.#state.clockOffset;

  /**
   * Asks the room for something. Resolves with the server's answer, however long the link is down;
   * what is too large is refused at once and never sent.
   */
  readonly command = (ask: ClientAsk): Promise<Answer> => {
    const id = this.#parts.newId();
    const refusal = tooLarge({ version: PROTOCOL_VERSION, id, ask });
    if (refusal) return Promise.resolve({ ok: false, refusal });
    const room = this.#state.room?.id ?? this.#parts.handshake.room;
    const answer = this.#outbox.add({ id, ask, room, team: this.#team(), at: this.#parts.timers.now() });
    this.#set({ ...this.#state, ...this.#outbox.counts });
    void this.#sendWaiting();
    return answer;
  };

  /** A document by its id. Documents never change, so one that came is kept. */
  readonly fetchDocument = (id: DocumentId): Promise<Fetched> => this.#documents.fetch(id);

  /**
   * Shows a room that this browser kept, where no server has answered since the page was opened. What
   * the server says first takes its place.
   */
  readonly takeUp = (kept: Kept): void => {
    if (this.#state.room || this.#state.status.kind !== 'connecting') return;
    this.#onlyKept = true;
    const since = this.#parts.timers.now();
    this.#set({ ...this.#state, ...kept, status: { kind: 'away', since } });
  };

  /**
   * Puts a value on the lossy channel: only the newest of its kind ever arrives. The server passes it
   * on to the others; the stage's clock, which this page shows too, is taken up at once.
   */
  readonly tell = (value: LatestUp): void => {
    if (value.kind === 'stage-clock')
      this.#set({ ...this.#state, stageClock: { ...value.clock, since: this.serverNow() } });
    this.#latest.put(value);
  };

  /** Call when the page is looked at again: a socket that died in its sleep is found and replaced. */
  readonly wake = (): void => {
    if (this.#wire.open()) void this.#greet(PROBE_MS);
  };

  /** Makes this tab the seat's own again after it went quiet. */
  readonly takeOver = (): void => {
    if (this.#state.status.kind !== 'quiet') return;
    this.#set({ ...this.#state, status: { kind: 'connecting' } });
    this.#wire.start();
  };

  readonly close = (): void => {
    this.#askAgain?.();
    this.#unwatch();
    this.#latest.stop();
    this.#wire.drop(true);
    this.#listeners.clear();
  };

  #set(state: LinkState): void {
    if (state === this.#state) return;
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }

  /** An answer is taken up a moment after it came, and must not bring back what is older. */
  #hear(value: LatestDown): void {
    if (this.#greeting) this.#early.push(value);
    else this.#set(foldLatest(this.#state, value));
  }

  #take(folded: ReturnType<typeof foldEvents>): void {
    if ('gap' in folded) this.#greetAnew();
    else this.#set(folded.state);
  }

  /** Says hello on news that an answer on its way does not know of yet. */
  #greetAnew(): void {
    if (this.#greeting) this.#anew = true;
    else void this.#greet(ANSWER_MS);
  }

  /** A clock that was set, or stood still in its sleep, is no longer the server's by the known offset. */
  #watchClock(): void {
    const { timers } = this.#parts;
    const before = timers.now();
    this.#unwatch = timers.after(CLOCK.lookMs, () => {
      if (Math.abs(timers.now() - before - CLOCK.lookMs) > CLOCK.slackMs) this.wake();
      this.#watchClock();
    });
  }

  async #greet(timeoutMs: number): Promise<void> {
    if (this.#greeting) return;
    this.#greeting = true;
    this.#anew = false;
    this.#early = [];
    const sentAt = this.#parts.timers.now();
    try {
      const welcome = (await this.#wire.ask('hello', helloOf(this.#state), timeoutMs)) as Welcome;
      this.#greeting = false;
      this.#welcomed(welcome, sentAt);
      if (this.#anew) void this.#greet(ANSWER_MS);
    } catch {
      this.#greeting = false;
      if (this.#wire.open()) this.#wire.drop(false);
    }
  }

  #welcomed(welcome: Welcome, sentAt: number): void {
    this.#askAgain?.();
    this.#askAgain = null;
    if (!welcome.ok) {
      // What this page knows is another tablet's to tell now.
      if (welcome.refusal.code === 'no-seat') this.#latest.forget();
      if (welcome.refusal.code === 'store-away') {
        this.#storeAway();
        return;
      }
      const room = this.#onlyKept ? null : this.#state.room;
      this.#set({ ...this.#state, room, status: { kind: 'refused', refusal: welcome.refusal } });
      this.#askAgain = this.#parts.timers.after(ASK_AGAIN_MS, () => void this.#greet(ANSWER_MS));
      return;
    }
    this.#onlyKept = false;
    const now = this.#parts.timers.now();
    const folded = foldWelcome(this.#state, welcome, welcome.now - (sentAt + now) / 2);
    if ('gap' in folded) {
      // The difference does not fit what this page has: forget it and ask for everything.
      this.#set({ ...this.#state, room: null });
      this.#askAgain = this.#parts.timers.after(0, () => void this.#greet(ANSWER_MS));
      return;
    }
    this.#set(this.#early.splice(0).reduce(foldLatest, folded.state));
    this.#latest.again();
    void this.#sendWaiting();
  }

  #closed(): void {
    const { status } = this.#state;
    if (status.kind === 'quiet' || status.kind === 'away') return;
    const away = { kind: 'away', since: this.#parts.timers.now() } as const;
    this.#set({ ...this.#state, status: this.#state.room ? away : { kind: 'connecting' } });
  }

  /** The server is there, but cannot reach what it keeps: as good as no link, until it says welcome. */
  #storeAway(): void {
    this.#closed();
    this.#askAgain?.();
    this.#askAgain = this.#parts.timers.after(ASK_AGAIN_MS, () => void this.#greet(ANSWER_MS));
  }

  #quiet(): void {
    this.#set({ ...this.#state, status: { kind: 'quiet' } });
    this.#latest.forget();
    this.#wire.drop(true);
  }

  #tell(value: LatestUp): boolean {
    if (this.#state.status.kind !== 'live' || !this.#wire.open()) return false;
    const refusal = valueTooLarge(value);
    if (value.kind === 'draft') this.#set({ ...this.#state, draftRefusal: refusal });
    if (!refusal) this.#wire.tell('latest', value);
    return true;
  }

  async #sendWaiting(): Promise<void> {
    if (this.#sending) return;
    this.#sending = true;
    for (let pending = this.#next(); pending; pending = this.#next()) {
      const answer = await this.#send(pending);
      if (!answer) continue;
      this.#outbox.settle(pending.id, answer);
      this.#set({ ...this.#state, ...this.#outbox.counts });
    }
    this.#sending = false;
  }

  #next(): Pending | undefined {
    const { status, room } = this.#state;
    const ready = status.kind === 'live' && room && this.#wire.open();
    return ready ? this.#outbox.first(room.id, this.#team()) : undefined;
  }

  #team(): TeamId | null {
    const { you } = this.#state;
    return you?.role === 'team' ? you.team : null;
  }

  /** Null: no answer came, or the server was only busy; it is sent again. */
  async #send({ id, ask }: Pending): Promise<Answer | null> {
    try {
      const answer = (await this.#wire.ask(
        'command',
        { version: PROTOCOL_VERSION, id, ask },
        ANSWER_MS,
      )) as Answer;
      if (answer.ok) return answer;
      if (NOTHING_KEPT.includes(answer.refusal.code)) this.#storeAway();
      else if (answer.refusal.code !== 'too-fast') return answer;
    } catch {
      if (!this.#wire.open()) return null;
    }
    await new Promise<void>((resolve) => this.#parts.timers.after(300, resolve));
    return null;
  }
}
