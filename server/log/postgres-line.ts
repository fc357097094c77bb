import { nanoid } from 'nanoid';
import pg from 'pg';
import type { Neighbours, News, NewsListener, ProcessId } from './neighbours.ts';
import { newsKey } from './neighbours.ts';

/** Two channels, so that wake-ups for events never stand behind newest values. */
const CHANNELS = { wake: 'harbour_wake', newest: 'harbour_newest' } as const;
type Channel = keyof typeof CHANNELS;
const channelOf = (news: News): Channel =>
  news.kind === 'events' || news.kind === 'opened' ? 'wake' : 'newest';

/** PostgreSQL refuses a NOTIFY of 8,000 bytes or more. */
const MOST_BYTES = 7_900;
/** How often each process says that it is there and looks whether its rooms are current, ms. */
const BEAT_MS = 5_000;
/** A process that has said nothing for so long has ended, ms. */
const SILENT_MS = 16_000;
/** Waiting times before the line is made again, ms. They grow, and differ between processes. */
const FIRST_PAUSE_MS = 100;
const MOST_PAUSE_MS = 2_000;

const NEWEST_SEQS = `select r.room, (select max(seq) from events where events.room = r.room) as seq
  from unnest($1::text[]) as r(room)`;

interface Line {
  readonly client: pg.Client;
  readonly lose: (error: unknown) => void;
}

/** As many news as fit into one message, and the rest. */
function messageOf(id: ProcessId, waiting: ReadonlyMap<string, News>): [string, [string, News][]] {
  const taken: [string, News][] = [];
  let bytes = Buffer.byteLength(JSON.stringify([id, []]));
  for (const entry of waiting) {
    bytes += Buffer.byteLength(JSON.stringify(entry[1])) + 1;
    if (bytes > MOST_BYTES && taken.length > 0) break;
    taken.push(entry);
  }
  return [JSON.stringify([id, taken.map(([, news]) => news)]), taken];
}

/**
 * News by LISTEN and NOTIFY over one connection of its own. When that breaks it is made again, and the
 * listener is told that it may have missed something; what was to be told waits until then.
 */
export class PostgresLine implements Neighbours {
  readonly alone = false;
  readonly #config: pg.ClientConfig;
  readonly #trouble: (what: string, error: unknown) => void;
  readonly #id: ProcessId = nanoid(8);
  readonly #waiting: Record<Channel, Map<string, News>> = { wake: new Map(), newest: new Map() };
  readonly #heard = new Map<ProcessId, number>();
  #listener: NewsListener | null = null;
  #line: Line | null = null;
  /** Whether the line listens; between that and the next loss news go out at once. */
  #stands = false;
  #sending: Promise<void> | null = null;
  #timer: NodeJS.Timeout | undefined;
  #pause = FIRST_PAUSE_MS;

  constructor(config: pg.ClientConfig, trouble: (what: string, error: unknown) => void) {
    this.#config = config;
    this.#trouble = trouble;
  }

  tell(news: News): void {
    const waiting = this.#waiting[channelOf(news)];
    const key = newsKey(news);
    // Behind what is already waiting, also where it replaces an older one.
    waiting.delete(key);
    waiting.set(key, news);
    this.#send();
  }

  hear(listener: NewsListener): void {
    this.#listener = listener;
    void this.#connect();
  }

  async #connect(): Promise<void> {
    const client = new pg.Client(this.#config);
    const line: Line = { client, lose: (error) => this.#lost(line, error) };
    this.#line = line;
    client.on('error', line.lose);
    client.on('end', () => line.lose(new Error('the line to the database has ended')));
    client.on('notification', ({ payload }) => this.#hear(payload ?? ''));
    try {
      await client.connect();
      for (const channel of Object.values(CHANNELS)) await client.query(`listen ${channel}`);
    } catch (error) {
      return line.lose(error);
    }
    if (this.#line !== line) return;
    this.#stands = true;
    this.#pause = FIRST_PAUSE_MS;
    for (const process of this.#heard.keys()) this.#heard.set(process, performance.now());
    this.#listener?.missed();
    this.#send();
    this.#timer = setTimeout(() => void this.#beat(line), BEAT_MS);
  }

  #lost(line: Line, error: unknown): void {
    if (this.#line !== line) return;
    this.#line = null;
    line.client.end().catch(() => undefined);
    if (this.#stands) this.#trouble('the line to the database is lost', error);
    this.#stands = false;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#connect(), this.#pause * (0.5 + Math.random()));
    this.#pause = Math.min(MOST_PAUSE_MS, this.#pause * 2);
  }

  #hear(payload: string): void {
    const [from, news] = JSON.parse(payload) as [ProcessId, News[] | 'bye'];
    if (from === this.#id) return;
    if (news === 'bye') {
      this.#heard.delete(from);
      this.#listener?.gone(from);
      return;
    }
    this.#heard.set(from, performance.now());
    for (const one of news) this.#listener?.news(one, from);
  }

  #send(): void {
    this.#sending ??= this.#sendAll();
  }

  async #sendAll(): Promise<void> {
    // What is told in the same moment goes in one message.
    await Promise.resolve();
    for (;;) {
      const channel = this.#waiting.wake.size > 0 ? 'wake' : 'newest';
      const waiting = this.#waiting[channel];
      if (waiting.size === 0 || !this.#line || !this.#stands) {
        // Now, not a moment later: what is told in between would wait for the next news.
        this.#sending = null;
        return;
      }
      const [message, taken] = messageOf(this.#id, waiting);
      for (const [key] of taken) waiting.delete(key);
      if (await this.#notify(this.#line, channel, message)) continue;
      for (const [key, news] of taken) if (!waiting.has(key)) waiting.set(key, news);
    }
  }

  /** Whether it went out. A line that does not take it is given up. */
  async #notify({ client, lose }: Line, channel: Channel, message: string): Promise<boolean> {
    try {
      await client.query('select pg_notify($1, $2)', [CHANNELS[channel], message]);
      return true;
    } catch (error) {
      lose(error);
      return false;
    }
  }

  async #beat(line: Line): Promise<void> {
    const before = performance.now() - SILENT_MS;
    for (const [process, at] of this.#heard) {
      if (at >= before) continue;
      this.#heard.delete(process);
      this.#listener?.gone(process);
    }
    const sent = await this.#notify(line, 'newest', JSON.stringify([this.#id, []]));
    if (sent) await this.#lookAround(line);
    if (this.#line === line) this.#timer = setTimeout(() => void this.#beat(line), BEAT_MS);
  }

  /** Wake-ups of a process that died between a commit and its NOTIFY never came. */
  async #lookAround({ client, lose }: Line): Promise<void> {
    const rooms = this.#listener?.rooms() ?? [];
    if (rooms.length === 0) return;
    try {
      const found = await client.query<{ room: string; seq: number | null }>(NEWEST_SEQS, [rooms]);
      for (const { room, seq } of found.rows) {
        if (seq !== null) this.#listener?.news({ kind: 'events', room, seq }, this.#id);
      }
    } catch (error) {
      lose(error);
    }
  }

  async close(): Promise<void> {
    const line = this.#line;
    this.#line = null;
    clearTimeout(this.#timer);
    await this.#sending;
    if (!line) return;
    if (this.#stands) await this.#notify(line, 'newest', JSON.stringify([this.#id, 'bye']));
    await line.client.end().catch(() => undefined);
  }
}
