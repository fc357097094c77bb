import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { io, type Socket } from 'socket.io-client';
import type { RateLimits } from '../../server/seats/rates.ts';
import { type RunningServer, type ServerConfig, startServer } from '../../server/server.ts';
import { apply } from '../../shared/room/apply.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { LinkAsked, MadeLink } from '../../shared/wire/desks.ts';
import {
  type Answer,
  type ClientAsk,
  type Fetched,
  type Handshake,
  type LatestDown,
  PROTOCOL_VERSION,
  ROUTES,
  type Welcome,
} from '../../shared/wire/protocol.ts';

/** A real server on a free port with a folder of its own, and plain socket clients as pages. */

export interface TestServer extends RunningServer {
  readonly dataDir: string;
  /** Ends the server and removes its folder. */
  readonly end: () => Promise<void>;
}

export async function testServer(config: Partial<ServerConfig> = {}): Promise<TestServer> {
  const dataDir = config.dataDir ?? mkdtempSync(join(tmpdir(), 'harbour-room-'));
  const server = await startServer({ port: 0, pages: null, logLevel: 'silent', ...config, dataDir });
  const end = async () => {
    await server.close();
    rmSync(dataDir, { recursive: true, force: true });
  };
  return { ...server, dataDir, end };
}

/** For tests that are faster than people. */
export const NO_RATES: RateLimits = {
  allows: async () => true,
  guess: async (_name, _key, look) => ({ allowed: true, found: await look() }),
};

/** The cookies of an answer, as a browser would send them back. */
export const cookiesOf = (response: Response): string =>
  response.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ');

export async function ownerCookie(server: { url: string; ownerKey: string }): Promise<string> {
  return cookiesOf(await fetch(`${server.url}/desk?key=${server.ownerKey}`, { redirect: 'manual' }));
}

export const post = (url: string, body: unknown, cookie = ''): Promise<Response> =>
  fetch(url, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });

export async function openRoom(url: string, owner: string): Promise<{ room: string; word: string }> {
  const response = await post(`${url}${ROUTES.openRoom}`, { chargerWatched: true }, owner);
  return (await response.json()) as { room: string; word: string };
}

export async function joinCookie(url: string, word: string): Promise<string> {
  return cookiesOf(await post(`${url}${ROUTES.join}`, { word }));
}

/** A link that an owner or a desk gives away. */
export const makeLink = async (url: string, asked: LinkAsked, cookie: string): Promise<MadeLink> =>
  (await (await post(url + ROUTES.links, asked, cookie)).json()) as MadeLink;

/** Opens a link as a browser does: the cookie that it got, and where it was led. */
export async function visitLink(url: string, { address }: MadeLink) {
  const { pathname, search } = new URL(address);
  const response = await fetch(url + pathname + search, { redirect: 'manual' });
  return { cookie: cookiesOf(response), to: response.headers.get('location'), status: response.status };
}

const PATIENCE_MS = 10_000;
let commands = 0;

/** One page: a socket that folds what it is told, and remembers every byte that came. */
export class Page {
  readonly socket: Socket;
  state: RoomState | null = null;
  readonly events: RoomEvent[] = [];
  readonly latest: LatestDown[] = [];
  /** Everything that the server sent over this socket, as text. */
  received = '';
  quiet = 0;
  moved = 0;
  welcome: Welcome | null = null;

  constructor(
    url: string,
    page: 'desk' | 'board' | 'tablet',
    cookie = '',
    room: string | null = null,
    tab?: Handshake['tab'],
  ) {
    this.socket = io(url, {
      transports: ['websocket'],
      auth: { page, room, ...(tab && { tab }) },
      extraHeaders: { cookie },
      forceNew: true,
      reconnection: false,
    });
    this.socket.io.on('open', () => {
      this.socket.io.engine.on('packet', ({ data }) => {
        if (typeof data === 'string') this.received += `${data}\n`;
      });
    });
    this.socket.on('events', (events: RoomEvent[]) => this.#take(events));
    this.socket.on('latest', (value: LatestDown) => this.latest.push(value));
    this.socket.on('quiet', () => this.quiet++);
    this.socket.on('moved', () => this.moved++);
  }

  #take(events: readonly RoomEvent[]): void {
    for (const event of events) {
      if (!this.state || event.seq !== this.state.seq + 1) throw new Error(`a hole before ${event.seq}`);
      this.events.push(event);
      this.state = apply(this.state, event);
    }
  }

