import { nanoid } from 'nanoid';
import { io } from 'socket.io-client';
import type { RoomEvent } from '../../shared/room/events.ts';
import type { Ending, Handshake, LatestDown } from '../../shared/wire/protocol.ts';

/** What the link needs of a socket; a test gives it a plain object. */
export interface Wire {
  readonly open: () => boolean;
  /** Sends and waits for the acknowledgement; rejects when none comes in time or the socket closes. */
  readonly ask: (name: 'hello' | 'command' | 'fetch', body: unknown, timeoutMs: number) => Promise<unknown>;
  readonly tell: (name: 'latest', body: unknown) => void;
  /** Drops the socket; unless `forGood`, it comes back by itself, spread over time. */
  readonly drop: (forGood: boolean) => void;
  readonly start: () => void;
}

export interface WireListener {
  readonly opened: () => void;
  readonly closed: () => void;
  readonly events: (events: readonly RoomEvent[]) => void;
  readonly latest: (value: LatestDown) => void;
  readonly quiet: () => void;
  readonly moved: () => void;
}

export type OpenWire = (handshake: Handshake, listener: WireListener) => Wire;

/** A class of tablets that lost one server must not all come back in the same instant. */
const COME_BACK = {
  reconnectionDelay: 400,
  reconnectionDelayMax: 4000,
  randomizationFactor: 0.6,
} as const;

/** Where a program that is no page finds its server, and the cookie that it carries. */
export interface SocketTarget {
  readonly url: string;
  readonly cookie: string;
}

/** Opens websockets to the server that this page came from, or to `target`. */
export const socketTo =
  (target?: SocketTarget): OpenWire =>
  (handshake, listener) => {
    const tab = nanoid();
    let connection = 0;
    const auth = (send: (auth: Handshake) => void) =>
      send({ ...handshake, tab: { id: tab, connection: ++connection } });
    const options = { transports: ['websocket'], auth, autoConnect: false, ...COME_BACK };
    const socket = target
      ? io(target.url, { ...options, forceNew: true, extraHeaders: { cookie: target.cookie } })
      : io(options);
    let stopped = false;
    /** A server that ends says how long its pages may take to come back. */
    let comeBackWithin = 0;
    socket.on('ending', ({ within }: Ending) => {
      comeBackWithin = within;
    });
    socket.on('connect', listener.opened);
    socket.on('disconnect', (reason) => {
      listener.closed();
      // After a close by the server socket.io does not come back by itself.
      if (reason === 'io server disconnect')
        setTimeout(() => !stopped && socket.connect(), Math.random() * comeBackWithin);
      comeBackWithin = 0;
    });
    socket.on('connect_error', () => {
      listener.closed();
      if (!socket.active && !stopped)
        setTimeout(() => !stopped && socket.connect(), COME_BACK.reconnectionDelayMax);
    });
    socket.on('events', listener.events);
    socket.on('latest', listener.latest);
    socket.on('quiet', listener.quiet);
    socket.on('moved', listener.moved);
    return {
      open: () => socket.connected,
      ask: async (name, body, timeoutMs) => {
        if (!socket.connected) throw new Error('closed');
        return socket.timeout(timeoutMs).emitWithAck(name, body);
      },
      tell: (name, body) => {
        if (socket.connected) socket.emit(name, body);
      },
      drop: (forGood) => {
        stopped = forGood;
        if (forGood) socket.disconnect();
        else socket.io.engine?.close();
      },
      start: () => {
        stopped = false;
        socket.connect();
      },
    };
  };

export const openSocket: OpenWire = socketTo();
