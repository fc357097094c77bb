import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import jsqr from 'jsqr';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type JoinAddresses, ROUTES } from '../../shared/wire/protocol.ts';
import {
  cookiesOf,
  joinCookie,
  lineDesign,
  openRoom,
  type Page,
  post,
  quickJudging,
  seated,
  testServer,
} from './harness.ts';
import { stage } from './stage.ts';

const here = stage('file', { judging: quickJudging, publicUrl: 'http://harbour.example:4310/' });
let room: string;
let word: string;
let desk: Page;

beforeAll(async () => {
  ({ room, word } = await openRoom(here.url, here.owner));
  desk = await here.page(here.url, 'desk', here.owner);
  const tablets = [await tablet(), await tablet()];
  await desk.command({ kind: 'choose-challenge', key: 'first-line' });
  await desk.command({ kind: 'start-building', seconds: null });
  await tablets[0]!.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
  await tablets[0]!.command({ kind: 'hand-in', round: 0, design: lineDesign(50) });
  await desk.until('verdicts', () => desk.state?.entries.filter((e) => e.verdict).length === 2);
  for (const one of tablets) one.close();
});

const tablet = async () => seated(here.url, 'tablet', await joinCookie(here.url, word));
const get = (path: string, cookie = '') =>
  fetch(here.url + path, { redirect: 'manual', headers: { cookie } });
const refusalOf = async (response: Response) =>
  [response.status, ((await response.json()) as { refusal: { code: string } }).refusal.code] as const;

describe('links that carry a secret', () => {
  it('the desk’s is exchanged for a cookie that scripts and other sites cannot use', async () => {
    const response = await get(`/desk?key=${here.ownerKey}`);
    expect([response.status, response.headers.get('location')]).toEqual([303, '/desk']);
    expect(response.headers.get('set-cookie')).toMatch(/HttpOnly; SameSite=Strict/);
  });

  it('keeps the room in the address', async () => {
    const response = await get(`/desk?key=${here.ownerKey}&room=${word}`);
    expect(response.headers.get('location')).toBe(`/desk?room=${word}`);
  });

  it('a wrong key is refused, and guessing is slowed down', async () => {
    expect(await refusalOf(await get('/desk?key=guess'))).toEqual([401, 'wrong-key']);
    const guesses = await Promise.all(Array.from({ length: 30 }, (_, i) => get(`/desk?key=guess${i}`)));
    expect(guesses.map((r) => r.status)).toContain(429);
  });

  it('the QR code’s takes a seat and leaves the address', async () => {
    const response = await get(`${ROUTES.joinByLink}?word=${word}`);
    expect([response.status, response.headers.get('location')]).toEqual([303, '/']);
    const page = await seated(here.url, 'tablet', cookiesOf(response));
    expect(page.welcome).toMatchObject({ ok: true, you: { role: 'team' } });
    page.close();
  });

  it('a link that is only looked at beforehand takes no seat', async () => {
    const before = desk.state?.teams.length;
    const early = await fetch(`${here.url}${ROUTES.joinByLink}?word=${word}`, {
      headers: { 'sec-purpose': 'prefetch;anonymous-client-ip' },
    });
    const head = await fetch(`${here.url}${ROUTES.joinByLink}?word=${word}`, { method: 'HEAD' });
    expect([early.status, head.status, early.headers.getSetCookie().length]).toEqual([204, 204, 0]);
    await desk.hello();
    expect(desk.state?.teams.length).toBe(before);
  });

  it('of a wrong word leads to the page that asks for it', async () => {
    const response = await get(`${ROUTES.joinByLink}?word=nowhere-11`);
    expect(response.headers.get('location')).toBe('/?refused=unknown-room');
  });
});

describe('joining', () => {
  it('a class behind one address is not taken for a guesser', async () => {
    const other = await openRoom(here.url, here.owner);
    const answers = await Promise.all(
      Array.from({ length: 45 }, () => post(`${here.url}${ROUTES.join}`, { word: other.word })),
    );
    const statuses = answers.map((r) => r.status);
    expect(statuses.filter((status) => status === 204).length).toBe(40);
    expect(statuses.filter((status) => status === 409).length).toBe(5);
  });

  it('is refused in a wrong form', async () => {
    const join = `${here.url}${ROUTES.join}`;
    expect(await refusalOf(await post(join, {}))).toEqual([400, 'bad-form']);
    expect(await refusalOf(await post(join, '{"word":'))).toEqual([400, 'bad-form']);
    expect(await refusalOf(await post(join, { word: 'x'.repeat(20_000) }))).toEqual([413, 'too-large']);
    expect(await refusalOf(await post(join, { word: 'nowhere-11' }))).toEqual([404, 'unknown-room']);
  });
});

