import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { Server } from 'socket.io';
import { Rates } from '../../server/seats/rates.ts';
import { type RunningServer, startServer } from '../../server/server.ts';
import type { Told } from './room-child.ts';

/**
 * A process of its own for the benches of the room: `room FOLDER` is the whole server, `bare` one that
 * only echoes and broadcasts; with `at-speed` a lesson may be played faster than children do. Tells its parent where it listens, and its memory and delay when asked.
 */

const TICK_MS = 5;
const [kind, folder, pace] = process.argv.slice(2);
const tell = (told: Told) => process.send?.(told);

/** A commands' answer and a broadcast to the room, nothing more; sizes as in the room. */
async function startBare(): Promise<number> {
  const http = createServer();
  const io = new Server(http, { transports: ['websocket'], serveClient: false });
  let seq = 0;
  io.on('connection', (socket) => {
    const { room, page } = socket.handshake.auth as { room: string; page: string };
    void socket.join(room);
    if (page === 'desk') void socket.join(`${room} desk`);
    socket.on('command', (_: unknown, ack: (answer: unknown) => void) => {
      seq++;
      const fact = { kind: 'handed-in', entry: 'x'.repeat(10), team: 'x'.repeat(8), design: 'x'.repeat(64) };
      ack({ ok: true, seq });
      io.to(room).emit('events', [{ seq, at: Date.now(), version: 1, fact }]);
    });
    socket.on('latest', (value: unknown) => {
      io.to(`${room} desk`).emit('latest', value);
    });
  });
  http.listen(0);
  await once(http, 'listening');
  return (http.address() as AddressInfo).port;
}

/** The server as it ships; only a bench opens forty rooms in one breath. */
async function startRoom(dataDir: string): Promise<RunningServer> {
  const rates = new Rates();
  return startServer({
    port: 0,
    dataDir,
    pages: null,
    rates: {
      allows: async (name, key) =>
        pace === 'at-speed' || name === 'openRoom' || (await rates.allows(name, key)),
      guess: (name, key, look) => rates.guess(name, key, look),
    },
  });
}

const delay = monitorEventLoopDelay({ resolution: TICK_MS });
delay.enable();
const server = kind === 'bare' ? undefined : await startRoom(folder!);
const port = server?.port ?? (await startBare());

process.on('message', (asked) => {
  if (asked === 'figures') {
    globalThis.gc?.();
    const { rss, heapUsed, external } = process.memoryUsage();
    // The histogram holds the time between its own ticks.
    const delayP99 = Math.max(0, delay.percentile(99) / 1e6 - TICK_MS);
    const { user, system } = process.cpuUsage();
    tell({ kind: 'figures', rss, kept: heapUsed + external, delayP99, coreSeconds: (user + system) / 1e6 });
    delay.reset();
  }
});
process.on('disconnect', () => {
  void (server ? server.close() : Promise.resolve()).then(() => process.exit(0));
});
tell({ kind: 'listening', port, ownerKey: server?.ownerKey ?? '' });
