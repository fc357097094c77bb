import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EventLog, StoredDocument } from '../../server/log/event-log.ts';
import type { RoomEvent, RoomFact } from '../../shared/room/events.ts';

/** How one implementation is made, for the suite that all must pass. */
export interface LogUnderTest {
  readonly name: string;
  readonly make: () => Promise<EventLog>;
  /** Opens what `make` made last once more, as after a crash; absent where nothing outlives a process. */
  readonly again?: () => Promise<EventLog>;
}

const ROOM = { id: 'r1', word: 'plum-42', openedAt: 1000 };
const OPENED: RoomFact = { kind: 'opened', room: 'r1', word: 'plum-42', chargerWatched: false };
const event = (seq: number, fact: RoomFact = { kind: 'look-here', on: seq % 2 === 0 }): RoomEvent => ({
  seq,
  at: 1_795_000_000_000 + seq,
  version: 1,
  fact,
});
const first = { events: [event(1, OPENED)] };
const design = (id: string): StoredDocument => ({ id, kind: 'design', body: `{"id":"${id}"}` });
const answer = (command: string, seq: number) => ({
  seat: 'desk',
  command,
  answer: { ok: true, seq } as const,
});

/** What every store of rooms promises. */
export function eventLogContract({ name, make, again }: LogUnderTest): void {
  describe(`event log: ${name}`, () => {
    let log: EventLog;
    beforeEach(async () => {
      log = await make();
      await log.openRoom(ROOM, first);
    });
    afterEach(() => log.close());

    it('gives events back as they were appended', async () => {
      const facts: RoomFact[] = [
        { kind: 'team-joined', team: 't1', emblem: 'sailboat' },
        { kind: 'building-started', until: null },
        { kind: 'staged', entries: ['é ☂ "quoted"'], designs: [], verdicts: [] },
      ];
      const events = facts.map((fact, i) => event(i + 2, fact));
      expect(await log.append('r1', { events })).toBe('done');
      expect(await log.eventsAfter('r1', 0)).toEqual([event(1, OPENED), ...events]);
      expect(await log.eventsAfter('r1', 3)).toEqual(events.slice(2));
      expect(await log.eventsAfter('r1', 4)).toEqual([]);
    });

    it('refuses a number that is taken, and writes nothing of that append', async () => {
      await log.append('r1', { events: [event(2)] });
      const parts = {
        events: [event(2), event(3)],
        documents: [design('d1')],
        answers: [answer('c1', 3)],
        seats: [{ tokenHash: 'h1', room: 'r1', team: 't1' }],
      };
      expect(await log.append('r1', parts)).toBe('clash');
      expect((await log.eventsAfter('r1', 0)).map((e) => e.seq)).toEqual([1, 2]);
      expect(await log.document('r1', 'd1')).toBeUndefined();
      expect(await log.answer('r1', 'desk', 'c1')).toBeUndefined();
      expect(await log.seat('h1')).toBeUndefined();
    });

    it('lets one of many appends at the same number win', async () => {
      const results = await Promise.all(
        Array.from({ length: 8 }, (_, i) =>
          log.append('r1', { events: [event(2)], documents: [design(`d${i}`)] }),
        ),
      );
      expect(results.filter((r) => r === 'done').length).toBe(1);
      expect(results.filter((r) => r === 'clash').length).toBe(7);
      expect((await log.documents('r1')).length).toBe(1);
    });

    it('numbers each room by itself', async () => {
      const other = { id: 'r2', word: 'fern-10', openedAt: 2000 };
      await log.openRoom(other, first);
      expect(await log.append('r2', { events: [event(2)] })).toBe('done');
      expect(await log.append('r1', { events: [event(2)] })).toBe('done');
    });

    it('refuses a second answer to a command, and its events with it', async () => {
      await log.append('r1', { events: [event(2)], answers: [answer('c1', 2)] });
      const repeat = { events: [event(3)], answers: [answer('c1', 3)] };
      expect(await log.append('r1', repeat)).toBe('answered');
      expect(await log.answer('r1', 'desk', 'c1')).toEqual({ ok: true, seq: 2 });
      expect((await log.eventsAfter('r1', 2)).length).toBe(0);
    });

    it('takes answers of many at once, and none of them where one is there already', async () => {
      await log.append('r1', { events: [event(2)], answers: [answer('c1', 2)] });
      const both = [answer('c2', 3), answer('c1', 4)];
      expect(await log.append('r1', { events: [event(3), event(4)], answers: both })).toBe('answered');
      expect(await log.answer('r1', 'desk', 'c2')).toBeUndefined();
      const others = [answer('c2', 3), answer('c3', 4)];
      expect(await log.append('r1', { events: [event(3), event(4)], answers: others })).toBe('done');
      expect(await log.answer('r1', 'desk', 'c3')).toEqual({ ok: true, seq: 4 });
    });

    it('keeps answers of seats apart', async () => {
      await log.append('r1', { events: [], answers: [answer('c1', 2)] });
      const refused = { ok: false, refusal: { code: 'other-round' } } as const;
      const other = { seat: 'team t1', command: 'c1', answer: refused };
      expect(await log.append('r1', { events: [], answers: [other] })).toBe('done');
      expect(await log.answer('r1', 'team t1', 'c1')).toEqual(refused);
      expect(await log.answer('r1', 'team t2', 'c1')).toBeUndefined();
    });

    it('keeps a document once, in its room alone', async () => {
      await log.append('r1', { events: [event(2)], documents: [design('d1'), design('d2')] });
      await log.append('r1', { events: [event(3)], documents: [design('d1')] });
      expect(await log.document('r1', 'd1')).toEqual(design('d1'));
      expect((await log.documents('r1')).map((d) => d.id)).toEqual(['d1', 'd2']);
      expect(await log.document('r2', 'd1')).toBeUndefined();
    });

    it('finds a seat by the hash of its token', async () => {
      const seat = { tokenHash: 'h1', room: 'r1', team: 't1' };
      await log.append('r1', { events: [event(2)], seats: [seat] });
      expect(await log.seat('h1')).toEqual(seat);
      expect(await log.seat('h2')).toBeUndefined();
      await expect(log.append('r1', { events: [event(3)], seats: [seat] })).rejects.toThrow();
      expect((await log.eventsAfter('r1', 2)).length).toBe(0);
    });

    it('opens a word and an id once', async () => {
      expect(await log.openRoom({ ...ROOM, id: 'r9' }, first)).toBe('taken');
      expect(await log.openRoom({ ...ROOM, word: 'fern-10' }, first)).toBe('taken');
      expect(await log.roomByWord('fern-10')).toBeUndefined();
      expect(await log.eventsAfter('r9', 0)).toEqual([]);
      expect(await log.roomByWord('plum-42')).toEqual(ROOM);
    });

    it('lists rooms, the newest first', async () => {
      await log.openRoom({ id: 'r3', word: 'sage-11', openedAt: 3000 }, first);
      await log.openRoom({ id: 'r2', word: 'fern-10', openedAt: 2000 }, first);
      expect((await log.rooms()).map((r) => r.id)).toEqual(['r3', 'r2', 'r1']);
    });

    it('keeps the newest value of a key', async () => {
      await log.keepLatest('r1', [
        { key: 'draft t1', value: '1' },
        { key: 'draft t2', value: '2' },
      ]);
      await log.keepLatest('r1', [{ key: 'draft t1', value: '3' }]);
      const kept = (await log.latest('r1')).map(({ key, value }) => `${key} = ${value}`);
      expect(kept.sort()).toEqual(['draft t1 = 3', 'draft t2 = 2']);
      expect(await log.latest('r1', ['draft t2', 'draft t9'])).toEqual([{ key: 'draft t2', value: '2' }]);
      expect(await log.latest('r2')).toEqual([]);
    });

    it('gives a seat up when another one takes its place', async () => {
      const seat = (tokenHash: string, team = 't1') => ({ tokenHash, room: 'r1', team });
      await log.append('r1', { events: [event(2)], seats: [seat('h1'), seat('h2'), seat('h3', 't2')] });
      await log.append('r1', { events: [event(3)], seats: [seat('h4')], freed: 't1' });
      const found = await Promise.all(['h1', 'h2', 'h3', 'h4'].map((hash) => log.seat(hash)));
      expect(found.map((one) => one?.team)).toEqual([undefined, undefined, 't2', 't1']);
    });

    it('takes nothing for a room that is removed, or was never there', async () => {
      const seats = [{ tokenHash: 'h1', room: 'r1', team: 't1' }];
      const parts = { events: [event(2)], documents: [design('d1')], seats, answers: [answer('c1', 2)] };
      await log.remove('r1');
      for (const room of ['r1', 'nowhere']) {
        expect(await log.append(room, parts)).toBe('gone');
        await log.keepLatest(room, [{ key: 'draft t1', value: '1' }]);
        expect(await log.eventsAfter(room, 0)).toEqual([]);
        expect([await log.documents(room), await log.latest(room)]).toEqual([[], []]);
        expect([await log.seat('h1'), await log.answer(room, 'desk', 'c1')]).toEqual([undefined, undefined]);
      }
      // Nothing of it stands in the way of a room that is opened under the same id.
      expect(await log.openRoom(ROOM, first)).toBe('done');
      expect(await log.append('r1', parts)).toBe('done');
    });

    it('leaves nothing of a room to which is written while it is removed', async () => {
      const writing = Array.from({ length: 12 }, (_, i) =>
        log.append('r1', { events: [event(2 + i)], documents: [design(`d${i}`)] }),
      );
      const keeping = log.keepLatest('r1', [{ key: 'draft t1', value: '1' }]);
      const [, , ...results] = await Promise.all([log.remove('r1'), keeping, ...writing]);
      for (const result of results) expect(['done', 'gone']).toContain(result);
      expect(await log.eventsAfter('r1', 0)).toEqual([]);
      expect([await log.documents('r1'), await log.latest('r1')]).toEqual([[], []]);
    });

    it('removes everything of a room, and nothing of another', async () => {
      const other = { id: 'r2', word: 'fern-10', openedAt: 2000 };
      const all = (room: string) => ({
        events: [event(2)],
        documents: [design('d1')],
        seats: [{ tokenHash: `h-${room}`, room, team: 't1' }],
        answers: [answer('c1', 2)],
      });
      await log.openRoom(other, first);
      for (const room of ['r1', 'r2']) {
        await log.append(room, all(room));
        await log.keepLatest(room, [{ key: 'draft t1', value: '1' }]);
      }
      await log.remove('r1');
      const left = async (room: string) => [
        (await log.eventsAfter(room, 0)).length,
        (await log.documents(room)).length,
        (await log.latest(room)).length,
        (await log.seat(`h-${room}`))?.team,
        (await log.answer(room, 'desk', 'c1'))?.ok,
      ];
      expect(await left('r1')).toEqual([0, 0, 0, undefined, undefined]);
      expect(await left('r2')).toEqual([2, 1, 1, 't1', true]);
      expect((await log.rooms()).map((r) => r.id)).toEqual(['r2']);
      expect(await log.openRoom(ROOM, first)).toBe('done');
    });

    it('knows when a room was last used', async () => {
      await log.openRoom({ id: 'r2', word: 'fern-10', openedAt: 1_800_000_000_000 }, first);
      // The newest by its number, also where a clock was set back: that one is found without a search.
      const later = { ...event(6), at: 1_795_000_000_099 };
      await log.append('r1', { events: [later, event(7)] });
      const used = [
        ['r1', 1_795_000_000_007],
        ['r2', 1_800_000_000_000],
      ] as const;
      expect(await log.lastUsed(null)).toEqual(new Map(used));
      expect(await log.lastUsed(['r2', 'r9'])).toEqual(new Map(used.slice(1)));
      expect(await log.lastUsed([])).toEqual(new Map());
    });

    it('says that it answers', async () => {
      expect(await log.check()).toBeUndefined();
    });

    it('keeps values of the server, found by key and by the beginning of it', async () => {
      expect(await log.setValue('link b', '2')).toBe('done');
      for (const [key, value] of [
        ['link a', '1'],
        ['linkage', '4'],
        ['link b', '3'],
      ] as const) {
        await log.setValue(key, value);
      }
      expect(await log.value('link b')).toBe('3');
      expect(await log.value('link c')).toBeUndefined();
      expect(await log.values('link ')).toEqual([
        { key: 'link a', value: '1' },
        { key: 'link b', value: '3' },
      ]);
    });

    it('drops a value once, however many ask at once', async () => {
      await log.setValue('code x', '{}');
      const dropped = await Promise.all(Array.from({ length: 6 }, () => log.dropValue('code x')));
      expect(dropped.filter(Boolean).length).toBe(1);
      expect(await log.value('code x')).toBeUndefined();
    });

    if (again) {
      it('has everything again after it was opened anew', async () => {
        await log.append('r1', {
          events: [event(2)],
          documents: [design('d1')],
          seats: [{ tokenHash: 'h1', room: 'r1', team: 't1' }],
          answers: [answer('c1', 2)],
        });
        const second = await again();
        expect((await second.eventsAfter('r1', 0)).map((e) => e.seq)).toEqual([1, 2]);
        expect(await second.document('r1', 'd1')).toEqual(design('d1'));
        expect((await second.seat('h1'))?.team).toBe('t1');
        expect(await second.answer('r1', 'desk', 'c1')).toEqual({ ok: true, seq: 2 });
        await second.close();
      });
    }
  });
}
