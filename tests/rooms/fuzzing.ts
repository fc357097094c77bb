import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { MemoryLog } from '../../server/log/memory.ts';
import { stateOf } from '../../shared/room/apply.ts';
import { view } from '../../shared/room/seen.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { LinkAsked } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  joinCookie,
  makeLink,
  NO_RATES,
  openRoom,
  ownerCookie,
  Page,
  seated,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';
import { type HttpMessage, KNOWN, type Message, message, type SocketMessage, type Who } from './messages.ts';

/** A judge whose work is never done, so that only messages change the room. */
function idleJudging() {
  const waiting: ((reason: Error) => void)[] = [];
  return {
    judge: () => new Promise<never>((_, reject) => waiting.push(reject)),
    close: async () => {
      for (const reject of waiting) reject(new Error('ended'));
    },
  };
}

const HOUR = 3_600_000;

/** So many messages are sent to a room; then another one, since seats are lost and rooms are erased. */
const MESSAGES_A_ROOM = 500;
const READING = ['GET', 'HEAD', 'OPTIONS'];

/** A room in the building phase with valid seats of every kind, and a page without one. */
export class Fuzzed {
  readonly #log = new MemoryLog();
  readonly #server: TestServer;
  #url = '';
  #room = '';
  #word = '';
  #sent = 0;
  readonly #pages = new Map<Who, Page>();
  readonly #cookies = new Map<Who, string>();
  accepted = 0;
  refused = 0;

  private constructor(log: MemoryLog, server: TestServer) {
    this.#log = log;
    this.#server = server;
    this.#url = server.url;
  }

  static async start(): Promise<Fuzzed> {
    const log = new MemoryLog();
    // A clock that stands still: no building time runs out between a message and its check.
    const now = () => 500_000 * HOUR;
    const server = await testServer({ log, judging: idleJudging(), now, rates: NO_RATES });
    const one = new Fuzzed(log, server);
    await one.#sitDown();
    return one;
  }