describe('the owner’s routes', () => {
  it.each([
    ['POST', ROUTES.openRoom],
    ['GET', ROUTES.rooms],
    ['GET', ROUTES.resultsCsv],
    ['GET', ROUTES.roomFile],
    ['POST', ROUTES.restoreRoom],
  ])('%s %s is refused without the key', async (method, path) => {
    const response = await fetch(here.url + path, { method });
    expect(await refusalOf(response)).toEqual([401, 'no-seat']);
  });

  it('list the rooms, the newest first', async () => {
    const rooms = (await (await get(ROUTES.rooms, here.owner)).json()) as { room: string; word: string }[];
    expect(rooms.at(-1)).toMatchObject({ room, word });
  });

  it('refuse a room that is not there', async () => {
    const response = await get(`${ROUTES.resultsCsv}?room=nowhere-11`, here.owner);
    expect(await refusalOf(response)).toEqual([404, 'unknown-room']);
  });
});

describe('a page of another site', () => {
  const from = (origin: string, path: string, body: unknown = {}) =>
    fetch(here.url + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: here.owner, origin },
      body: JSON.stringify(body),
    });

  it.each(Object.values(ROUTES))('gets nothing done by POST %s', async (path) => {
    for (const origin of ['http://elsewhere.example', 'null', here.url.replace(/\d+$/, '1')]) {
      expect(await refusalOf(await from(origin, path))).toEqual([403, 'other-site']);
    }
  });

  it('is told from a page of this one', async () => {
    expect((await from(here.url, ROUTES.join, { word })).status).toBe(204);
  });
});

describe('headers', () => {
  it('allow nothing from elsewhere and nothing that only https can do', async () => {
    const { headers } = await get('/');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).not.toMatch(/unsafe-inline|unsafe-eval|upgrade-insecure-requests|https?:|\*/);
    expect(headers.get('strict-transport-security')).toBeNull();
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('x-powered-by')).toBeNull();
  });

  it('an address that is not there is refused as JSON', async () => {
    expect(await refusalOf(await get('/api/nothing'))).toEqual([404, 'unknown-page']);
    expect(await refusalOf(await get('/../../etc/passwd'))).toEqual([404, 'unknown-page']);
  });
});

describe('a request that cannot be read', () => {
  const gzipped = { 'content-type': 'application/json', 'content-encoding': 'gzip' };

  it.each<[string, string, RequestInit]>([
    ['an address that is no text', '/api/print/%ff.pdf', {}],
    ['a body that is not packed', ROUTES.join, { method: 'POST', headers: gzipped, body: 'plain' }],
    ['a part behind the end of a file', '/mark.svg', { headers: { range: 'bytes=99-' } }],
    ['a file that must be another one', '/mark.svg', { headers: { 'if-match': '"other"' } }],
  ])('is refused, and is no trouble of the server: %s', async (_, path, request) => {
    const pages = mkdtempSync(join(tmpdir(), 'harbour-pages-'));
    writeFileSync(join(pages, 'mark.svg'), '<svg/>');
    const lines: string[] = [];
    const logTo = { write: (line: string) => void lines.push(line) };
    const other = await testServer({ judging: quickJudging, pages, logLevel: 'error', logTo });
    expect(await refusalOf(await fetch(other.url + path, request))).toEqual([400, 'bad-form']);
    expect(lines).toEqual([]);
    await other.end();
    rmSync(pages, { recursive: true });
  });
});

describe('the QR code', () => {
  it('leads into the room at the address that tablets reach, read by another library', async () => {
    const svg = await (await get(`${ROUTES.qr}?room=${word}`)).text();
    const { data, size } = pixelsOf(svg);
    expect(jsqr(data, size, size)?.data).toBe(`http://harbour.example:4310/j?word=${word}`);
  });

  it('is told beside all addresses', async () => {
    const { join: address, fixed, all } = (await (await get(ROUTES.addresses)).json()) as JoinAddresses;
    expect([address, fixed]).toEqual(['http://harbour.example:4310', true]);
    expect(all.every(({ address }) => /^http:\/\/[\w.]+:\d+$/.test(address))).toBe(true);
  });
});

/** Draws the rows of an SVG made of `M x y h n` strokes, as the QR library writes them, 8 pixels a module. */
function pixelsOf(svg: string): { data: Uint8ClampedArray; size: number } {
  const modules = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  const path = /stroke="#000000" d="([^"]+)"/.exec(svg)?.[1] ?? '';
  const scale = 8;
  const png = new PNG({ width: modules * scale, height: modules * scale });
  png.data.fill(255);
  let [x, y] = [0, 0];
  for (const [, command, a, b] of path.matchAll(/([Mmh])(-?[\d.]+)(?: (-?[\d.]+))?/g)) {
    if (command === 'M') [x, y] = [Number(a), Math.floor(Number(b))];
    else if (command === 'm') [x, y] = [x + Number(a), y + Number(b)];
    else {
      blacken(png, x * scale, y * scale, Number(a) * scale, scale);
      x += Number(a);
    }
  }
  return { data: new Uint8ClampedArray(png.data), size: png.width };
}

function blacken(png: PNG, x: number, y: number, w: number, h: number): void {
  for (let row = y; row < y + h; row++) {
    for (let column = x; column < x + w; column++)
      png.data.fill(0, (row * png.width + column) * 4, (row * png.width + column) * 4 + 3);
  }
}
