import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import { lineDesign } from '../rooms/harness.ts';
import { SEED } from '../seed.ts';
import { SchoolClass, type Who } from './class.ts';
import { type Bundle, bundleOnce, type ServerProcess, startProcess } from './process.ts';
import { randomFrom } from './random.ts';

const KILLS = 25;
const TEAMS = 3;

let bundle: Bundle;
let dataDir: string;
beforeAll(async () => {
  bundle = await bundleOnce();
  dataDir = mkdtempSync(join(tmpdir(), 'harbour-kill-'));
});
afterAll(() => {
  bundle.remove();
  rmSync(dataDir, { recursive: true, force: true });
});

type Step = { readonly join: number } | { readonly who: Who; readonly ask: (room: SchoolClass) => ClientAsk };

const desk = (ask: ClientAsk): Step => ({ who: 'desk', ask: () => ask });
const handIn = (team: number, round: number, length: number): Step => ({
  who: team,
  ask: () => ({ kind: 'hand-in', round, design: lineDesign(length, 20 + team) }),
});
const handIns = (round: number): Step[] =>
  [60, 140, 220].flatMap((length) => Array.from({ length: TEAMS }, (_, team) => handIn(team, round, length)));
const stageBest = (round: number): Step => ({
  who: 'desk',
  ask: ({ desk: { state } }) => {
    const judged = state?.entries.filter((entry) => entry.round === round && entry.verdict) ?? [];
    return { kind: 'stage', entries: judged.slice(0, 2).map((entry) => entry.id) };
  },
});
const round = (number: number, key: string): Step[] => [
  desk({ kind: 'choose-challenge', key }),
  desk({ kind: 'start-building', seconds: 600 }),
  ...handIns(number),
  desk({ kind: 'extend-building', seconds: 60 }),
  desk({ kind: 'end-building' }),
  desk({ kind: 'go-to', phase: 'show' }),
  stageBest(number),
];
const SCRIPT: readonly Step[] = [
  ...Array.from({ length: TEAMS }, (_, team) => ({ join: team })),
  desk({ kind: 'go-to', phase: 'close' }),
  desk({ kind: 'go-to', phase: 'gather' }),
  ...round(0, 'first-line'),
  desk({ kind: 'show-standings', on: true }),
  ...round(1, 'sharp-corner'),
  desk({ kind: 'look-here', on: true }),
  desk({ kind: 'go-to', phase: 'close' }),
];

describe('a server that is killed', () => {
  it(`loses nothing acknowledged in ${KILLS} kills of one lesson (seed ${SEED})`, async () => {
    const random = randomFrom(SEED);
    const order = SCRIPT.map((_, i) => ({ i, key: random() })).sort((a, b) => a.key - b.key);
    const killed = new Set(order.slice(0, KILLS).map(({ i }) => i));
    let server: ServerProcess = await startProcess(bundle, dataDir);
    const room = await SchoolClass.gather(server, TEAMS);
    const carryOut = async (step: Step, i: number) => {
      if ('join' in step) await room.join(step.join);
      else await room.send(step.who, step.ask(room), `step-${i}`);
    };
    const moments: string[] = [];
    for (const [i, step] of SCRIPT.entries()) {
      if ('ask' in step && step.who === 'desk' && step.ask(room).kind === 'stage') {
        await room.desk.until('verdicts', () => room.desk.state?.entries.every((e) => e.verdict) === true);
      }
      if (!killed.has(i)) {
        await carryOut(step, i);
        continue;
      }
      // Half of them around the commit, half a little later, when a worker may be judging.
      const wait = random() * (random() < 0.5 ? 10 : 80);
      const kill = new Promise((resolve) => setTimeout(resolve, wait)).then(() => server.end('SIGKILL'));
      const done = await carryOut(step, i).then(
        () => true,
        () => false,
      );
      await kill;
      moments.push(`${i} ${wait.toFixed(1)} ms ${done ? 'acknowledged' : 'cut off'}`);
      server = await startProcess(bundle, dataDir);
      // Whatever a kill cut off is no damage.
      expect(server.printed()).not.toContain('damaged');
      await room.comeBack(server);
      if (!done) await carryOut(step, i);
    }
    process.stdout.write(`kills: ${moments.join(', ')}\n`);

    await room.desk.until('verdicts', () => room.desk.state?.entries.every((e) => e.verdict) === true);
    const { state } = room.desk;
    expect(moments.length).toBe(KILLS);
    expect(room.acknowledged.map(({ answer }) => answer.ok)).toEqual(room.acknowledged.map(() => true));
    expect(state?.teams.length).toBe(TEAMS);
    expect(state?.rounds.map((r) => r.key)).toEqual(['first-line', 'sharp-corner']);
    expect(state?.entries.length).toBe(2 * 3 * TEAMS);
    expect(state?.phase).toBe('close');
    room.close();
    expect(await server.end('SIGTERM')).toBe(0);
  }, 180_000);
});

describe('a server that is started', () => {
  it('on a busy port says what to do and ends', async () => {
    const first = await startProcess(bundle, join(dataDir, 'a'));
    const port = new URL(first.url).port;
    const second = startProcess(bundle, join(dataDir, 'b'), { PORT: port });
    await expect(second).rejects.toThrow(/ended with 1: Port \d+ is busy: .*set PORT to another number/);
    expect(await first.end('SIGINT')).toBe(0);
  });

  it('on a folder that another one uses says so and ends, until that one is killed', async () => {
    const folder = join(dataDir, 'e');
    const first = await startProcess(bundle, folder);
    await expect(startProcess(bundle, folder)).rejects.toThrow(
      /ended with 1: Another server is running already on the data folder .*end it first/,
    );
    expect((await fetch(`${first.url}/ready`)).status).toBe(200);
    await first.end('SIGKILL');
    const second = await startProcess(bundle, folder);
    expect(await second.end('SIGTERM')).toBe(0);
  });

  it('with a port that is none says so', async () => {
    await expect(startProcess(bundle, join(dataDir, 'c'), { PORT: 'harbour' })).rejects.toThrow(
      /ended with 1: PORT must be a whole number/,
    );
  });

  it('prints where everything is, and keeps its key for the next start', async () => {
    const folder = join(dataDir, 'd');
    const first = await startProcess(bundle, folder);
    await first.end('SIGTERM');
    expect(first.printed()).toContain(folder);
    expect(first.printed()).toMatch(/Board .*http:\/\/localhost:\d+\/board/);
    const second = await startProcess(bundle, folder);
    await second.end('SIGTERM');
    expect(second.ownerKey).toBe(first.ownerKey);
  });
});
