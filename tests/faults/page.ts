import { Link } from '../../client/link/link.ts';
import type { Pending, Shelf } from '../../client/link/outbox.ts';
import { socketTo } from '../../client/link/wire.ts';
import type { Seat } from '../../shared/room/events.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { Answer, ClientAsk, LatestUp } from '../../shared/wire/protocol.ts';
import type { FaultyProxy } from './proxy.ts';

/** A page's own link, outbox and drafts, without its picture, behind a proxy. */

const PATIENCE_MS = 90_000;

export const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** The browser's storage, which outlives a reload. */
function fakeShelf(): Shelf {
  const kept = new Map<string, Pending>();
  return {
    load: () => [...kept.values()],
    put: (pending) => void kept.set(pending.id, pending),
    drop: (id) => void kept.delete(id),
  };
}

let commands = 0;

/** A page with its own way to the server, which can be loaded anew. */
export class FaultyPage {
  readonly proxy: FaultyProxy;
  readonly seat: (room: RoomState) => Seat;
  readonly answers: Answer[] = [];
  readonly #make: () => Link;
  #draft: LatestUp | null = null;
  link: Link;

  /** `clock` is by how much the page's own clock is wrong, ms. */
  constructor(
    proxy: FaultyProxy,
    page: 'desk' | 'board' | 'tablet',
    cookie: string,
    clock: () => number = () => 0,
  ) {
    this.proxy = proxy;
    const shelf = fakeShelf();
    this.#make = () =>
      new Link({
        handshake: { page, room: null },
        openWire: socketTo({ url: proxy.url, cookie }),
        shelf,
        timers: {
          now: () => Date.now() + clock(),
          after: (ms, work) => {
            const timer = setTimeout(work, ms);
            return () => clearTimeout(timer);
          },
        },
        newId: () => `${page}-${commands++}`,
      });
    this.link = this.#make();
    this.seat = () => {
      const { you } = this.link.state();
      if (!you) throw new Error('a page without a seat');
      return you;
    };
  }

  /** The page is loaded anew: what was on its way is on the shelf, and its draft in the browser's storage. */
  reload(): void {
    // A ghost of the page before would count as another tab, which only a person can tell apart.
    this.proxy.cut();
    this.link.close();
    this.link = this.#make();
    if (this.#draft) this.link.tell(this.#draft);
  }

  draw(design: unknown): void {
    this.#draft = { kind: 'draft', round: 0, design };
    this.link.tell(this.#draft);
  }

  /** What was drawn last. */
  get drawn(): unknown {
    return this.#draft?.kind === 'draft' ? this.#draft.design : undefined;
  }

  /** Asks, and waits until it is answered, over any number of reloads. */
  async ask(ask: ClientAsk): Promise<void> {
    const asked = this.link;
    let settled = false;
    void asked.command(ask).then((answer) => {
      settled = true;
      this.answers.push(answer);
    });
    await until(
      `an answer to ${ask.kind}`,
      () => settled || (this.link !== asked && this.link.state().waiting === 0),
    );
  }
}

export async function until(what: string, holds: () => boolean): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  while (!holds()) {
    if (performance.now() > end) throw new Error(`waited in vain for ${what}`);
    await later(5);
  }
}
