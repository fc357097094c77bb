import { describe, expect, it } from 'vitest';
import { calibrationOf } from '../../shared/room/calibration.ts';
import { DRIVING_LIMITS } from '../../shared/room/driving.ts';
import { type PrintAsk, printPath } from '../../shared/wire/print.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  makeLink,
  NO_RATES,
  openRoom,
  ownerCookie,
  post,
  seqOf,
  testServer,
  visitLink,
} from './harness.ts';
import { stage } from './stage.ts';

const here = stage('file');
const { page } = here;

const print = (ask: Partial<PrintAsk> & Pick<PrintAsk, 'kind'>, cookie: string) =>
  fetch(here.url + printPath({ format: 'svg', ...ask }), { headers: { cookie } });

describe('before any room is open', () => {
  it('a desk prints supplies and a lesson plan, in its language', async () => {
    const plan = await print(
      { kind: 'lesson-plan', language: 'es', minutes: '60', challenge: 'first-line' },
      here.owner,
    );
    expect(plan.status).toBe(200);
    expect(await plan.text()).toContain('Plan para una clase de 60 minutos');
    expect((await print({ kind: 'supplies', teams: '40' }, here.owner)).status).toBe(200);
    expect((await print({ kind: 'chart' }, here.owner)).status).toBe(404);
  });

  it.each([
    ['lesson-plan', { minutes: '29' }],
    ['lesson-plan', { minutes: '121' }],
    ['supplies', { teams: '41' }],
    ['supplies', { teams: '1e1' }],
  ] as const)('%s for %j is refused', async (kind, more) =>
    expect((await print({ kind, ...more }, here.owner)).status).toBe(400),
  );

  it('each desk has a rate of its own for them', async () => {
    const counted: string[] = [];
    const allows = async (name: string, key: string) => {
      if (name === 'print') counted.push(key);
      return true;
    };
    const other = await testServer({ rates: { ...NO_RATES, allows } });
    const asked = await ownerCookie(other);
    const desk = await visitLink(other.url, await makeLink(other.url, { kind: 'desk' }, asked));
    for (const cookie of [asked, desk.cookie])
      await fetch(other.url + printPath({ kind: 'supplies', format: 'svg' }), { headers: { cookie } });
    await other.end();
    expect([counted.length, new Set(counted).size]).toEqual([2, 2]);
  });

  it('nobody else prints them', async () => {
    expect((await print({ kind: 'supplies' }, '')).status).toBe(401);
  });
});

it('calibrations carry the server’s time, for desk and board, and no team hears of them', async () => {
  const { room, word } = await openRoom(here.url, here.owner);
  const desk = await page(here.url, 'desk', here.owner, room);
  const board = await page(here.url, 'board', '', room);
  const tablet = await page(here.url, 'tablet', await joinCookie(here.url, word));
  const before = Date.now();
  const seq = seqOf(await desk.command({ kind: 'calibrate', robot: 7, light: 'mixed' }));
  for (const one of [desk, board, tablet]) await one.reaches(seq);
  const noted = calibrationOf(desk.state!.calibrations, 7)!;
  expect(noted).toMatchObject({ light: 'mixed', due: false });
  expect(noted.at).toBeGreaterThanOrEqual(before);
  expect(noted.at).toBeLessThanOrEqual(Date.now());
  expect(board.state!.calibrations).toEqual(desk.state!.calibrations);
  expect(tablet.received).not.toContain('mixed');
  expect(codeOf(await tablet.command({ kind: 'calibrate', robot: 7, light: 'dim' }))).toBe(
    'not-for-this-seat',
  );
});

it('a robot that may drive may be noted as calibrated, and no other', async () => {
  const { room } = await openRoom(here.url, here.owner);
  const desk = await page(here.url, 'desk', here.owner, room);
  const { robotNumber } = DRIVING_LIMITS;
  for (const [robot, code] of [
    [0, 'bad-form'],
    [41, 'accepted'],
    [robotNumber, 'accepted'],
    [robotNumber + 1, 'bad-form'],
  ] as const) {
    expect(codeOf(await desk.command({ kind: 'set-robots', robots: [robot] })), `${robot}`).toBe(code);
    expect(codeOf(await desk.command({ kind: 'calibrate', robot, light: 'dim' })), `${robot}`).toBe(code);
  }
});

it('a browser that forgets its desk has its cookies taken away', async () => {
  const response = await post(here.url + ROUTES.forget, {}, here.owner);
  expect(response.status).toBe(204);
  const gone = response.headers.getSetCookie();
  expect(gone.map((cookie) => cookie.split('=')[0]).sort()).toEqual([
    'harbour_desk',
    'harbour_owner',
    'harbour_team',
  ]);
  // RFC 6265, 5.3: a cookie that expires in the past is deleted.
  for (const cookie of gone) expect(cookie).toContain('Expires=Thu, 01 Jan 1970');
});
