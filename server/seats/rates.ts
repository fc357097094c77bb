import { RateLimiterMemory } from 'rate-limiter-flexible';
import { LIMITS } from '../../shared/wire/protocol.ts';

/**
 * How often is too often. A whole class may sit behind one address, so only wrong words are counted by
 * address; right ones never are. Commands and values are counted by seat.
 */
const RATES = {
  command: { points: LIMITS.commandsPerSecond, duration: 1 },
  latest: { points: LIMITS.latestPerSecond, duration: 1 },
  /** A desk that loads anew fetches every drawing of the lesson at once. */
  fetch: { points: LIMITS.fetchesPerSecond, duration: 1 },
  hello: { points: LIMITS.commandsPerSecond, duration: 1 },
  wrongWord: { points: 120, duration: 60 },
  wrongKey: { points: 20, duration: 60 },
  openRoom: { points: 30, duration: 60 },
  /** A page of paper is work; a desk that leafs through a preview asks for many. */
  print: { points: 90, duration: 60 },
} as const;

export type RateName = keyof typeof RATES;

/** What the ways in need of the rates; a test may lift them. */
export type RateLimits = Pick<Rates, 'allows' | 'isUsedUp'>;

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

  /** Whether the rate has been used up, without counting. */
  async isUsedUp(name: RateName, key: string): Promise<boolean> {
    const used = await this.#limiters[name].get(key);
    return used !== null && used.consumedPoints >= RATES[name].points;
  }
}
