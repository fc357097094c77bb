import { networkInterfaces } from 'node:os';
import type { Request } from 'express';
import type { Arrivals, CheckReport } from '../../shared/wire/protocol.ts';
import { isLoopback } from '../seats/address.ts';

function isThisMachine(request: Request): boolean {
  const { remoteAddress } = request.socket;
  if (isLoopback(remoteAddress)) return true;
  const from = remoteAddress?.replace(/^::ffff:/, '');
  return Object.values(networkInterfaces()).some((list) => list?.some(({ address }) => address === from));
}

/** That devices have got through to this server: how many times, when, and what the last check said; not who. */
export class ArrivalBook {
  readonly #now: () => number;
  #visits = 0;
  #last: number | null = null;
  #check: { readonly report: CheckReport; readonly at: number } | null = null;

  constructor(now: () => number) {
    this.#now = now;
  }

  visited(request: Request): void {
    if (isThisMachine(request)) return;
    this.#visits++;
    this.#last = this.#now();
  }

  checked(report: CheckReport): void {
    this.#check = { report, at: this.#now() };
  }

  read(): Arrivals {
    const ago = (at: number) => Math.max(0, this.#now() - at);
    return {
      visits: this.#visits,
      lastAgo: this.#last === null ? null : ago(this.#last),
      check: this.#check && { ...this.#check.report, ago: ago(this.#check.at) },
    };
  }
}
