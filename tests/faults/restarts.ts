import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { EventLog } from '../../server/log/event-log.ts';
import { MemoryLog } from '../../server/log/memory.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { quickJudging, type TestServer, testServer } from '../rooms/harness.ts';

/**
 * One way to a log, which can be cut: what is called later never reaches it, as in a process that has died.
 * `die` resolves when what was called before has ended, since a dead process writes nothing later.
 */
function mortal(log: EventLog): { readonly log: EventLog; readonly die: () => Promise<void> } {
  let dead = false;
  const underWay = new Set<Promise<unknown>>();
  const way = new Proxy(log, {
    get: (target, name) => {
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return (...given: unknown[]) => {
        if (dead) return Promise.reject(new Error('this process is dead'));
        const result: unknown = member.apply(target, given);
        if (!(result instanceof Promise)) return result;
        underWay.add(result);
        const over = () => underWay.delete(result);
        result.then(over, over);
        return result;
      };
    },
  });
  const die = async () => {
    dead = true;
    await Promise.allSettled(underWay);
  };
  return { log: way, die };
}

/** Where a server's log is kept, over its restarts. */
export interface Keeping {
  readonly open: () => Promise<EventLog>;
  readonly remove: () => void;
}

export function inMemory(): Keeping {
  const log = new MemoryLog();
  return { open: async () => log, remove: () => undefined };
}

/** The same file, sync and group commit that a classroom's server has. */
export function onDisk(): Keeping {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-faults-'));
  return {
    open: () => openSqliteLog(folder),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A server in this process that can be ended or die in the middle of anything, and starts again on its log. */
export class RestartableServer {
  #log!: EventLog;
  readonly #dying: Promise<unknown>[] = [];
  #server!: TestServer;
  #die: () => Promise<void> = async () => undefined;

  readonly #now: () => number;
  readonly #keeping: Keeping;

  private constructor(now: () => number, keeping: Keeping) {
    this.#now = now;
    this.#keeping = keeping;
  }

  static async start(now: () => number = Date.now, keeping = inMemory()): Promise<RestartableServer> {
    const one = new RestartableServer(now, keeping);
    one.#log = await keeping.open();
    await one.#start();
    return one;
  }

  /** The log as it is open now. */
  get log(): EventLog {
    return this.#log;
  }

  get running(): TestServer {
    return this.#server;
  }

  async #start(): Promise<void> {
    const { log, die } = mortal(this.#log);
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
    if (how === 'killed') await this.#die();
    const ending = this.#server.end().catch((error: unknown) => how === 'killed' || Promise.reject(error));
    if (how === 'killed') this.#dying.push(ending);
    else {
      await ending;
      this.#log = await this.#keeping.open();
    }
    await this.#start();
  }

  async end(): Promise<void> {
    await this.#server.end();
    await Promise.all(this.#dying);
    this.#keeping.remove();
  }
}
