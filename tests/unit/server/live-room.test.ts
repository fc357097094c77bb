import { describe, expect, it } from 'vitest';
import type { Append, Appended } from '../../../server/log/event-log.ts';
import { MemoryLog } from '../../../server/log/memory.ts';
import { LiveRoom, type Order } from '../../../server/rooms/live-room.ts';
import type { RoomEvent, Seat } from '../../../shared/room/events.ts';

const DESK: Seat = { role: 'desk' };
const SERVER: Seat = { role: 'server' };
const meter = { appended: () => undefined };

/** A log that answers as it is told instead of writing. */
class TroubledLog extends MemoryLog {
  trouble: Appended | Error | null = null;
  override async append(room: string, parts: Append): Promise<Appended> {
    if (this.trouble instanceof Error) throw this.trouble;
    return this.trouble ?? super.append(room, parts);
  }
}

async function openedLog(): Promise<TroubledLog> {
  const log = new TroubledLog();
  const fact = { kind: 'opened', room: 'r1', word: 'plum-42', chargerWatched: false } as const;
  const record = { id: 'r1', word: 'plum-42', openedAt: 1000 };
  await log.openRoom(record, { events: [{ seq: 1, at: 1000, version: 1, fact }] });
  return log;
}

/** One process's copy of the room; `told` collects what its pages are told. */
async function processOf(log: MemoryLog, now: () => number = () => 2000) {
  const told: RoomEvent[] = [];
  const room = await LiveRoom.load({ log, now, meter, told: (_, events) => told.push(...events) }, 'r1');
  if (!room) throw new Error('the room is there');
  return { room, told };
}

const join = (team: string): Order => ({ seat: SERVER, id: null, command: { kind: 'join', team } });
const lookHere = (on: boolean, id: string): Order => ({ seat: DESK, id, command: { kind: 'look-here', on } });

describe('LiveRoom', () => {
  it('is not there without its first event', async () => {
    const log = await openedLog();
    expect(await LiveRoom.load({ log, now: () => 1, meter, told: () => undefined }, 'r2')).toBeUndefined();
  });

  it('two processes over one log keep one order, and both hear of everything', async () => {
    const log = await openedLog();
    const [a, b] = [await processOf(log), await processOf(log)];
    const teams = Array.from({ length: 12 }, (_, i) => `t${i}`);
    const answers = await Promise.all(teams.map((team, i) => (i % 2 ? a : b).room.carryOut(join(team))));
    expect(answers.every((answer) => answer.ok)).toBe(true);
    // The one that was not the last to write hears the rest with its next command.
    await a.room.carryOut(lookHere(true, 'x'));
    await b.room.carryOut(lookHere(false, 'y'));
    await a.room.carryOut(lookHere(true, 'z'));
    const numbers = a.told.map((event) => event.seq);
    expect(numbers).toEqual(numbers.map((_, i) => i + 2));
    const emblems = a.room.state.teams.map((team) => team.emblem);
    expect(new Set(emblems).size).toBe(12);
    expect(b.told).toEqual(a.told.slice(0, b.told.length));
  });

  it('decides anew on what another process wrote meanwhile', async () => {
    const log = await openedLog();
    const [a, b] = [await processOf(log), await processOf(log)];
    await a.room.carryOut(lookHere(true, 'x'));
    expect(await b.room.carryOut(lookHere(true, 'y'))).toEqual({
      ok: false,
      refusal: { code: 'already-so' },
    });
  });

  it('gives another process the first answer to a repeated command', async () => {
    const log = await openedLog();
    const [a, b] = [await processOf(log), await processOf(log)];
    const first = await a.room.carryOut(lookHere(true, 'x'));
    await a.room.carryOut(lookHere(false, 'y'));
    expect(await b.room.carryOut(lookHere(true, 'x'))).toEqual(first);
    expect((await log.eventsAfter('r1', 0)).length).toBe(3);
  });

  it('a full disk refuses, changes nothing, and is over when there is space', async () => {
    const log = await openedLog();
    const { room, told } = await processOf(log);
    log.trouble = 'full';
    const refused = await room.carryOut(lookHere(true, 'x'));
    expect(refused).toEqual({ ok: false, refusal: { code: 'store-full' } });
    expect([room.state.seq, told.length]).toEqual([1, 0]);
    log.trouble = null;
    expect(await room.carryOut(lookHere(true, 'x'))).toEqual({ ok: true, seq: 2 });
  });

  it('a log that throws fails that command alone', async () => {
    const log = await openedLog();
    const { room } = await processOf(log);
    log.trouble = new Error('disk on fire');
    await expect(room.carryOut(lookHere(true, 'x'))).rejects.toThrow('disk on fire');
    log.trouble = null;
    expect(await room.carryOut(lookHere(true, 'y'))).toEqual({ ok: true, seq: 2 });
  });

  it('asks to send it again after many clashes in a row', async () => {
    const log = await openedLog();
    const { room } = await processOf(log);
    log.trouble = 'clash';
    expect(await room.carryOut(join('t1'))).toEqual({ ok: false, refusal: { code: 'too-fast' } });
  });

  it('its time never goes back', async () => {
    const log = await openedLog();
    let now = 5000;
    const { room } = await processOf(log, () => now);
    await room.carryOut(lookHere(true, 'x'));
    now = 3000;
    await room.carryOut(lookHere(false, 'y'));
    expect(room.events.map((event) => event.at)).toEqual([1000, 5000, 5000]);
  });
});
