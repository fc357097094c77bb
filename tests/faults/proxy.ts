import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net';

/** What a proxy does to the bytes that pass. */
export type Weather =
  | { readonly kind: 'clear' }
  /** Every chunk comes so much later, in order. */
  | { readonly kind: 'delay'; readonly ms: number }
  /** So many bytes at a time, one portion every few milliseconds. */
  | { readonly kind: 'throttle'; readonly bytes: number }
  /** Connections stay open, and nothing passes: a tablet at the edge of the network. */
  | { readonly kind: 'half-open' }
  /** What the page says never arrives, or what the server says. */
  | { readonly kind: 'lose'; readonly way: Way }
  /** What the page says waits until other weather comes, or until its connection haunts. */
  | { readonly kind: 'hold' }
  /** New connections are cut off at once. */
  | { readonly kind: 'refuse' };

type Way = 'up' | 'down';

const PORTION_MS = 4;

interface Pair {
  readonly page: Socket;
  readonly server: Socket;
  /** Says everything to the server that the page says; nobody hears what it is told. */
  readonly double: Socket | null;
  /** What is held. */
  readonly held: (() => void)[];
  /** Without its page: the server believes that it is still there. */
  ghost: boolean;
  /** Nothing is held any more. */
  free: boolean;
  /** Has lost something and can only be cut. */
  doomed: boolean;
}

const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

const release = ({ held }: Pair) => {
  for (const goOn of held.splice(0)) goOn();
};

function end(pair: Pair): void {
  release(pair);
  for (const socket of [pair.page, pair.server, pair.double]) socket?.destroy();
}

/**
 * A TCP proxy of our own in front of a server, with weather. Each connection may be doubled, and one
 * that its page has given up may go on as a ghost while the page has a newer one.
 */
export class FaultyProxy {
  readonly #listener: Server;
  readonly #pairs = new Set<Pair>();
  /** Where the server listens; another one after a restart. */
  target: number;
  /** Whether everything that comes in on new connections is said to the server twice. */
  doubling = false;
  /** How many connections there have been. */
  accepted = 0;
  weather: Weather = { kind: 'clear' };

  private constructor(target: number) {
    this.target = target;
    this.#listener = createServer((page) => this.#accept(page));
  }

  static async before(port: number): Promise<FaultyProxy> {
    const proxy = new FaultyProxy(port);
    proxy.#listener.listen(0, '127.0.0.1');
    await once(proxy.#listener, 'listening');
    return proxy;
  }

  get port(): number {
    return (this.#listener.address() as AddressInfo).port;
  }

  get url(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  /** Cuts every connection, as when a cable is pulled. */
  cut(): void {
    for (const pair of this.#pairs) end(pair);
  }

  /**
   * The page's ends are cut. The server's go on: what they still get, such as what was held, comes
   * `afterMs` later, when the page has a newer connection; they end as long after that.
   */
  haunt(afterMs: number): void {
    for (const pair of this.#pairs) {
      if (pair.ghost) continue;
      pair.ghost = true;
      pair.page.destroy();
      void this.#ghostly(pair, afterMs);
    }
  }

  async #ghostly(pair: Pair, afterMs: number): Promise<void> {
    await later(afterMs);
    pair.free = true;
    release(pair);
    await later(afterMs);
    end(pair);
  }

  /** Other weather. Connections that lost bytes meanwhile are cut. */
  change(weather: Weather): void {
    this.weather = weather;
    for (const pair of this.#pairs) {
      if (pair.doomed) end(pair);
      else if (!pair.ghost && weather.kind !== 'hold') release(pair);
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
    const upstream = () => connect(this.target, '127.0.0.1');
    const double = this.doubling ? upstream() : null;
    const pair = { page, server: upstream(), double, held: [], ghost: false, free: false, doomed: false };
    this.#pairs.add(pair);
    this.#pass(pair, 'up');
    this.#pass(pair, 'down');
    pair.double?.resume();
    for (const socket of [page, pair.server, pair.double]) socket?.on('error', () => undefined);
    page.on('close', () => !pair.ghost && this.#closed(pair));
    pair.server.on('close', () => this.#closed(pair));
  }

  /** The other end of a half-open connection is not told before the weather changes. */
  #closed(pair: Pair): void {
    if (this.weather.kind === 'half-open' && !pair.ghost) pair.doomed = true;
    else end(pair);
    if (pair.page.destroyed && pair.server.destroyed) this.#pairs.delete(pair);
  }

  /** Bytes go through one after the other, each in the weather of its moment. */
  #pass(pair: Pair, way: Way): void {
    const [from, to] = way === 'up' ? [pair.page, [pair.server, pair.double]] : [pair.server, [pair.page]];
    let turn = Promise.resolve();
    from.on('data', (chunk: Buffer) => {
      turn = turn.then(() => this.#carry(pair, way, chunk, to));
    });
  }

  async #carry(pair: Pair, way: Way, chunk: Buffer, to: readonly (Socket | null)[]): Promise<void> {
    const { weather } = this;
    if (weather.kind === 'half-open' || (weather.kind === 'lose' && weather.way === way)) {
      pair.doomed = true;
      return;
    }
    if (weather.kind === 'delay') await later(weather.ms);
    if (way === 'up' && (weather.kind === 'hold' || pair.ghost) && !pair.free) {
      await new Promise<void>((goOn) => pair.held.push(goOn));
    }
    const portion = weather.kind === 'throttle' ? weather.bytes : chunk.length;
    for (let at = 0; at < chunk.length; at += portion) {
      if (weather.kind === 'throttle') await later(PORTION_MS);
      for (const socket of to) if (!socket?.destroyed) socket?.write(chunk.subarray(at, at + portion));
    }
  }
}
