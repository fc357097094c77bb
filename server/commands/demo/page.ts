import { nanoid } from 'nanoid';
import { io, type Socket } from 'socket.io-client';
import {
  type Answer,
  type ClientAsk,
  type Fetched,
  type Handshake,
  type Hello,
  type LatestUp,
  PROTOCOL_VERSION,
  type Welcome,
} from '../../../shared/wire/protocol.ts';

/** A page without a screen: what a browser would say to the server, said by a program. */
export interface Page {
  readonly welcome: Extract<Welcome, { ok: true }>;
  /** Resolves with the server's answer; a refusal is an answer too. */
  readonly ask: (ask: ClientAsk) => Promise<Answer>;
  readonly latest: (value: LatestUp) => void;
  readonly fetch: (document: string) => Promise<Fetched>;
  /** Called with each batch of events. */
  readonly onEvents: (hear: (events: Extract<Welcome, { ok: true }>['events']) => void) => void;
  readonly close: () => void;
}

const ANSWER_WITHIN_MS = 10_000;

/** The cookie that an answer gives, as `name=value`. */
export function cookieOf(response: Response): string {
  const cookie = response.headers.getSetCookie()[0];
  if (!response.ok && response.status !== 303) throw new Error(`the server said ${response.status}`);
  if (cookie === undefined) throw new Error('the server gave no seat');
  return cookie.split(';')[0]!;
}

/** Connects with a seat's cookie and says hello. Throws where the server refuses the seat. */
export async function openPage(url: string, cookie: string, handshake: Handshake): Promise<Page> {
  const socket: Socket = io(url, {
    transports: ['websocket'],
    auth: { ...handshake },
    extraHeaders: { cookie },
    forceNew: true,
  });
  const say = (event: string, body: unknown): Promise<unknown> =>
    socket.timeout(ANSWER_WITHIN_MS).emitWithAck(event, body);
  const hello: Hello = { version: PROTOCOL_VERSION, room: null, seq: 0 };
  const welcome = (await say('hello', hello)) as Welcome;
  if (!welcome.ok) {
    socket.close();
    throw new Error(`the server refused the seat: ${welcome.refusal.code}`);
  }
  return {
    welcome,
    ask: async (ask) => (await say('command', { version: PROTOCOL_VERSION, id: nanoid(), ask })) as Answer,
    latest: (value) => socket.emit('latest', value),
    fetch: async (document) => (await say('fetch', document)) as Fetched,
    onEvents: (hear) => void socket.on('events', hear),
    close: () => void socket.close(),
  };
}
