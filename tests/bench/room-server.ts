import { once } from 'node:events';
import { open } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { Server } from 'socket.io';
import { Rates } from '../../server/seats/rates.ts';
import { type RunningServer, startServer } from '../../server/server.ts';
import type { Told } from './room-child.ts';

/**
 * A process of its own for the benches of the room: `room FOLDER` is the whole server, `bare` one that
 * only echoes and broadcasts, `synced` one that does so when the command is on the disk; with `at-speed`
 * a lesson may be played faster than children do. Tells its parent where it listens, and its memory and
 * delay when asked.
 */

const TICK_MS = 5;
const [kind, folder, pace] = process.argv.slice(2);
const tell = (told: Told) => process.send?.(told);

/** Writes to the end of a file and syncs it: the least that outlives a power cut. */
async function syncedFile(): Promise<(text: string) => Promise<void>> {
  const file = await open(join(folder!, 'synced'), 'a');
  return async (text) => {
    await file.write(text);
    await file.datasync();
  };
}

/** A command's answer and a broadcast to the room, nothing more; sizes as in the room. */
async function startBare(kept: ((text: string) => Promise<void>) | undefined): Promise<number> {
  const http = createServer();
  const io = new Server(http, { transports: ['websocket'], serveClient: false });
  let seq = 0;
  io.on('connection', (socket) => {
    const { room, page } = socket.handshake.auth as { room: string; page: string };
    void socket.join(room);
    if (page === 'desk') void socket.join(`${room} desk`);
    socket.on('command', async (command: unknown, ack: (answer: unknown) => void) => {
      if (kept) await kept(JSON.stringify(command));
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
const server = kind === 'room' ? await startRoom(folder!) : undefined;
const port = server?.port ?? (await startBare(kind === 'synced' ? await syncedFile() : undefined));

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
