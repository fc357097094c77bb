import type { Server as HttpServer } from 'node:http';
import type { Server as HttpsServer } from 'node:https';
import type { Socket as TcpSocket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { Server } from 'socket.io';
import type { Ending } from '../../shared/wire/protocol.ts';
import type { Outlet } from '../rooms/outlet.ts';
import { isSameSite } from '../seats/origin.ts';
import { settledWithin } from '../settled.ts';
import { SILENCE, type SilenceLimits, Silent } from './silence.ts';
import { Talk, type TalkParts } from './talk.ts';

export interface SocketsParts extends TalkParts {
  readonly http: HttpServer | HttpsServer;
  readonly silence?: SilenceLimits | undefined;
}

export interface Sockets {
  readonly outlet: Outlet;
  /** How many pages are connected. */
  readonly count: () => number;
  /** Tells every page, answers what is on its way, but takes no longer than `withinMs`. */
  readonly close: (withinMs: number) => Promise<void>;
}

/** What is far too large is cut off while it arrives; what is only too large gets a refusal. */
const HARD_LIMIT_BYTES = 1_000_000;
/** Another server, or this one after its restart, shall not get everybody in the same instant. */
const COME_BACK_WITHIN_MS = 3000;
const LAST_WORDS_MS = 500;

/** Resolves when every connection has sent what it had to say and is closed. */
async function gone(io: Server): Promise<void> {
  while (io.engine.clientsCount > 0) await pause(5);
}

/** Puts the protocol of `shared/wire` on an HTTP server. */
export function startSockets(parts: SocketsParts): Sockets {
  const silent = new Silent(parts.silence ?? SILENCE);
  const io = new Server(parts.http, {
    transports: ['websocket'],
    maxHttpBufferSize: HARD_LIMIT_BYTES,
    serveClient: false,
    // Tablets sleep without a word: without an answer for so long they count as away.
    pingInterval: 10_000,
    pingTimeout: 8_000,
    allowRequest: (request, decide) =>
      decide(null, isSameSite(request) && silent.enter(request.socket, parts.addressOf(request))),
  });
  const connections = new Set<TcpSocket>();
  parts.http.on('connection', (connection: TcpSocket) => {
    connections.add(connection);
    connection.on('close', () => connections.delete(connection));
  });
  const talk = new Talk(parts, io, silent);
  io.on('connection', talk.connect);
  return {
    outlet: talk.outlet,
    count: () => talk.count,
    close: async (withinMs) => {
      const ending: Ending = { within: COME_BACK_WITHIN_MS };
      io.emit('ending', ending);
      await settledWithin(talk.end(), withinMs);
      io.disconnectSockets(true);
      await settledWithin(gone(io), LAST_WORDS_MS);
      const closed = io.close();
      await settledWithin(closed, LAST_WORDS_MS);
      // A page that went without a word, or has not said all of its request, would be waited for.
      for (const connection of connections) connection.destroy();
      await closed;
    },
  };
}
