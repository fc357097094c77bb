import { setImmediate as others } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { EntryJudge } from '../../../server/judging/entries.ts';
import { MemoryLog } from '../../../server/log/memory.ts';
import { LiveRoom } from '../../../server/rooms/live-room.ts';
import { EVENT_VERSION, type RoomFact } from '../../../shared/room/events.ts';

const FACTS: readonly RoomFact[] = [
  { kind: 'opened', room: 'r1', word: 'plum-42', chargerWatched: true },
  { kind: 'team-joined', team: 't1', emblem: 'bell' },
  { kind: 'handed-in', entry: 'e1', team: 't1', design: 'd1', late: false },
];

/** A room with an entry whose documents are gone, so that every try to judge it fails. */
async function roomWithEntry(log: MemoryLog): Promise<LiveRoom> {
  const meter = { appended: () => undefined };
  const events = FACTS.map((fact, i) => ({ seq: i + 1, at: 1000, version: EVENT_VERSION, fact }));
  await log.openRoom({ id: 'r1', word: 'plum-42', openedAt: 1000 }, { events });
  const room = await LiveRoom.load({ log, now: () => 2000, meter, told: () => undefined }, 'r1');
  if (!room) throw new Error('no room');
  return room;
}

it.each([
  ['goes on, is tried three times', false, 3],
  ['is to be erased, is not tried at all', true, 0],
] as const)('an entry that cannot be judged, in a room that %s', async (_, ended, tries) => {
  const log = new MemoryLog();
  const room = await roomWithEntry(log);
  if (ended) await room.end();
  const failures: string[] = [];
  const judging = { judge: () => Promise.reject(new Error('cannot')), close: async () => undefined };
  const judge = new EntryJudge({
    log,
    judging,
    patienceMs: 0,
    failed: (_room, entry) => {
      // Without an end it would never come back to the test.
      if (failures.push(entry) > 10) judge.stop();
    },
  });
  judge.look(room);
  while (judge.size > 0) await judge.stopped();
  judge.stop();
  expect(failures).toHaveLength(tries);
});

it('an entry that cannot even be given up, since the store takes nothing, lets others have their turn', async () => {
  const log = new MemoryLog();
  const room = await roomWithEntry(log);
  log.append = () => Promise.reject(new Error('broken'));
  const failures: string[] = [];
  let givenUp = () => {};
  const tried = new Promise<void>((resolve) => {
    givenUp = resolve;
  });
  const judging = { judge: () => Promise.reject(new Error('cannot')), close: async () => undefined };
  const judge = new EntryJudge({
    log,
    judging,
    patienceMs: 0,
    failed: (_room, entry) => {
      if (failures.push(entry) === 4) givenUp();
      if (failures.length > 10) judge.stop();
    },
  });
  judge.look(room);
  await tried;
  await others();
  judge.stop();
  await judge.stopped();
  // Three tries, and one to give it up.
  expect(failures).toHaveLength(4);
});
