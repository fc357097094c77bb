import { randomInt } from 'node:crypto';
import { nanoid } from 'nanoid';
import type { Millis } from '../../shared/geometry/units.ts';
import { EMBLEMS, type RoomId, type TeamId } from '../../shared/room/state.ts';
import { type LinkInList, UNDO_MS } from '../../shared/wire/desks.ts';
import type { Values } from '../log/event-log.ts';
import { hashOf, newToken } from './tokens.ts';

/**
 * Links that the owner or a desk gives away. Only the hash of a secret is kept, so a link is shown once,
 * when it is made. No name of a person is asked for: a link has a plain word of its own.
 */

export interface Link extends LinkInList {
  /** Of a desk's own link: it opens and sees rooms. Of a room's: it is the desk of that room alone. */
  readonly kind: 'desk' | 'room';
}

/** Where a code leads that moves a seat to another tablet. */
export interface SeatPlace {
  readonly room: RoomId;
  readonly team: TeamId;
}

interface SeatCodePlace extends SeatPlace {
  readonly until: Millis;
}

/** A code is short enough to be read out, so it does not live long. */
const CODE_LASTS_MS = 5 * 60_000;
const CODE = /^([a-z]+)-\d{4}$/;
const DIGITS = 10_000;
/** A request that was on its way when the ten seconds ended still counts. */
const GRACE_MS = 5000;

/** A code begins with an emblem, which no room word does. */
const EMBLEM_WORDS: ReadonlySet<string> = new Set(EMBLEMS);

/** Whether somebody has typed a seat's code, in place of a room word. */
export const isSeatCode = (typed: string): boolean => EMBLEM_WORDS.has(CODE.exec(typed)?.[1] ?? '');

const linkKey = (hash: string) => `link ${hash}`;
const codeKey = (code: string) => `code ${hashOf(code)}`;
const DESK_OF = 'desk-of ';
const deskKey = (room: RoomId) => DESK_OF + room;

export type Made<T> = { readonly ok: true; readonly value: T } | { readonly ok: false };

/** `full`: the store has no space, and the link is as it was. */
export type Changed = 'done' | 'full' | 'too-late';

export class Links {
  readonly #values: Values;
  readonly #now: () => Millis;
  readonly #word: () => string;

  /** `word` makes up what a link is called. */
  constructor(values: Values, now: () => Millis, word: () => string) {
    this.#values = values;
    this.#now = now;
    this.#word = word;
  }

