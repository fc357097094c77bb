import type { DocumentId } from '../../shared/room/state.ts';
import type { Fetched } from '../../shared/wire/protocol.ts';

const MOST_KEPT = 400;

/** Documents by their id. They never change, so one that came is kept; one that did not is asked for anew. */
export class Documents {
  readonly #ask: (id: DocumentId) => Promise<Fetched>;
  readonly #kept = new Map<DocumentId, Promise<Fetched>>();

  /** `ask` rejects where no answer comes. */
  constructor(ask: (id: DocumentId) => Promise<Fetched>) {
    this.#ask = ask;
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
    try {
      const fetched = await this.#ask(id);
      if (!fetched.ok) this.#kept.delete(id);
      return fetched;
    } catch {
      this.#kept.delete(id);
      return { ok: false, refusal: { code: 'server-trouble' } };
    }
  }
}
