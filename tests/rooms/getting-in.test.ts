import { readFileSync } from 'node:fs';
import { get as secureGet } from 'node:https';
import { describe, expect, it } from 'vitest';
import { configFrom } from '../../server/environment.ts';
import { type Arrivals, type JoinAddresses, ROUTES } from '../../shared/wire/protocol.ts';
import { post, quickJudging, testServer } from './harness.ts';
import { stage } from './stage.ts';

let now = 1_000_000;
const here = stage('test', { judging: quickJudging, now: () => now });

const read = async <T>(path: string, cookie = here.owner): Promise<T> =>
  (await (await fetch(here.url + path, { headers: { cookie } })).json()) as T;
const REPORT = { roundTripMs: 12, pageMs: 800, live: true };

describe('what a device measured', () => {
  it('reaches the desk with its age', async () => {
    expect((await read<Arrivals>(ROUTES.arrivals)).check).toBeNull();
    expect((await post(`${here.url}${ROUTES.check}`, REPORT)).status).toBe(204);
    now += 9000;
    expect((await read<Arrivals>(ROUTES.arrivals)).check).toEqual({ ...REPORT, ago: 9000 });
  });

  it('is refused in a wrong form and told to nobody but the desk', async () => {
    const bad = await post(`${here.url}${ROUTES.check}`, { ...REPORT, roundTripMs: -1 });
    expect(bad.status).toBe(400);
    expect((await fetch(here.url + ROUTES.arrivals)).status).toBe(401);
  });

  it('more often than a class measures is refused', async () => {
    const tell = async () => (await post(`${here.url}${ROUTES.check}`, REPORT)).status;
    const told: number[] = [];
    for (let i = 0; i < 120; i++) told.push(await tell());
    expect([new Set(told), await tell()]).toEqual([new Set([204]), 429]);
  });

  it('visits of this machine itself are no arrivals', async () => {
    await fetch(`${here.url}/`);
    expect(await read<Arrivals>(ROUTES.arrivals)).toEqual({ visits: 0, lastAgo: null, check: null });
  });

  it('the bytes to measure with are as many as are said, and not kept by browsers', async () => {
    const response = await fetch(here.url + ROUTES.checkLoad);
    expect((await response.arrayBuffer()).byteLength).toBe(400_000);
    expect(response.headers.get('cache-control')).toBe('no-store');
  });
});

describe('the address in the code', () => {
  it('is chosen by the owner among this machine’s own', async () => {
    const { all } = await read<JoinAddresses>(ROUTES.addresses);
    const address = all.at(-1)!.address;
    const chosen = await post(here.url + ROUTES.addresses, { address }, here.owner);
    expect(((await chosen.json()) as JoinAddresses).join).toBe(address);
    expect((await read<JoinAddresses>(ROUTES.addresses, '')).join).toBe(address);
  });

  it('is refused from others, and where it is not this machine’s', async () => {
    const route = here.url + ROUTES.addresses;
    expect((await post(route, { address: 'http://elsewhere.example' }, here.owner)).status).toBe(400);
    expect((await post(route, { address: here.url })).status).toBe(401);
  });
});

const sample = (name: string) => new URL(`../samples/tls/${name}`, import.meta.url).pathname;

describe('https', () => {
  it('with certificate files serves pages and marks cookies, without asking browsers to stay with it', async () => {
    const read = configFrom({ TLS_CERT: sample('cert.pem'), TLS_KEY: sample('key.pem') }, null);
    if (!read.ok) throw new Error(read.sentence);
    const { port: _, dataDir: __, ...config } = read.value;
    const secure = await testServer({ ...config, judging: quickJudging });
    const ca = readFileSync(sample('cert.pem'));
    const headers = await new Promise<NodeJS.Dict<string | string[]>>((resolve, reject) => {
      secureGet(`${secure.url}/`, { ca, agent: false }, (answer) => {
        answer.resume();
        resolve(answer.headers);
      }).on('error', reject);
    });
    await secure.end();
    expect(secure.url).toMatch(/^https:/);
    expect(String(headers['set-cookie'])).toMatch(/; Secure/);
    expect(headers['strict-transport-security']).toBeUndefined();
  });

  it.each([
    [{ TLS_CERT: 'cert.pem' }, 'For https set both TLS_CERT and TLS_KEY'],
    [{ TLS_CERT: 'none.pem', TLS_KEY: 'key.pem' }, 'The file that TLS_CERT names cannot be read'],
    [{ TLS_CERT: 'cert.pem', TLS_KEY: 'other-key.pem' }, 'do not fit together'],
    [{ TLS_CERT: 'key.pem', TLS_KEY: 'key.pem' }, 'do not fit together'],
    [{ TLS_CERT: 'ended.pem', TLS_KEY: 'key.pem' }, 'ended on Jan  1 00:00:00 2021 GMT'],
  ])('%o is refused with a sentence', (files, sentence) => {
    const env = Object.fromEntries(Object.entries(files).map(([name, file]) => [name, sample(file)]));
    const read = configFrom(env, null);
    expect(read.ok ? '' : read.sentence).toContain(sentence);
  });
});
