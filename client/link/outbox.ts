import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { Answer, ClientAsk, CommandId, WireRefusal } from '../../shared/wire/protocol.ts';

/** A command that waits for its answer. */
export interface Pending {
  readonly id: CommandId;
  readonly ask: ClientAsk;
  /** The room for which it was meant; null when it was given before the first welcome. */
  readonly room: RoomId | null;
  /** The team that gave it; null for other pages, and before the first welcome. */
  readonly team: TeamId | null;
  /** The page's own clock when it was given, ms. */
  readonly at: number;
}

/** Where pending commands outlive a reload. */
export interface Shelf {
  load(): Pending[];
  put(pending: Pending): void;
  drop(id: CommandId): void;
}

/** The server could not keep anything: what was asked is still to be done, once it can. */
export const NOTHING_KEPT: readonly WireRefusal['code'][] = ['store-away', 'restart-needed'];

const HANDED_IN: readonly ClientAsk['kind'][] = ['hand-in', 'hand-in-answers'];
/** What a team has done is kept until it is answered; a button pressed long ago means nothing any more. */
const DONE: readonly ClientAsk['kind'][] = [...HANDED_IN, 'try', 'explain', 'mend'];
const KEPT_AFTER_RELOAD_MS = 30_000;

const stillMeant = (pending: Pending, now: number): boolean =>
  DONE.includes(pending.ask.kind) || now - pending.at < KEPT_AFTER_RELOAD_MS;

/** Keeps each command under a key of its own, so that two tabs don't overwrite one another's. */
export function browserShelf(page: string, now: number, storage: Storage = window.localStorage): Shelf {
  const prefix = `harbour-lines.outbox.${page}.`;
  const attempt = <T>(work: () => T, otherwise: T): T => {
    try {
      return work();
    } catch {
      // Storage is full or switched off: the command still waits in the page's memory.
      return otherwise;
    }
  };
  return {
    load: () =>
      attempt(() => {
        const keys = Object.keys(storage).filter((key) => key.startsWith(prefix));
        const all = keys.map((key) => JSON.parse(storage.getItem(key) ?? 'null') as Pending | null);
        for (const [i, pending] of all.entries())
          if (!pending || !stillMeant(pending, now)) storage.removeItem(keys[i]!);
        return all
          .filter((pending): pending is Pending => pending !== null && stillMeant(pending, now))
          .sort((a, b) => a.at - b.at);
      }, []),
    put: (pending) => attempt(() => storage.setItem(prefix + pending.id, JSON.stringify(pending)), undefined),
    drop: (id) => attempt(() => storage.removeItem(prefix + id), undefined),
  };
}

/** Keeps nothing over a reload. */
export const memoryShelf = (loaded: readonly Pending[] = []): Shelf => ({
  load: () => [...loaded],
  put: () => {},
  drop: () => {},
});

const fits = (meant: string | null, now: string | null): boolean => meant === null || meant === now;

/**
 * Commands in the order in which they were given, one on its way at a time, each sent again until it
 * has an answer. The server gives a repeated id its first answer, so sending twice does no harm.
 */
export class Outbox {
  readonly #shelf: Shelf;
  readonly #queue: Pending[];
  readonly #waiting = new Map<CommandId, (answer: Answer) => void>();

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#queue = shelf.load();
  }

  /** How many wait, and how many of them hand something in. */
  get counts(): { readonly waiting: number; readonly handingIn: number } {
    const handingIn = this.#queue.filter(({ ask }) => HANDED_IN.includes(ask.kind)).length;
    return { waiting: this.#queue.length, handingIn };
  }

  /** The command to send next. Those meant for another room, or given by another team, are dropped. */
  first(room: RoomId, team: TeamId | null): Pending | undefined {
    for (;;) {
      const pending = this.#queue[0];
      if (!pending || (fits(pending.room, room) && fits(pending.team ?? null, team))) return pending;
      this.settle(pending.id, { ok: false, refusal: { code: 'unknown-room' } });
    }
  }

  add(pending: Pending): Promise<Answer> {
    this.#queue.push(pending);
    this.#shelf.put(pending);
    return new Promise((resolve) => this.#waiting.set(pending.id, resolve));
  }

  settle(id: CommandId, answer: Answer): void {
    const i = this.#queue.findIndex((pending) => pending.id === id);
    if (i < 0) return;
    this.#queue.splice(i, 1);
    this.#shelf.drop(id);
    this.#waiting.get(id)?.(answer);
    this.#waiting.delete(id);
  }
}
