import type { EventLog } from '../../server/log/event-log.ts';
import { MemoryLog } from '../../server/log/memory.ts';
import { quickJudging, type TestServer, testServer } from '../rooms/harness.ts';

/** One way to a log, which can be cut: what is called later never reaches it, as in a process that has died. */
function mortal(log: EventLog): { readonly log: EventLog; readonly die: () => void } {
  let dead = false;
  const way = new Proxy(log, {
    get: (target, name) => {
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return (...given: unknown[]) => {
        if (dead) return Promise.reject(new Error('this process is dead'));
        return member.apply(target, given) as unknown;
      };
    },
  });
  return { log: way, die: () => (dead = true) };
}

/** A server in this process that can be ended or die in the middle of anything, and starts again on its log. */
export class RestartableServer {
  readonly log = new MemoryLog();
  readonly #dying: Promise<unknown>[] = [];
  #server!: TestServer;
  #die: () => void = () => {};

  readonly #now: () => number;

  private constructor(now: () => number) {
    this.#now = now;
  }

  static async start(now: () => number = Date.now): Promise<RestartableServer> {
    const one = new RestartableServer(now);
    await one.#start();
    return one;
  }

  get running(): TestServer {
    return this.#server;
  }

  async #start(): Promise<void> {
    const { log, die } = mortal(this.log);
    this.#die = die;
    const ownerKey = this.#server?.ownerKey;
    this.#server = await testServer({
      log,
      judging: quickJudging,
      now: this.#now,
      ...(ownerKey && { ownerKey }),
    });
  }

  /** Ends the server and starts one on another port. One that is killed finishes nothing. */
  async restart(how: 'ended' | 'killed'): Promise<void> {
    if (how === 'killed') this.#die();
    const ending = this.#server.end().catch((error: unknown) => how === 'killed' || Promise.reject(error));
    if (how === 'ended') await ending;
    else this.#dying.push(ending);
    await this.#start();
  }

  async end(): Promise<void> {
    await this.#server.end();
    await Promise.all(this.#dying);
  }
}
