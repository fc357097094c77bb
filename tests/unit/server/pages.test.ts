import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../../server/server.ts';

let server: RunningServer;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'harbour-pages-'));
  const put = (path: string, text: string) => {
    mkdirSync(join(folder, 'pages', path, '..'), { recursive: true });
    writeFileSync(join(folder, 'pages', path), text);
  };
  for (const page of ['tablet', 'desk', 'board']) put(`${page}/index.html`, `<title>${page}</title>`);
  put('assets/tablet-1a2b.js', 'export {};');
  put('assets/desk-3c4d.js', 'export const plain = 1;');
  writeFileSync(join(folder, 'pages/assets/desk-3c4d.js.gz'), gzipSync('export const packed = 1;'));
  put('mark.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>');
  put('.stamp', 'secret of the house');
  const judging = { judge: () => Promise.reject(new Error('none')), close: async () => undefined };
  server = await startServer({
    dataDir: join(folder, 'data'),
    port: 0,
    pages: join(folder, 'pages'),
    judging,
  });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

const get = (path: string) => fetch(server.url + path, { redirect: 'manual' });

describe('pages', () => {
  it.each([
    ['/', 'tablet'],
    ['/desk', 'desk'],
    ['/board', 'board'],
    ['/board?room=plum-42', 'board'],
  ])('%s is the %s, asked for anew each time', async (path, page) => {
    const response = await get(path);
    expect(await response.text()).toBe(`<title>${page}</title>`);
    expect(response.headers.get('cache-control')).toBe('no-cache');
    expect(response.headers.get('content-type')).toContain('text/html');
  });

  it('assets may be kept for ever, for their names carry a hash', async () => {
    const { headers } = await get('/assets/tablet-1a2b.js');
    expect(headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
  });

  it('assets go packed to those who take that, and plain to others', async () => {
    const ask = (encoding: string) =>
      fetch(`${server.url}/assets/desk-3c4d.js`, { headers: { 'accept-encoding': encoding } });
    const packed = await ask('gzip');
    expect(await packed.text()).toBe('export const packed = 1;');
    expect([packed.headers.get('content-encoding'), packed.headers.get('vary')]).toEqual([
      'gzip',
      'Accept-Encoding',
    ]);
    expect(packed.headers.get('content-type')).toContain('text/javascript');
    const plain = await ask('identity');
    expect(await plain.text()).toBe('export const plain = 1;');
    expect(plain.headers.get('content-encoding')).toBeNull();
  });

  it('other files are served by their names', async () => {
    expect((await get('/mark.svg')).headers.get('content-type')).toBe('image/svg+xml');
  });

  it.each([
    ['/.stamp'],
    ['/tablet/'],
    ['/assets/'],
    ['/%2e%2e/data/owner-key'],
    ['/assets/..%2f..%2fdata/owner-key'],
  ])('%s is no page', async (path) => expect((await get(path)).status).toBe(404));

  it('a page that the build lacks says what to run', async () => {
    rmSync(join(folder, 'pages', 'board'), { recursive: true });
    const response = await get('/board');
    expect([response.status, await response.text()]).toEqual([503, expect.stringContaining('npm run build')]);
  });
});