  async #all(): Promise<{ key: string; link: Link }[]> {
    const found = await this.#values.values('link ');
    return found.map(({ key, value }) => ({ key, link: JSON.parse(value) as Link }));
  }

  /** Links that were not revoked, or may still be given back, the oldest first. */
  async list(): Promise<Link[]> {
    const links = (await this.#all()).map(({ link }) => link);
    return links.filter((link) => this.#isKept(link)).sort((a, b) => a.madeAt - b.madeAt);
  }

  #isKept({ revokedAt }: Link): boolean {
    return revokedAt === null || this.#now() <= revokedAt + UNDO_MS + GRACE_MS;
  }

  /** A new link and its secret, which nobody can read again; not ok where the store is full. */
  async make(what: Pick<Link, 'kind' | 'room'>): Promise<Made<{ link: Link; token: string }>> {
    const token = newToken();
    const link: Link = { ...what, id: nanoid(8), word: this.#word(), madeAt: this.#now(), revokedAt: null };
    const done = await this.#values.setValue(linkKey(hashOf(token)), JSON.stringify(link));
    return done === 'full' ? { ok: false } : { ok: true, value: { link, token } };
  }

  /** What the secret of a link opens now. */
  async find(token: string | undefined): Promise<Link | undefined> {
    if (token === undefined) return undefined;
    const value = await this.#values.value(linkKey(hashOf(token)));
    const link = value === undefined ? undefined : (JSON.parse(value) as Link);
    return link?.revokedAt === null ? link : undefined;
  }

  async byId(id: string): Promise<Link | undefined> {
    return (await this.#all()).find(({ link }) => link.id === id)?.link;
  }

  /** Ends a link at once. Within ten seconds it can be given back. */
  async revoke(id: string): Promise<Changed> {
    let changed: Changed = 'done';
    for (const { key, link } of await this.#all()) {
      if (link.id !== id || link.revokedAt !== null) continue;
      changed = await this.#values.setValue(key, JSON.stringify({ ...link, revokedAt: this.#now() }));
    }
    return changed;
  }

  /** Forgets the hashes of links that can't be given back any more; `first` sees to what was a link's. */
  async forgetRevoked(first: (link: Link) => Promise<void>): Promise<void> {
    for (const { key, link } of await this.#all()) {
      if (this.#isKept(link)) continue;
      await first(link);
      await this.#values.dropValue(key);
    }
  }

  async giveBack(id: string): Promise<Changed> {
    const found = (await this.#all()).find(({ link }) => link.id === id);
    if (!found || !this.#isKept(found.link)) return 'too-late';
    return this.#values.setValue(found.key, JSON.stringify({ ...found.link, revokedAt: null }));
  }

  /** Whose room it is: the desk link that it was opened with; null is the owner's own. */
  async deskOf(room: RoomId): Promise<string | null> {
    return (await this.#values.value(deskKey(room))) ?? null;
  }

  async roomsOf(id: string): Promise<RoomId[]> {
    const found = await this.#values.values(DESK_OF);
    return found.filter(({ value }) => value === id).map(({ key }) => key.slice(DESK_OF.length));
  }

  /** Whether others than the owner open rooms here, or have done so. */
  async areSeveral(): Promise<boolean> {
    if ((await this.#values.values(DESK_OF)).length > 0) return true;
    return (await this.list()).some(({ kind, revokedAt }) => kind === 'desk' && revokedAt === null);
  }

  giveRoom(room: RoomId, id: string): Promise<'done' | 'full'> {
    return this.#values.setValue(deskKey(room), id);
  }

  /** Forgets a room: whose it was, its links, and codes of its seats. */
  async forget(room: RoomId): Promise<void> {
    await this.#values.dropValue(deskKey(room));
    await this.#dropCodes((code) => code.room === room);
    for (const { key, link } of await this.#all()) {
      if (link.room === room) await this.#values.dropValue(key);
    }
  }

  /** A code that gives a team's seat to another tablet once, such as `bell-4821`. */
  async makeCode(emblem: string, place: SeatPlace): Promise<Made<{ code: string; until: Millis }>> {
    await this.#dropCodes((code) => code.room === place.room && code.team === place.team);
    const until = this.#now() + CODE_LASTS_MS;
    let code: string;
    do code = `${emblem}-${String(randomInt(DIGITS)).padStart(4, '0')}`;
    while ((await this.#values.value(codeKey(code))) !== undefined);
    const done = await this.#values.setValue(
      codeKey(code),
      JSON.stringify({ ...place, until } satisfies SeatCodePlace),
    );
    return done === 'full' ? { ok: false } : { ok: true, value: { code, until } };
  }

  /** Those that are meant, and any that is too old. */
  async #dropCodes(meant: (place: SeatPlace) => boolean): Promise<void> {
    for (const { key, value } of await this.#values.values('code ')) {
      const code = JSON.parse(value) as SeatCodePlace;
      if (meant(code) || code.until <= this.#now()) await this.#values.dropValue(key);
    }
  }

  /** Uses a code up. Of two tablets with the same code one gets the place. */
  async takeCode(code: string): Promise<SeatCodePlace | undefined> {
    const value = await this.#values.value(codeKey(code));
    if (value === undefined || !(await this.#values.dropValue(codeKey(code)))) return undefined;
    const place = JSON.parse(value) as SeatCodePlace;
    return place.until > this.#now() ? place : undefined;
  }

  /** The seat could not be taken after all: the code is good again. */
  async giveCodeBack(code: string, place: SeatCodePlace): Promise<void> {
    await this.#values.setValue(codeKey(code), JSON.stringify(place));
  }
}
