import { expect } from 'vitest';
import type { EventLog } from '../../server/log/event-log.ts';
import { storedDocument } from '../../server/rooms/documents.ts';
import { stateOf } from '../../shared/room/apply.ts';
import type { RoomEvent, RoomFact } from '../../shared/room/events.ts';

/** Three rooms of which every row is known, to find out what is left of them after damage. */

export const ROOMS = ['plum-42', 'fern-10', 'sage-11'];
export const ENTRIES = 60;

const design = (room: number, i: number) =>
  storedDocument('design', { room, i, filling: 'abcdefgh'.repeat(20 + ((i * 37) % 700)) });

/** What a lesson of one room leaves, without anything that needs a judge. */
function factsOf(room: number): RoomFact[] {
  const opened: RoomFact = { kind: 'opened', room: `r${room}`, word: ROOMS[room]!, chargerWatched: true };
  const joined: RoomFact = { kind: 'team-joined', team: `t${room}`, emblem: 'bell' };
  const handedIn = Array.from({ length: ENTRIES }, (_, i): RoomFact => {
    const { id } = design(room, i);
    return { kind: 'handed-in', entry: `e${room}-${i}`, team: `t${room}`, design: id, late: false };
  });
  return [opened, joined, ...handedIn];
}

const eventsOf = (room: number): RoomEvent[] =>
  factsOf(room).map((fact, i) => ({ seq: i + 1, at: 1000 + i, version: 1, fact }));
const answerOf = (seq: number) => ({ seat: 'desk', command: `c${seq}`, answer: { ok: true, seq } as const });

export async function fill(log: EventLog): Promise<void> {
  for (const [room, word] of ROOMS.entries()) {
    const [first, second, ...rest] = eventsOf(room);
    await log.openRoom({ id: `r${room}`, word, openedAt: 1000 + room }, { events: [first!] });
    const seat = { tokenHash: `hash-${room}`, room: `r${room}`, team: `t${room}` };
    await log.append(`r${room}`, { events: [second!], seats: [seat] });
    for (const [i, event] of rest.entries()) {
      const documents = [design(room, i)];
      await log.append(`r${room}`, { events: [event], documents, answers: [answerOf(event.seq)] });
    }
    await log.keepLatest(`r${room}`, [{ key: `draft t${room}`, value: `{"room":${room}}` }]);
  }
}

/** Whatever is there is what was written, and rooms are whole in themselves. */
export async function expectSound(log: EventLog): Promise<number> {
  let kept = 0;
  for (const record of await log.rooms()) {
    const room = Number(record.id.slice(1));
    const was = eventsOf(room);
    const events = await log.eventsAfter(record.id, 0);
    expect(stateOf(events)).toBeDefined();
    for (const [i, event] of events.entries()) {
      expect(event.seq).toBe(i + 1);
      if (i > 0 && event.fact?.kind !== 'lost') expect(event).toEqual(was[i]);
      if (event.fact?.kind === 'lost')
        expect(await log.answer(record.id, 'desk', `c${i + 1}`)).toBeUndefined();
      else kept++;
    }
    for (const document of await log.documents(record.id)) {
      expect(storedDocument('design', JSON.parse(document.body))).toEqual(document);
    }
    const joined = events.some((event) => event.fact?.kind === 'team-joined');
    if (!joined) expect(await log.seat(`hash-${room}`)).toBeUndefined();
  }
  return kept;
}

export const ALL = ROOMS.length * (ENTRIES + 2);
