import { isDeepStrictEqual } from 'node:util';
import { stateOf } from '../../shared/room/apply.ts';
import { view } from '../../shared/room/seen.ts';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import { joinCookie, openRoom, ownerCookie } from '../rooms/harness.ts';
import { FaultyPage, until } from './page.ts';
import { FaultyProxy } from './proxy.ts';
import { RestartableServer } from './restarts.ts';

/** A desk, a board and two tablets, each behind a proxy of its own. */
export class Classroom {
  readonly server: RestartableServer;
  readonly room: string;
  readonly word: string;
  readonly #pages: FaultyPage[] = [];

  private constructor(server: RestartableServer, room: string, word: string) {
    this.server = server;
    this.room = room;
    this.word = word;
  }

  static async gather(now?: () => number): Promise<Classroom> {
    const server = await RestartableServer.start(now);
    const { running } = server;
    const owner = await ownerCookie(running);
    const { room, word } = await openRoom(running.url, owner);
    const one = new Classroom(server, room, word);
    await one.enter('desk', owner);
    await one.enter('board', '');
    for (let i = 0; i < 2; i++) await one.enter('tablet', await joinCookie(running.url, word));
    return one;
  }

  get desk(): FaultyPage {
    return this.#pages[0]!;
  }
  get board(): FaultyPage {
    return this.#pages[1]!;
  }
  get tablet(): FaultyPage {
    return this.#pages[2]!;
  }

  /** One more page with the seat of `cookie`; `clock` is by how much its own clock is wrong, ms. */
  async enter(kind: 'desk' | 'board' | 'tablet', cookie: string, clock?: () => number): Promise<FaultyPage> {
    const page = new FaultyPage(await FaultyProxy.before(this.server.running.port), kind, cookie, clock);
    this.#pages.push(page);
    await until(`a ${kind}`, () => page.link.state().status.kind === 'live');
    return page;
  }

  async desks(...asks: ClientAsk[]): Promise<void> {
    for (const ask of asks) await this.desk.ask(ask);
  }

  build(seconds: number | null = null): Promise<void> {
    return this.desks({ kind: 'choose-challenge', key: 'first-line' }, { kind: 'start-building', seconds });
  }

  async restart(how: 'ended' | 'killed'): Promise<void> {
    if (how === 'killed') for (const { proxy } of this.#pages) proxy.cut();
    await this.server.restart(how);
    for (const { proxy } of this.#pages) proxy.target = this.server.running.port;
  }

  events() {
    return this.server.log.eventsAfter(this.room, 0);
  }

  /** Waits until every page that has a seat shows what the log says. */
  async agree(): Promise<void> {
    const state = stateOf(await this.events())!;
    const agrees = (page: FaultyPage) =>
      page.link.state().status.kind === 'quiet' ||
      (page.link.state().you !== null &&
        isDeepStrictEqual(page.link.state().room, view(state, page.seat(state))));
    await until('every page to show the log', () => this.#pages.every(agrees));
  }

  async end(): Promise<void> {
    for (const page of this.#pages) page.link.close();
    await Promise.all(this.#pages.map(({ proxy }) => proxy.close()));
    await this.server.end();
  }
}
