import { nanoid } from 'nanoid';
import type { Handshake } from '../../shared/wire/protocol.ts';
import type { Timers } from './latest-up.ts';
import { Link } from './link.ts';
import { browserShelf } from './outbox.ts';
import { openSocket } from './wire.ts';

/** The browser's own. */
export const TIMERS: Timers = {
  now: () => Date.now(),
  after: (ms, work) => {
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
};

export interface ConnectOptions {
  readonly page: Handshake['page'];
  /** One of the owner's rooms; absent: the seat's own, or the newest. */
  readonly room?: string;
}

/**
 * Links this page to its room. Sends `Handshake` and the cookie; wakes up with the page; close it when
 * the page goes.
 */
export function connect({ page, room }: ConnectOptions): Link {
  const link = new Link({
    handshake: { page, room: room ?? null },
    openWire: openSocket,
    shelf: browserShelf(page, TIMERS.now()),
    timers: TIMERS,
    newId: () => nanoid(),
  });
  const wake = () => {
    if (document.visibilityState === 'visible') link.wake();
  };
  document.addEventListener('visibilitychange', wake);
  window.addEventListener('pageshow', wake);
  window.addEventListener('online', wake);
  return link;
}

export type { Link };
