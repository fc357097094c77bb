import type { Socket as TcpSocket } from 'node:net';

/** How long a connection may say nothing, ms, and how many such there may be behind one address. */
export interface SilenceLimits {
  readonly withinMs: number;
  readonly most: number;
}

/**
 * A page says hello as soon as it is connected; on a bad network that takes a few seconds. A school may
 * come back all at once, behind one address.
 */
export const SILENCE: SilenceLimits = { withinMs: 15_000, most: 2000 };

interface Waiting {
  readonly address: string;
  readonly timer: NodeJS.Timeout;
}

/**
 * Connections that have not said hello, by address: they cost memory and say nothing by which they could
 * be counted otherwise. None is waited for longer than a page needs.
 */
export class Silent {
  readonly #limits: SilenceLimits;
  readonly #waiting = new Map<TcpSocket, Waiting>();
  readonly #count = new Map<string, number>();

  constructor(limits: SilenceLimits) {
    this.#limits = limits;
  }

  /** Waits for this connection; false where too many behind its address say nothing. */
  enter(connection: TcpSocket, address: string): boolean {
    if (this.#waiting.has(connection)) return true;
    const before = this.#count.get(address) ?? 0;
    if (before >= this.#limits.most) return false;
    this.#count.set(address, before + 1);
    const timer = setTimeout(() => connection.destroy(), this.#limits.withinMs);
    this.#waiting.set(connection, { address, timer });
    connection.once('close', () => this.said(connection));
    return true;
  }

  /** It has spoken, or is gone. */
  said(connection: TcpSocket): void {
    const waiting = this.#waiting.get(connection);
    if (!waiting) return;
    clearTimeout(waiting.timer);
    this.#waiting.delete(connection);
    const rest = (this.#count.get(waiting.address) ?? 1) - 1;
    if (rest > 0) this.#count.set(waiting.address, rest);
    else this.#count.delete(waiting.address);
  }
}
