import { expect } from 'vitest';
import type { RoomEvent } from '../../shared/room/events.ts';
import { type Answer, type ClientAsk, ROUTES } from '../../shared/wire/protocol.ts';
import { cookiesOf, openRoom, ownerCookie, Page, post } from '../rooms/harness.ts';
import type { ServerProcess } from './process.ts';

/** Who sends a command: the desk, or the team with this index. */
export type Who = 'desk' | number;

interface Told {
  readonly who: Who;
  readonly ask: ClientAsk;
  readonly id: string;
  readonly answer: Answer;
}

/**
 * A desk and some tablets that outlive every server: they keep their cookies, what they were told and
 * what was acknowledged to them, and check it against the server that came back.
 */
export class SchoolClass {
  #server: ServerProcess;
  #owner = '';
  #room = '';
  #word = '';
  #pages: Page[] = [];
  readonly #tablets: string[] = [];
  readonly #teams: string[] = [];
  readonly acknowledged: Told[] = [];
  /** Every event that the desk was ever told, by its number. */
  readonly #known = new Map<number, RoomEvent>();

  private constructor(server: ServerProcess) {
    this.#server = server;
  }

  static async gather(server: ServerProcess, teams: number): Promise<SchoolClass> {
    const one = new SchoolClass(server);
    one.#owner = await ownerCookie(server);
    const opened = await openRoom(server.url, one.#owner);
    [one.#room, one.#word] = [opened.room, opened.word];
    for (let i = 0; i < teams; i++) one.#tablets.push(cookiesOf(await fetch(server.url)));
    await one.#sitDown();
    return one;
  }

  get desk(): Page {
    return this.#pages[0]!;
  }

  /** A tablet types the word. Its token came with the page, so a repeat is the same seat. */
  async join(team: number): Promise<void> {
    const response = await post(
      `${this.#server.url}${ROUTES.join}`,
      { word: this.#word },
      this.#tablets[team],
    );
    expect(response.status).toBe(204);
    const page = await this.#seat(team);
    if (page.welcome?.ok && page.welcome.you.role === 'team') this.#teams[team] = page.welcome.you.team;
  }

  /** Sends a command and notes its answer once it is acknowledged. Rejects when the link breaks. */
  async send(who: Who, ask: ClientAsk, id: string): Promise<void> {
    const answer = await this.#page(who).command(ask, id);
    this.acknowledged.push({ who, ask, id, answer });
    this.#note();
  }

  #page(who: Who): Page {
    const page = this.#pages[who === 'desk' ? 0 : who + 1];
    if (!page) throw new Error(`nobody sits at ${who}`);
    return page;
  }

  async #seat(team: number): Promise<Page> {
    this.#pages[team + 1]?.close();
    const page = new Page(this.#server.url, 'tablet', this.#tablets[team]);
    this.#pages[team + 1] = page;
    await page.hello();
    return page;
  }

  async #sitDown(): Promise<void> {
    for (const page of this.#pages) page?.close();
    this.#pages = [new Page(this.#server.url, 'desk', this.#owner, this.#room)];
    await this.desk.hello();
    for (const [team, id] of this.#teams.entries()) if (id !== undefined) await this.#seat(team);
  }

  #note(): void {
    for (const event of this.desk.events) this.#known.set(event.seq, event);
  }

  /** Everybody comes to the server that was started anew; nothing acknowledged may be missing. */
  async comeBack(server: ServerProcess): Promise<void> {
    this.#note();
    this.#server = server;
    await this.#sitDown();
    const highest = Math.max(0, ...this.acknowledged.map(({ answer }) => (answer.ok ? answer.seq : 0)));
    expect(this.desk.state?.seq).toBeGreaterThanOrEqual(highest);
    const now = await this.#readAgain();
    for (const [seq, event] of this.#known) expect(now[seq - 2]).toEqual(event);
    for (const [team, id] of this.#teams.entries()) {
      const welcome = this.#pages[team + 1]?.welcome;
      expect(welcome).toMatchObject({ ok: true, you: { role: 'team', team: id } });
    }
    await this.#askAgain();
  }

  /** The room's events from the second on, as a page gets them that has missed everything. */
  async #readAgain(): Promise<RoomEvent[]> {
    const other = new Page(this.#server.url, 'desk', this.#owner, this.#room);
    const welcome = await other.ask('hello', { version: 1, room: this.#room, seq: 1 });
    other.close();
    const { events } = welcome as { events: RoomEvent[] };
    expect(events.map((event) => event.seq)).toEqual(events.map((_, i) => i + 2));
    return events;
  }

  /** Repeats of acknowledged commands are answered as the first time. */
  async #askAgain(): Promise<void> {
    for (const { who, ask, id, answer } of this.acknowledged.slice(-4)) {
      expect(await this.#page(who).command(ask, id)).toEqual(answer);
    }
  }

  close(): void {
    for (const page of this.#pages) page?.close();
  }
}
