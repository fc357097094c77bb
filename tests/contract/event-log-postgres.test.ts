import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { StoreAway } from '../../server/log/event-log.ts';
import { openPostgresLog } from '../../server/log/postgres.ts';
import { LiveRoom } from '../../server/rooms/live-room.ts';
import { stateOf } from '../../shared/room/apply.ts';
import { EVENT_VERSION, type RoomFact } from '../../shared/room/events.ts';
import { eventLogContract } from './event-log.ts';
import { NO_POSTGRES, postgresPrograms, TestDatabase } from './postgres.ts';

if (postgresPrograms() === undefined) {
  it.skip(`event log: PostgreSQL (${NO_POSTGRES})`, () => undefined);
} else {
  let database: TestDatabase;
  let last = '';
  const make = async () => {
    last = await database.newDatabase();
    return openPostgresLog(last);
  };
  beforeAll(async () => {
    database = await TestDatabase.start();
  });
  afterAll(() => database.remove());

  eventLogContract({ name: 'PostgreSQL', make, again: () => openPostgresLog(last) });

  describe('a PostgreSQL log', () => {
    const room = { id: 'r1', word: 'plum-42', openedAt: 1000 };

    it('is made once by processes that start at the same moment', async () => {
      const url = await database.newDatabase();
      const logs = await Promise.all([1, 2, 3].map(() => openPostgresLog(url)));
      expect(await logs[0]!.openRoom(room, { events: [] })).toBe('done');
      expect(await logs[1]!.openRoom(room, { events: [] })).toBe('taken');
      expect(await logs[2]!.rooms()).toEqual([room]);
      for (const log of logs) await log.close();
    });

    it('lets four processes append to one room at once, and everything gets through', async () => {
      const url = await database.newDatabase();
      const logs = await Promise.all([1, 2, 3, 4].map(() => openPostgresLog(url)));
      const opened: RoomFact = { kind: 'opened', room: 'r1', word: 'plum-42', chargerWatched: false };
      await logs[0]!.openRoom(room, { events: [{ seq: 1, at: 1000, version: EVENT_VERSION, fact: opened }] });
      const parts = { now: () => 1000, meter: { appended: () => undefined }, told: () => undefined };
      const rooms = await Promise.all(logs.map((log) => LiveRoom.load({ ...parts, log }, 'r1')));
      const answers = await Promise.all(
        Array.from({ length: 36 }, (_, i) =>
          rooms[i % 4]!.carryOut({
            seat: { role: 'server' },
            id: null,
            command: { kind: 'join', team: `t${i}` },
          }),
        ),
      );
      const seqs = answers.map((answer) => (answer.ok ? answer.seq : answer.refusal.code));
      expect(new Set(seqs)).toEqual(new Set(Array.from({ length: 36 }, (_, i) => i + 2)));
      const state = stateOf(await logs[0]!.eventsAfter('r1', 0));
      expect(new Set(state?.teams.map((team) => team.emblem)).size).toBe(36);
      for (const log of logs) await log.close();
    });

    it('says StoreAway while its database is down, and goes on afterwards', async () => {
      const log = await make();
      await log.openRoom(room, { events: [] });
      await database.end();
      await expect(log.rooms()).rejects.toThrow(StoreAway);
      await expect(log.check()).rejects.toThrow(StoreAway);
      await expect(log.append('r1', { events: [] })).rejects.toThrow(StoreAway);
      await database.begin();
      expect(await log.rooms()).toEqual([room]);
      await log.close();
    });
  });
}
