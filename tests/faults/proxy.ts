import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net';

/** What a proxy does to the bytes that pass, in both directions. */
export type Weather =
  | { readonly kind: 'clear' }
  /** Every chunk comes so much later, in order. */
  | { readonly kind: 'delay'; readonly ms: number }
  /** So many bytes at a time, one portion every few milliseconds. */
  | { readonly kind: 'throttle'; readonly bytes: number }
  /** Connections stay open, and nothing passes: a tablet at the edge of the network. */
  | { readonly kind: 'half-open' }
  /** New connections are cut off at once. */
  | { readonly kind: 'refuse' };

const PORTION_MS = 4;

interface Pair {
  readonly page: Socket;
  readonly server: Socket;
}

const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A TCP proxy of our own in front of a server, with weather. */
export class FaultyProxy {
  readonly #target: number;
  readonly #listener: Server;
  readonly #pairs = new Set<Pair>();
  /** Connections that have lost something and can only be cut. */
  readonly #doomed = new Set<Pair>();
  /** How many connections there have been. */
  accepted = 0;
  weather: Weather = { kind: 'clear' };

  private constructor(target: number) {
    this.#target = target;
    this.#listener = createServer((page) => this.#accept(page));
  }

  static async before(port: number): Promise<FaultyProxy> {
    const proxy = new FaultyProxy(port);
    proxy.#listener.listen(0, '127.0.0.1');
    await once(proxy.#listener, 'listening');
    return proxy;
  }

  get url(): string {
    return `http://127.0.0.1:${(this.#listener.address() as AddressInfo).port}`;
  }

  /** Cuts every connection, as when a cable is pulled. */
  cut(): void {
    for (const { page, server } of [...this.#pairs, ...this.#doomed]) {
      page.destroy();
      server.destroy();
    }
  }

  async close(): Promise<void> {
    this.cut();
    this.#listener.close();
    await once(this.#listener, 'close');
  }

  #accept(page: Socket): void {
    if (this.weather.kind === 'refuse') return void page.destroy();
    this.accepted++;
    const server = connect(this.#target, '127.0.0.1');
    const pair = { page, server };
    this.#pairs.add(pair);
    this.#pass(page, server);
    this.#pass(server, page);
    for (const [end, other] of [
      [page, server],
      [server, page],
    ] as const) {
      end.on('error', () => undefined);
      end.on('close', () => {
        // The other end of a half-open connection is not told before the weather changes.
        if (this.weather.kind === 'half-open') this.#doomed.add(pair);
        else other.destroy();
        this.#pairs.delete(pair);
      });
    }
  }

  /** Bytes go through one after the other, each in the weather of its moment. */
  #pass(from: Socket, to: Socket): void {
    let turn = Promise.resolve();
    from.on('data', (chunk: Buffer) => {
      turn = turn.then(() => this.#carry(chunk, to));
    });
  }

  async #carry(chunk: Buffer, to: Socket): Promise<void> {
    const { weather } = this;
    if (weather.kind === 'half-open') {
      this.#doom(to);
      return;
    }
    if (weather.kind === 'delay') await later(weather.ms);
    const portion = weather.kind === 'throttle' ? weather.bytes : chunk.length;
    for (let at = 0; at < chunk.length; at += portion) {
      if (weather.kind === 'throttle') await later(PORTION_MS);
      if (to.destroyed) return;
      to.write(chunk.subarray(at, at + portion));
    }
  }

  #doom(socket: Socket): void {
    for (const pair of this.#pairs)
      if (pair.page === socket || pair.server === socket) this.#doomed.add(pair);
  }

  /** Other weather. Connections that lost bytes meanwhile are cut. */
  change(weather: Weather): void {
    this.weather = weather;
    for (const { page, server } of this.#doomed) {
      page.destroy();
      server.destroy();
    }
    this.#doomed.clear();
  }
}
