import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net';

/**
 * A plain balancer: every new connection goes to the next server in turn, or to the one after it where
 * that takes none. It knows nothing of what is said, so nobody comes back to the same server by plan.
 */
export class Balancer {
  readonly #server: Server;
  readonly #sockets = new Set<Socket>();
  #targets: readonly number[] = [];
  #next = 0;
  /** Connections that were passed on, by target. */
  readonly passed = new Map<number, number>();

  private constructor() {
    this.#server = createServer({ pauseOnConnect: true }, (client) =>
      this.#pass(client, this.#targets.length),
    );
  }

  static async start(): Promise<Balancer> {
    const one = new Balancer();
    one.#server.listen(0, '127.0.0.1');
    await once(one.#server, 'listening');
    return one;
  }

  get url(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  /** The ports of the servers behind it. */
  turnTo(ports: readonly number[]): void {
    this.#targets = ports;
  }

  #pass(client: Socket, tries: number): void {
    const port = this.#targets[this.#next++ % this.#targets.length];
    if (port === undefined || tries === 0) return void client.destroy();
    const server = connect(port, '127.0.0.1');
    const failed = () => this.#pass(client, tries - 1);
    server.once('error', failed);
    server.once('connect', () => {
      server.off('error', failed);
      this.passed.set(port, (this.passed.get(port) ?? 0) + 1);
      for (const [from, to] of [
        [client, server],
        [server, client],
      ] as const) {
        this.#sockets.add(from);
        from.on('error', () => to.destroy());
        from.on('close', () => {
          this.#sockets.delete(from);
          to.destroy();
        });
      }
      client.pipe(server).pipe(client);
    });
  }

  async close(): Promise<void> {
    this.#server.close();
    for (const socket of this.#sockets) socket.destroy();
    await once(this.#server, 'close');
  }
}
