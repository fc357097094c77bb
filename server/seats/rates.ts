import { RateLimiterMemory } from 'rate-limiter-flexible';
import { LIMITS } from '../../shared/wire/protocol.ts';

/**
 * How often is too often. A whole class may sit behind one address, so only wrong words are counted by
 * address; right ones never are. Commands and values are counted by seat. `duration` in s.
 */
const RATES = {
  command: { points: LIMITS.commandsPerSecond, duration: 1 },
  latest: { points: LIMITS.latestPerSecond, duration: 1 },
  /** A desk that loads anew fetches every drawing of the lesson at once. */
  fetch: { points: LIMITS.fetchesPerSecond, duration: 1 },
  hello: { points: LIMITS.commandsPerSecond, duration: 1 },
  /** Boards, and pages without a seat, of all classes behind one address. */
  helloUnknown: { points: 100, duration: 1 },
  /**
   * Pages whose cookie opens no seat: tablets that have not joined, each every 3 s, of all classes behind
   * one address. Right ones are not counted, so that a school may come back at once.
   */
  wrongSeat: { points: 1500, duration: 10 },
  /** The judge is shared by all. */
  handIn: { points: LIMITS.handInsPerMinute, duration: 60 },
  /** Five typos for each of thirty tablets; then nobody behind this address gets in by a word for a while. */
  wrongWord: { points: 150, duration: 900 },
  /** A code has four digits and lives for five minutes. */
  wrongCode: { points: 10, duration: 60 },
  makeLink: { points: 30, duration: 60 },
  wrongKey: { points: 20, duration: 60 },
  /** Thirty tablets, each four times a minute. */
  check: { points: 120, duration: 60 },
  openRoom: { points: 30, duration: 60 },
  /** A desk that builds saves whenever it comes to rest. */
  shelve: { points: 120, duration: 60 },
  /** A page of paper is work; a desk that leafs through a preview asks for many. */
  print: { points: 90, duration: 60 },
} as const;

export type RateName = keyof typeof RATES;

/** What the ways in need of the rates; a test may lift them. */
export type RateLimits = Pick<Rates, 'allows' | 'guess'>;

export type Guess<T> =
  | { readonly allowed: false }
  | { readonly allowed: true; readonly found: T | undefined };

export class Rates {
  readonly #limiters = Object.fromEntries(
    Object.entries(RATES).map(([name, rate]) => [name, new RateLimiterMemory(rate)]),
  ) as Record<RateName, RateLimiterMemory>;

  /** Counts one more and says whether that is still within the rate. */
  async allows(name: RateName, key: string): Promise<boolean> {
    try {
      await this.#limiters[name].consume(key);
      return true;
    } catch {
      return false;
    }
  }

  /**
   * Looks for what somebody guesses, unless there were too many wrong guesses. It is counted before the
   * look and given back when it was right, so that asking many at once is no way around. Where the look
   * fails nobody has learned anything.
   */
  async guess<T>(name: RateName, key: string, look: () => Promise<T | undefined>): Promise<Guess<T>> {
    if (!(await this.allows(name, key))) return { allowed: false };
    const found = await look().catch(async (error: unknown) => {
      await this.#limiters[name].reward(key);
      throw error;
    });
    if (found !== undefined) await this.#limiters[name].reward(key);
    return { allowed: true, found };
  }
}
