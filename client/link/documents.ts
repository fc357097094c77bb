import type { DocumentId } from '../../shared/room/state.ts';
import type { Fetched, WireRefusal } from '../../shared/wire/protocol.ts';
import type { Timers } from './latest-up.ts';
import type { Wire } from './wire.ts';

const MOST_KEPT = 400;
/** The server is only busy, or its store is away for a moment. */
const PASSING: readonly WireRefusal['code'][] = ['too-fast', 'store-away'];
const AGAIN_MS = 1000;

/** Documents by their id. They never change, so one that came is kept; one that did not is asked for anew. */
export class Documents {
  readonly #wire: Pick<Wire, 'ask' | 'open'>;
  readonly #timers: Pick<Timers, 'after'>;
  readonly #answerMs: number;
  readonly #kept = new Map<DocumentId, Promise<Fetched>>();

  /** An answer may take `answerMs`. */
  constructor(wire: Pick<Wire, 'ask' | 'open'>, timers: Pick<Timers, 'after'>, answerMs: number) {
    this.#wire = wire;
    this.#timers = timers;
    this.#answerMs = answerMs;
  }

  readonly fetch = (id: DocumentId): Promise<Fetched> => {
    const known = this.#kept.get(id);
    if (known) return known;
    const fetched = this.#fetch(id);
    this.#kept.set(id, fetched);
    if (this.#kept.size > MOST_KEPT) this.#kept.delete(this.#kept.keys().next().value!);
    return fetched;
  };

  async #fetch(id: DocumentId): Promise<Fetched> {
    const fetched = await this.#answer(id);
    if (!fetched.ok) this.#kept.delete(id);
    return fetched;
  }

  /** As long as there is a link it is asked for until it comes: whoever waits for it would not ask again. */
  async #answer(id: DocumentId): Promise<Fetched> {
    for (;;) {
      try {
        const fetched = (await this.#wire.ask('fetch', id, this.#answerMs)) as Fetched;
        if (fetched.ok || !PASSING.includes(fetched.refusal.code)) return fetched;
      } catch {
        if (!this.#wire.open()) return { ok: false, refusal: { code: 'server-trouble' } };
      }
      await new Promise<void>((resolve) => this.#timers.after(AGAIN_MS, resolve));
    }
  }
}
