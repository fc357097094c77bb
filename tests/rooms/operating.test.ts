import { afterEach, describe, expect, it } from 'vitest';
import { RestartNeeded } from '../../server/log/event-log.ts';
import { MemoryLog } from '../../server/log/memory.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  buildingRoom,
  codeOf,
  joinCookie,
  lineDesign,
  openRoom,
  ownerCookie,
  quickJudging,
  sample,
  seated,
  type TestServer,
  testServer,
} from './harness.ts';
import { FakeLine } from './line.ts';

let server: TestServer;
afterEach(() => server.end());

const get = (path: string, headers: Record<string, string> = {}) => fetch(server.url + path, { headers });

class DeadLog extends MemoryLog {
  override check(): Promise<void> {
    return Promise.reject(new Error('gone'));
  }
}

describe('health and readiness', () => {
  it('are open to everybody and say ok and ready', async () => {
    server = await testServer({ judging: quickJudging });
    expect(await (await get(ROUTES.health)).text()).toBe('ok\n');
    const ready = await get(ROUTES.ready);
    expect([ready.status, await ready.text()]).toEqual([200, 'ready\n']);
  });

  it('a server whose store does not answer lives but is not ready, and says why', async () => {
    server = await testServer({ judging: quickJudging, log: new DeadLog() });
    expect((await get(ROUTES.health)).status).toBe(200);
    const ready = await get(ROUTES.ready);
    expect([ready.status, await ready.text()]).toEqual([503, 'The store does not answer.\n']);
  });
});

/** A disk on which a sync has failed. */
class BrokenLog extends MemoryLog {
  broken = false;
  override async append(...parts: Parameters<MemoryLog['append']>) {
    await this.check();
    return super.append(...parts);
  }
  override async check(): Promise<void> {
    if (this.broken) throw new RestartNeeded('The disk is broken. Restart the server.');
  }
}

describe('a server that needs a restart', () => {
  it('is not ready, and readiness, log and desk say what to do', async () => {
    const log = new BrokenLog();
    const lines: string[] = [];
    const logTo = { write: (line: string) => void lines.push(line) };
    server = await testServer({ judging: quickJudging, log, logLevel: 'error', logTo });
    const { desk, tablet } = await buildingRoom(server);
    log.broken = true;
    const answer = await desk.command({ kind: 'end-building' });
    expect(codeOf(answer)).toBe('restart-needed');
    const ready = await get(ROUTES.ready);
    expect(ready.status).toBe(503);
    expect(await ready.text()).toContain('Restart this server');
    expect(lines.join('')).toContain('Restart the server.');
    for (const page of [desk, tablet]) page.close();
  });
});

describe('metrics', () => {
  // OpenMetrics 1.0.0: the content type, `_total` behind counters, and `# EOF` as the last line.
  it('are OpenMetrics text that counts commands, refusals, appends, sockets and entries', async () => {
    server = await testServer({ judging: quickJudging });
    const { desk, tablet } = await buildingRoom(server);
    expect(codeOf(await tablet.command({ kind: 'end-building' }))).toBe('not-for-this-seat');
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await desk.until('the verdict', () => Boolean(desk.state?.entries[0]?.verdict));
    const response = await get(ROUTES.metrics);
    const text = await response.text();
    expect(response.headers.get('content-type')).toBe(
      'application/openmetrics-text; version=1.0.0; charset=utf-8',
    );
    expect(text.endsWith('# EOF\n')).toBe(true);
    expect(sample(text, 'harbour_commands_total{kind="hand-in"}')).toBe(1);
    expect(sample(text, 'harbour_refusals_total{way="command",code="not-for-this-seat"}')).toBe(1);
    // Joined, challenge chosen, building started, a refusal, handed in, judged.
    expect(sample(text, 'harbour_append_seconds_count')).toBe(6);
    expect(sample(text, 'harbour_sockets')).toBe(2);
    expect(sample(text, 'harbour_rooms')).toBe(1);
    expect(sample(text, 'harbour_judge_queue')).toBe(0);
    expect(sample(text, 'harbour_event_loop_delay_seconds{quantile="0.99"}')).toBeGreaterThanOrEqual(0);
    for (const page of [desk, tablet]) page.close();
  });

  it('name no room, team, device or secret', async () => {
    server = await testServer({ judging: quickJudging });
    const { desk, tablet, word, owner, team } = await buildingRoom(server);
    await get(`${ROUTES.joinByLink}?word=nowhere-11`);
    const text = await (await get(ROUTES.metrics, { cookie: owner })).text();
    const { id, teams } = desk.state!;
    const secrets = [server.ownerKey, owner.split('=')[1]!, team.split('=')[1]!];
    for (const told of [word, id, teams[0]!.id, teams[0]!.emblem, '127.0.0.1', '::1', ...secrets])
      expect(text).not.toContain(told);
    for (const page of [desk, tablet]) page.close();
  });

  it('are for this machine and the owner; what a balancer passes on is from elsewhere', async () => {
    server = await testServer({ judging: quickJudging });
    const passedOn = { 'x-forwarded-for': '192.0.2.7' };
    expect((await get(ROUTES.metrics, passedOn)).status).toBe(401);
    const cookie = await ownerCookie(server);
    expect((await get(ROUTES.metrics, { ...passedOn, cookie })).status).toBe(200);
  });
});

