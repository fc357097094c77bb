import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgresLog } from '../../server/log/postgres.ts';
import { NO_POSTGRES, postgresPrograms, TestDatabase } from '../contract/postgres.ts';
import { type Bundle, bundleOnce, type ServerProcess, startProcess } from '../faults/process.ts';
import { Balancer } from './balancer.ts';
import { differences, gather, teamPlays, until } from './lesson.ts';

const OWNER_KEY = 'an-owner-key-of-these-tests';
const PROCESSES = 3;
const TEAMS = 6;
const DRAWINGS = 8;

if (postgresPrograms() === undefined) {
  it.skip(`three server processes on one database (${NO_POSTGRES})`, () => undefined);
} else {
  describe('three server processes on one database, behind a balancer', () => {
    let database: TestDatabase;
    let bundle: Bundle;
    let balancer: Balancer;
    const processes: ServerProcess[] = [];
    const portOf = (process: ServerProcess) => Number(new URL(process.url).port);
    const turn = () => balancer.turnTo(processes.map(portOf));
    const begin = (url: string) => startProcess(bundle, '', { DATABASE_URL: url, OWNER_KEY });

    beforeAll(async () => {
      [database, bundle, balancer] = await Promise.all([
        TestDatabase.start(),
        bundleOnce(),
        Balancer.start(),
      ]);
    }, 120_000);
    afterAll(async () => {
      for (const process of processes) await process.end('SIGKILL');
      await balancer?.close();
      bundle?.remove();
      await database?.remove();
    });

    it('lose nothing when one is killed and the database is started anew in the middle of a lesson', async () => {
      const url = await database.newDatabase();
      processes.push(...(await Promise.all(Array.from({ length: PROCESSES }, () => begin(url)))));
      turn();
      const lesson = await gather(balancer.url, OWNER_KEY, TEAMS);
      const { desk, tablets, pages } = lesson;
      const ports = processes.map(portOf);
      expect(ports.every((port) => (balancer.passed.get(port) ?? 0) > 0)).toBe(true);

      let handedIn = 0;
      const reached = (share: number) =>
        until(`${share} of the drawings`, () => handedIn >= share * TEAMS * DRAWINGS);
      const faults = async () => {
        await reached(0.25);
        await processes[1]!.end('SIGKILL');
        await reached(0.5);
        await database.end();
        await until('pages that notice', () => pages.some((page) => page.state.status.kind === 'away'));
        await database.begin();
        await reached(0.7);
        processes[1] = await begin(url);
        turn();
      };
      const deskPlays = async () => {
        for (const on of [true, false, true, false]) await desk.ask({ kind: 'look-here', on });
        await reached(0.6);
        await desk.ask({ kind: 'extend-building', seconds: 60 });
        await desk.ask({ kind: 'show-standings', on: true });
      };
      await Promise.all([
        faults(),
        deskPlays(),
        ...tablets.map((tablet, i) => teamPlays(tablet, i, DRAWINGS, () => handedIn++)),
      ]);

      const log = await openPostgresLog(url);
      const entries = () => desk.state.room?.entries ?? [];
      await until('verdicts', () => entries().filter((entry) => entry.verdict).length === TEAMS * DRAWINGS);
      await desk.ask({ kind: 'end-building' });
      await desk.ask({ kind: 'start-building', seconds: 1 });
      await until('the end of the time', () => desk.state.room?.building?.ended === true);
      const events = await log.eventsAfter(lesson.room, 0);
      await until('current pages', () => pages.every((page) => page.state.room?.seq === events.length));
      await until('drafts and words of all teams at the desk', () =>
        tablets.every(({ drawn, state: { you } }) => {
          const team = you?.role === 'team' ? you.team : '';
          const draft = desk.state.drafts[team]?.design;
          return JSON.stringify(draft) === JSON.stringify(drawn) && desk.state.doings[team] === 'drawing';
        }),
      );

      expect(differences(lesson, await log.eventsAfter(lesson.room, 0), DRAWINGS)).toEqual([]);
      const byTime = events.filter(({ fact }) => fact?.kind === 'building-ended' && fact.by === 'time');
      expect(byTime.length).toBe(1);
      for (const page of pages) page.link.close();
      await log.close();
      expect(await Promise.all(processes.map((process) => process.end('SIGTERM')))).toEqual([0, 0, 0]);
    }, 400_000);
  });
}