  async ask(name: string, body: unknown): Promise<unknown> {
    return this.socket.timeout(PATIENCE_MS).emitWithAck(name, body);
  }

  async hello(room = this.state?.id ?? null, seq = this.state?.seq ?? 0): Promise<Welcome> {
    const welcome = (await this.ask('hello', { version: PROTOCOL_VERSION, room, seq })) as Welcome;
    this.welcome = welcome;
    if (!welcome.ok) return welcome;
    if (welcome.snapshot) this.state = welcome.snapshot;
    // An event may have come while the answer was on its way.
    this.#take(welcome.events.filter(({ seq }) => seq > (this.state?.seq ?? 0)));
    return welcome;
  }

  command(ask: ClientAsk, id = `c${commands++}`): Promise<Answer> {
    return this.ask('command', { version: PROTOCOL_VERSION, id, ask }) as Promise<Answer>;
  }

  document(id: string): Promise<Fetched> {
    return this.ask('fetch', id) as Promise<Fetched>;
  }

  /** Waits until `holds`; rejects with `what` when it takes too long. */
  async until(what: string, holds: () => boolean, patienceMs = PATIENCE_MS): Promise<void> {
    const end = Date.now() + patienceMs;
    while (!holds()) {
      if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  }

  /** Waits for the event with this number. */
  reaches(seq: number): Promise<void> {
    return this.until(`event ${seq}`, () => (this.state?.seq ?? 0) >= seq);
  }

  close(): void {
    this.socket.close();
  }
}

/** A page that is connected and has said hello. */
export async function seated(...parts: ConstructorParameters<typeof Page>): Promise<Page> {
  const page = new Page(...parts);
  await page.hello();
  return page;
}

/** Pages that one test opens, to be closed together after it. */
export function pagesOfTest() {
  const pages: Page[] = [];
  const page = async (...parts: ConstructorParameters<typeof Page>): Promise<Page> => {
    const one = await seated(...parts);
    pages.push(one);
    return one;
  };
  const closePages = () => {
    for (const one of pages.splice(0)) one.close();
  };
  return { pages, page, closePages };
}

/** The value of a sample line in a text of metrics. */
export const sample = (text: string, name: string) =>
  Number(
    text
      .split('\n')
      .find((line) => line.startsWith(`${name} `))
      ?.split(' ')[1],
  );

/** The sequence number of an accepted command; throws where it was refused. */
export function seqOf(answer: Answer): number {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  return answer.seq;
}

export const codeOf = (answer: unknown): string => {
  const { ok, refusal } = answer as { ok?: boolean; refusal?: { code: string } };
  return ok ? 'accepted' : (refusal?.code ?? 'no answer');
};

/** A design in its file form: one straight line of `length` mm from the left, `y` mm down. */
export const lineDesign = (length: number, y = 100) => ({
  version: 1,
  drawing: {
    lines: [
      {
        id: 'a',
        width: 500,
        from: { x: 4000, y: y * 100 },
        pieces: [{ to: { x: 4000 + length * 100, y: y * 100 }, bulge: 0 }],
      },
    ],
    marks: [],
  },
});

/** A judge for tests that are about rooms: 60 points for a line of 100 mm or more. */
export const quickJudging = {
  judge: async ({ design }: { design: string }) => {
    const { drawing } = JSON.parse(design) as { drawing: { lines: { pieces: { to: { x: number } }[] }[] } };
    const far = (drawing.lines[0]?.pieces[0]?.to.x ?? 0) >= 14_000;
    const points = far ? 60 : 0;
    const verdict = {
      version: 1,
      engine: 1,
      level: 'entry',
      findings: [],
      runs: [],
      goals: [],
      met: far,
      points: [{ reason: 'goal:far', got: points, of: 100 }],
      total: points,
    };
    return { verdict, points, met: far };
  },
  close: async () => undefined,
};

/** A room in the building phase of `first-line`, with a desk and one tablet. The caller closes the pages. */
export async function buildingRoom({ url, ownerKey }: TestServer, seconds: number | null = null) {
  const owner = await ownerCookie({ url, ownerKey });
  const { word } = await openRoom(url, owner);
  const team = await joinCookie(url, word);
  const desk = await seated(url, 'desk', owner);
  const tablet = await seated(url, 'tablet', team);
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
  seqOf(await desk.command({ kind: 'start-building', seconds }));
  return { owner, word, team, desk, tablet };
}