describe('metrics of a server that others reach too', () => {
  const METRICS_KEY = 'a-metrics-key-of-these-tests';
  const bearer = (key: string) => ({ authorization: `Bearer ${key}` });

  it('with a key are for a collector that says it, wherever it asks from', async () => {
    server = await testServer({ judging: quickJudging, metricsKey: METRICS_KEY });
    const asked = [{}, bearer('a-wrong-key-of-these-tests'), bearer(METRICS_KEY)];
    const status = asked.map(async (headers) => (await get(ROUTES.metrics, headers)).status);
    expect(await Promise.all(status)).toEqual([401, 401, 200]);
    const passedOn = { ...bearer(METRICS_KEY), 'x-forwarded-for': '192.0.2.7' };
    expect((await get(ROUTES.metrics, passedOn)).status).toBe(200);
    expect((await get(ROUTES.metrics, { cookie: await ownerCookie(server) })).status).toBe(200);
  });

  // A plain balancer on the machine passes connections on, so that all of them seem to come from here.
  it('on a shared store are not for whoever seems to ask on this machine', async () => {
    server = await testServer({ log: new MemoryLog(), neighbours: new FakeLine().end('p0') });
    expect((await get(ROUTES.metrics)).status).toBe(401);
    expect((await get(ROUTES.metrics, bearer('a-wrong-key-of-these-tests'))).status).toBe(401);
    expect((await get(ROUTES.metrics, { cookie: await ownerCookie(server) })).status).toBe(200);
  });
});

describe('logs at level info', () => {
  it('of a lesson with a wrong word and a refusal are JSON lines without devices, words and secrets', async () => {
    const lines: string[] = [];
    const logTo = { write: (line: string) => void lines.push(line) };
    server = await testServer({ judging: quickJudging, logLevel: 'info', logTo });
    const owner = await ownerCookie(server);
    const { room, word } = await openRoom(server.url, owner);
    const team = await joinCookie(server.url, word);
    const tablet = await seated(server.url, 'tablet', team);
    await tablet.command({ kind: 'end-building' });
    await get('/desk?key=guess');
    await get(`${ROUTES.joinByLink}?word=nowhere-11`);
    tablet.close();
    await server.close();
    expect(lines.map((line) => (JSON.parse(line) as { msg: string }).msg)).toEqual([
      'listening',
      'ending',
      'ended',
    ]);
    const secrets = [server.ownerKey, owner.split('=')[1]!, team.split('=')[1]!, room, word];
    for (const told of ['127.0.0.1', '::1', 'guess', 'nowhere', ...secrets])
      expect(lines.join('')).not.toContain(told);
  });
});

describe('the links of a server', () => {
  const publicUrl = 'https://lines.example';

  it('on one machine are for whoever sits at it', async () => {
    server = await testServer({ judging: quickJudging, publicUrl });
    expect(server.deskLink).toBe(`${server.url}/desk?key=${server.ownerKey}`);
  });

  it('behind a balancer are for whoever sits elsewhere', async () => {
    const neighbours = new FakeLine().end('p0');
    server = await testServer({ log: new MemoryLog(), neighbours, publicUrl });
    expect(server.deskLink).toBe(`${publicUrl}/desk?key=${server.ownerKey}`);
    expect(server.boardLink).toBe(`${publicUrl}/board`);
  });
});
