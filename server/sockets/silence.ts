import type { Socket as TcpSocket } from 'node:net';

/** How long a connection without a seat may say nothing, ms, and how many such there may be behind one address. */
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
 * Connections that have no seat, by address: they cost memory and say nothing by which they could be
 * counted otherwise. None is waited for longer than a page needs. A page that is refused goes on asking on
 * the same connection, like a board that waits for its room: it keeps its place, and its place is counted.
 */
export class Silent {
  readonly #limits: SilenceLimits;
  readonly #waiting = new Map<TcpSocket, Waiting>();
  readonly #count = new Map<string, number>();

  constructor(limits: SilenceLimits) {
    this.#limits = limits;
  }

  /** Waits for this connection; false where too many behind its address have no seat. */
  enter(connection: TcpSocket, address: string): boolean {
    if (this.#waiting.has(connection)) return true;
    const before = this.#count.get(address) ?? 0;
    if (before >= this.#limits.most) return false;
    this.#count.set(address, before + 1);
    const timer = setTimeout(() => connection.destroy(), this.#limits.withinMs);
    this.#waiting.set(connection, { address, timer });
    connection.once('close', () => this.leave(connection));
    return true;
  }

  /** It has said a hello that was refused: it may say another one, and has its time anew. */
  asked(connection: TcpSocket): void {
    this.#waiting.get(connection)?.timer.refresh();
  }

  /** It has its seat, or is gone. */
  leave(connection: TcpSocket): void {
    const waiting = this.#waiting.get(connection);
    if (!waiting) return;
    clearTimeout(waiting.timer);
    this.#waiting.delete(connection);
    const rest = (this.#count.get(waiting.address) ?? 1) - 1;
    if (rest > 0) this.#count.set(waiting.address, rest);
    else this.#count.delete(waiting.address);
  }
}
