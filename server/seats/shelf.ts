import type { Millis } from '../../shared/geometry/units.ts';
import { type Shelved, UNDO_MS } from '../../shared/wire/desks.ts';
import type { Values } from '../log/event-log.ts';

/**
 * What a desk has made for itself and keeps across rooms, such as challenges: values by an id of the
 * desk's choice, beside the log. Whose a shelf is, is the owner's own, or the id of a desk's link.
 */

export const OWNERS_SHELF = 'owner';

/** A request that was on its way when the ten seconds ended still counts. */
const GRACE_MS = 5000;
/** When what was erased can be forgotten, with some time to spare. */
export const FORGET_AFTER_MS = UNDO_MS + GRACE_MS + 1000;

interface Stored extends Shelved {
  readonly erasedAt: Millis | null;
}

/** `too-many`: the shelf is full; `full`: the store is. Neither has changed anything. */
export type Put = 'done' | 'too-many' | 'full';

export class Shelf {
  readonly #values: Values;
  readonly #kind: string;
  readonly #most: number;
  readonly #now: () => Millis;

  /** `kind` names what is kept, one plain word; `most` is how many things one desk may keep. */
  constructor(values: Values, kind: string, most: number, now: () => Millis) {
    this.#values = values;
    this.#kind = kind;
    this.#most = most;
    this.#now = now;
  }

  get most(): number {
    return this.#most;
  }

  #key(of: string, id: string): string {
    return `shelf-${this.#kind} ${of} ${id}`;
  }

  /** Everything that is there or may still be given back; what is past that is forgotten. */
  async #all(of: string): Promise<Stored[]> {
    const prefix = this.#key(of, '');
    const kept: Stored[] = [];
    for (const { key, value } of await this.#values.values(prefix)) {
      // Ids of links have underscores, which stores take for any sign.
      if (!key.startsWith(prefix)) continue;
      const stored = JSON.parse(value) as Stored;
      if (this.#isGone(stored)) await this.#values.dropValue(key);
      else kept.push(stored);
    }
    return kept;
  }

  #isGone({ erasedAt }: Stored): boolean {
    return erasedAt !== null && this.#now() > erasedAt + UNDO_MS + GRACE_MS;
  }

  async #stored(of: string, id: string): Promise<Stored | undefined> {
    const value = await this.#values.value(this.#key(of, id));
    const stored = value === undefined ? undefined : (JSON.parse(value) as Stored);
    return stored && !this.#isGone(stored) ? stored : undefined;
  }

  #keep(of: string, stored: Stored): Promise<'done' | 'full'> {
    return this.#values.setValue(this.#key(of, stored.id), JSON.stringify(stored));
  }

  /** What was saved last comes first. */
  async list(of: string): Promise<Shelved[]> {
    const there = (await this.#all(of)).filter(({ erasedAt }) => erasedAt === null);
    return there
      .sort((a, b) => b.savedAt - a.savedAt)
      .map(({ id, savedAt, body }) => ({ id, savedAt, body }));
  }

  /** The body of one that is there. */
  async find(of: string, id: string): Promise<unknown> {
    const stored = await this.#stored(of, id);
    return stored?.erasedAt === null ? stored.body : undefined;
  }

  /** A new one, or another body for the one with this id. */
  async put(of: string, id: string, body: unknown): Promise<Put> {
    const there = await this.list(of);
    if (there.length >= this.#most && !there.some((one) => one.id === id)) return 'too-many';
    return this.#keep(of, { id, savedAt: this.#now(), body, erasedAt: null });
  }

  /** Takes one away at once. Within ten seconds it can be given back. */
  async erase(of: string, id: string): Promise<'done' | 'full' | 'gone'> {
    const stored = await this.#stored(of, id);
    if (stored?.erasedAt !== null) return 'gone';
    return this.#keep(of, { ...stored, erasedAt: this.#now() });
  }

  /** Forgets all that a desk has kept which is no more. */
  async forget(of: string): Promise<void> {
    const prefix = this.#key(of, '');
    for (const { key } of await this.#values.values(prefix))
      if (key.startsWith(prefix)) await this.#values.dropValue(key);
  }

  async giveBack(of: string, id: string): Promise<'done' | 'full' | 'gone'> {
    const stored = await this.#stored(of, id);
    if (!stored) return 'gone';
    return this.#keep(of, { ...stored, erasedAt: null });
  }
}