  async #sitDown(): Promise<void> {
    for (const page of this.#pages.values()) page.close();
    const url = this.#url;
    const owner = await ownerCookie(this.#server);
    const visit = async (asked: LinkAsked, cookie: string) =>
      (await visitLink(url, await makeLink(url, asked, cookie))).cookie;
    const teacher = await visit({ kind: 'desk' }, owner);
    const { room, word } = await openRoom(url, teacher);
    [this.#room, this.#word] = [room, word];
    const sit = async (who: Who, page: 'desk' | 'board' | 'tablet', cookie: string) => {
      this.#cookies.set(who, cookie);
      this.#pages.set(who, await seated(url, page, cookie, page === 'tablet' ? null : room));
    };
    await sit('desk', 'desk', owner);
    await sit('teacher', 'desk', teacher);
    await sit('substitute', 'desk', await visit({ kind: 'room', room }, teacher));
    await sit('board', 'board', '');
    for (const who of ['first', 'second'] as const) await sit(who, 'tablet', await joinCookie(url, word));
    this.#cookies.set('stranger', '');
    this.#pages.set('stranger', new Page(url, 'desk'));
    const desk = this.#pages.get('desk')!;
    await desk.command({ kind: 'choose-challenge', key: 'first-line' });
    await desk.command({ kind: 'start-building', seconds: null });
  }

  /** Undefined when the owner has erased the room. */
  #state = async (): Promise<RoomState | undefined> => stateOf(await this.#log.eventsAfter(this.#room, 0));

  /** Puts real ids in the place of `known-n`. */
  #filled(value: unknown, names: readonly string[]): unknown {
    if (typeof value === 'string') {
      const match = KNOWN.exec(value);
      return match ? (names[Number(match[1]) % names.length] ?? value) : value;
    }
    if (Array.isArray(value)) return value.map((v) => this.#filled(v, names));
    if (typeof value !== 'object' || value === null) return value;
    const entries = Object.entries(value).map(([k, v]) => [k, this.#filled(v, names)] as const);
    return Object.fromEntries(entries);
  }

  /** Sends one message and says what was wrong with what came of it. */
  async send(one: Message): Promise<string | null> {
    const wrong = ++this.#sent % MESSAGES_A_ROOM === 0 ? await this.differences() : [];
    const erased = (await this.#state()) === undefined;
    if (erased || this.#sent % MESSAGES_A_ROOM === 0) await this.#sitDown();
    return wrong[0] ?? this.#tell(one);
  }

  async #tell(one: Message): Promise<string | null> {
    const before = (await this.#state())!;
    const rooms = (await this.#log.rooms()).length;
    const names = [
      ...before.entries.flatMap((entry) => [entry.id, entry.design ?? '']),
      ...before.teams.map((team) => team.id),
      ...[this.#room, this.#word, before.rounds[0]!.challenge, 'first-line', 'sharp-corner'],
    ];
    const result = one.way === 'socket' ? await this.#say(one, names) : await this.#ask(one, names);
    if (typeof result === 'string') return result;
    if (result) this.accepted++;
    else this.refused++;
    const changes = one.way === 'socket' ? one.name === 'command' : !reads(one);
    const mayChange = result && changes;
    const after = await this.#state();
    if (!mayChange && !isDeepStrictEqual(after, before)) return 'the room has changed';
    if (!mayChange && (await this.#log.rooms()).length !== rooms) return 'there is another room';
    return null;
  }

  /** Whether it was accepted, or what was wrong. */
  async #say({ who, name, body }: SocketMessage, names: readonly string[]): Promise<boolean | string> {
    const page = this.#pages.get(who)!;
    const answer = (await page.ask(name, this.#filled(body, names))) as {
      ok?: unknown;
      refusal?: { code?: string };
    };
    if (answer?.ok === true) return true;
    if (answer?.ok !== false || typeof answer.refusal?.code !== 'string') return 'no proper answer';
    return answer.refusal.code === 'server-trouble' ? 'the server had trouble' : false;
  }

  async #ask(
    { who, method, path, body, type }: HttpMessage,
    names: readonly string[],
  ): Promise<boolean | string> {
    const bare = method === 'GET' || method === 'HEAD' || body === null;
    const filledPath = path.replace(/known-\d+/, (text) =>
      encodeURIComponent(String(this.#filled(text, names))),
    );
    const sent = body?.replace(/known-\d+/, (text) => String(this.#filled(text, names)));
    const response = await fetch(this.#url + filledPath, {
      method,
      redirect: 'manual',
      headers: { 'content-type': type, cookie: this.#cookies.get(who)! },
      ...(!bare && sent !== undefined && { body: sent }),
    });
    const text = await response.text();
    // Without built pages the three pages say so.
    if (response.status >= 500 && response.status !== 503) return `status ${response.status}`;
    if (response.status < 400) return true;
    const isJson = response.headers.get('content-type')?.startsWith('application/json') ?? false;
    if (method !== 'HEAD' && response.status !== 503 && !(isJson && text.includes('"code"')))
      return 'no refusal';
    return false;
  }

  /** What is wrong in the end: pages that show another room than the log, or a prototype with more in it. */
  async differences(): Promise<string[]> {
    const state = await this.#state();
    const wrong: string[] = [];
    if (!state) return wrong;
    for (const [who, page] of this.#pages) {
      if (who === 'stranger') continue;
      const welcome = await page.hello();
      // A team that was taken out, or a desk whose link was, has no seat any more.
      if (!welcome.ok && welcome.refusal.code !== 'server-trouble') continue;
      const you = welcome.ok ? welcome.you : null;
      if (!you || !isDeepStrictEqual(page.state, view(state, you))) wrong.push(`${who} shows another room`);
    }
    if ('polluted' in {}) wrong.push('a prototype was changed');
    return wrong;
  }

  async end(): Promise<void> {
    for (const page of this.#pages.values()) page.close();
    await this.#server.end();
  }
}

/** A link that is followed may take a seat; everything else that is only read changes nothing. */
const reads = ({ method, path }: HttpMessage) =>
  READING.includes(method) && !path.startsWith(ROUTES.joinByLink);

/** Sends so many random messages, one after the other. Throws with the seed and the message that did harm. */
export async function fuzz(messages: number, seed: number): Promise<Fuzzed> {
  const fuzzed = await Fuzzed.start();
  const harmless = fc.asyncProperty(message, async (one) => {
    const wrong = await fuzzed.send(one);
    if (wrong) throw new Error(wrong);
  });
  await fc.assert(harmless, { numRuns: messages, seed, endOnFailure: true });
  return fuzzed;
}
