import { Link } from '../../../../client/link/link.ts';
import { memoryShelf, type Pending, type Shelf } from '../../../../client/link/outbox.ts';
import type { OpenWire, WireListener } from '../../../../client/link/wire.ts';
import { FIRST_BOARD } from '../../../../shared/room/board.ts';
import { NO_COACHING } from '../../../../shared/room/coaching.ts';
import { USUAL_CONDITIONS } from '../../../../shared/room/conditions.ts';
import { NO_DRIVING } from '../../../../shared/room/driving.ts';
import type { RoomEvent, RoomFact } from '../../../../shared/room/events.ts';
import { NO_PLAN } from '../../../../shared/room/plan.ts';
import type { RoomState } from '../../../../shared/room/state.ts';
import type { Welcome } from '../../../../shared/wire/protocol.ts';

/** A socket without a network: a test answers what the link asks, and says what comes in. */
export class FakeWire {
  readonly asked: { name: string; body: unknown; answer: (value: unknown) => void; fail: () => void }[] = [];
  readonly told: unknown[] = [];
  isOpen = false;
  drops = 0;
  stopped = false;
  starts = 0;
  listener!: WireListener;

  readonly open: OpenWire = (_, listener) => {
    this.listener = listener;
    return {
      open: () => this.isOpen,
      ask: (name, body) =>
        new Promise((resolve, reject) => {
          this.asked.push({ name, body, answer: resolve, fail: () => reject(new Error('no answer')) });
        }),
      tell: (_name, body) => this.told.push(body),
      drop: (forGood) => {
        this.drops++;
        this.stopped = forGood;
        this.close();
      },
      start: () => {
        this.starts++;
        this.stopped = false;
      },
    };
  };

  connect(): void {
    this.isOpen = true;
    this.listener.opened();
  }

  close(): void {
    if (!this.isOpen) return;
    this.isOpen = false;
    this.listener.closed();
    for (const each of this.asked.splice(0)) each.fail();
  }

  /** Answers the oldest open question of this kind. */
  async answer(name: string, value: unknown): Promise<void> {
    const i = this.asked.findIndex((each) => each.name === name);
    if (i < 0) throw new Error(`nothing was asked as ${name}`);
    this.asked.splice(i, 1)[0]!.answer(value);
    await settled();
  }

  bodies(name: string): unknown[] {
    return this.asked.filter((each) => each.name === name).map((each) => each.body);
  }
}

/** Lets promises that can go on go on. */
export const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** A clock that only moves when it is told to. */
export class FakeTimers {
  time = 1000;
  #waiting: { at: number; work: () => void }[] = [];
  readonly now = () => this.time;
  readonly after = (ms: number, work: () => void) => {
    const entry = { at: this.time + ms, work };
    this.#waiting.push(entry);
    return () => {
      this.#waiting = this.#waiting.filter((each) => each !== entry);
    };
  };

  /** Sets the clock, which is no time that passes: what waits goes on waiting as long. */
  set(by: number): void {
    this.time += by;
    for (const each of this.#waiting) each.at += by;
  }

  async pass(ms: number): Promise<void> {
    this.time += ms;
    const due = this.#waiting.filter((each) => each.at <= this.time);
    this.#waiting = this.#waiting.filter((each) => each.at > this.time);
    for (const each of due) each.work();
    await settled();
  }
}

export interface FakeLink {
  readonly link: Link;
  readonly wire: FakeWire;
  readonly timers: FakeTimers;
}

export function fakeLink(shelf: Shelf = memoryShelf()): FakeLink {
  const wire = new FakeWire();
  const timers = new FakeTimers();
  let ids = 0;
  const link = new Link({
    handshake: { page: 'desk', room: null },
    openWire: wire.open,
    shelf,
    timers,
    newId: () => `id-${++ids}`,
  });
  return { link, wire, timers };
}

export const roomState = (seq: number, change: Partial<RoomState> = {}): RoomState => ({
  id: 'room',
  word: 'plum-42',
  seq,
  openedAt: 0,
  phase: 'gather',
  phaseSince: 0,
  spent: [],
  variedSheets: false,
  chargerWatched: false,
  calibrations: [],
  teams: [],
  removed: [],
  kit: null,
  rounds: [],
  building: null,
  lookHere: false,
  paused: null,
  standingsShown: false,
  help: 'mend',
  tries: [],
  entries: [],
  checks: [],
  stage: [],
  board: FIRST_BOARD,
  coaching: NO_COACHING,
  conditions: USUAL_CONDITIONS,
  plan: NO_PLAN,
  driving: NO_DRIVING,
  ...change,
});

export const welcome = (
  change: Partial<Extract<Welcome, { ok: true }>> = {},
): Extract<Welcome, { ok: true }> => ({
  ok: true,
  room: 'room',
  you: { role: 'desk' },
  now: 5000,
  events: [],
  snapshot: roomState(3),
  at: 3,
  latest: [],
  ...change,
});

export const event = (seq: number, fact: RoomFact | null): RoomEvent => ({ seq, at: seq, version: 1, fact });
export const lookHere = (seq: number, on = true): RoomEvent => event(seq, { kind: 'look-here', on });

export const pending = (id: string, change: Partial<Pending> = {}): Pending => ({
  id,
  ask: { kind: 'end-building' },
  room: null,
  team: null,
  at: 0,
  ...change,
});
