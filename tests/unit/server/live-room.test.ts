import { describe, expect, it } from 'vitest';
import { type Append, type Appended, StoreAway } from '../../../server/log/event-log.ts';
import { MemoryLog } from '../../../server/log/memory.ts';
import { LiveRoom, type Order } from '../../../server/rooms/live-room.ts';
import type { RoomEvent, Seat } from '../../../shared/room/events.ts';
import type { Answer } from '../../../shared/wire/protocol.ts';

const DESK: Seat = { role: 'desk' };
const SERVER: Seat = { role: 'server' };
const meter = { appended: () => undefined };

/** A log that answers as it is told instead of writing, takes a while, and counts its appends. */
class TroubledLog extends MemoryLog {
  trouble: Appended | Error | null = null;
  /** Whoever has this in its parts is not taken. */
  poison = '';
  appends = 0;
  override async append(room: string, parts: Append): Promise<Appended> {
    this.appends++;
    await new Promise((resolve) => setImmediate(resolve));
    if (this.poison && JSON.stringify(parts).includes(this.poison)) throw new Error('poison');
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

describe('LiveRoom, asked by many at once', () => {
  const outcome = (answers: readonly PromiseSettledResult<Answer>[]) =>
    answers.map((one) => {
      if (one.status === 'rejected') return String(one.reason);
      return one.value.ok ? one.value.seq : one.value.refusal.code;
    });
  const team = (n: number) => ({ seat: SERVER, id: null, command: { kind: 'join', team: `t${n}` } }) as const;
  /** Some of it is refused, and what is depends on what came before. */
  const MANY: readonly Order[] = [
    ...[1, 2, 3].map(team),
    lookHere(true, 'a'),
    lookHere(true, 'b'),
    lookHere(false, 'c'),
    team(2),
    { seat: DESK, id: 'd', command: { kind: 'remove-team', team: 't1' } },
    { seat: DESK, id: 'e', command: { kind: 'remove-team', team: 't1' } },
    lookHere(true, 'f'),
  ];

  async function atOnce(orders: readonly Order[], log: TroubledLog) {
    const { room, told } = await processOf(log);
    log.appends = 0;
    const answers = outcome(await Promise.allSettled(orders.map((order) => room.carryOut(order))));
    return { room, told, answers, appends: log.appends };
  }

  it('appends all of them as one, and comes to what one after another comes to', async () => {
    const { room, told, answers, appends } = await atOnce(MANY, await openedLog());
    const slow = await processOf(await openedLog());
    const oneByOne: PromiseSettledResult<Answer>[] = [];
    for (const order of MANY) oneByOne.push(...(await Promise.allSettled([slow.room.carryOut(order)])));
    expect(answers).toEqual(outcome(oneByOne));
    expect(answers).toEqual([2, 3, 4, 5, 'already-so', 6, 'already-so', 7, 'already-so', 8]);
    expect(room.events).toEqual(slow.room.events);
    expect(room.state).toEqual(slow.room.state);
    expect(told).toEqual(slow.told);
    expect(appends).toBe(1);
  });

  it('appends as one what comes while it appends', async () => {
    const log = await openedLog();
    const { room } = await processOf(log);
    const first = room.carryOut(team(1));
    while (log.appends === 0) await Promise.resolve();
    const others = [2, 3, 4].map((n) => room.carryOut(team(n)));
    expect(outcome(await Promise.allSettled([first, ...others]))).toEqual([2, 3, 4, 5]);
    expect(log.appends).toBe(2);
  });

  it('keeps every answer, refusals too, for those that are sent again', async () => {
    const log = await openedLog();
    const { answers } = await atOnce(MANY, log);
    const later = await processOf(log);
    const again = MANY.filter(({ id }) => id !== null);
    const repeated = await Promise.allSettled(again.map((order) => later.room.carryOut(order)));
    expect(outcome(repeated)).toEqual(answers.filter((_, i) => MANY[i]!.id !== null));
    expect((await log.eventsAfter('r1', 0)).length).toBe(8);
  });

  it('gives a repeat among them its first answer', async () => {
    const orders = [team(1), lookHere(true, 'a'), lookHere(false, 'b'), lookHere(true, 'a'), team(2)];
    const { answers, room } = await atOnce(orders, await openedLog());
    expect(answers).toEqual([2, 3, 4, 3, 5]);
    expect(room.state.seq).toBe(5);
  });

  it('decides all anew where another process was faster, but for those that it has answered', async () => {
    const log = await openedLog();
    const other = await processOf(log);
    const { room } = await processOf(log);
    await other.room.carryOut(lookHere(true, 'a'));
    const orders = [lookHere(true, 'x'), lookHere(true, 'a'), lookHere(false, 'y'), team(1)];
    const answers = outcome(await Promise.allSettled(orders.map((order) => room.carryOut(order))));
    expect(answers).toEqual(['already-so', 2, 3, 4]);
  });

  it('refuses all where the disk is full, and changes nothing', async () => {
    const log = await openedLog();
    log.trouble = 'full';
    const { answers, room, told } = await atOnce(MANY, log);
    expect(new Set(answers)).toEqual(new Set(['store-full']));
    expect([room.state.seq, told.length]).toEqual([1, 0]);
  });

  it('fails all where the store is away', async () => {
    const log = await openedLog();
    log.trouble = new StoreAway('away');
    const { answers, appends } = await atOnce(MANY, log);
    expect(new Set(answers)).toEqual(new Set(['Error: away']));
    expect(appends).toBe(1);
  });

  it('lets only that one fail of which the store does not take something', async () => {
    const log = await openedLog();
    log.poison = 'bad';
    const orders = [team(1), lookHere(true, 'a'), lookHere(false, 'bad'), team(2)];
    const { answers, room } = await atOnce(orders, log);
    expect(answers).toEqual([2, 3, 'Error: poison', 4]);
    expect(room.state.lookHere).toBe(true);
  });

  it('appends what gives or frees a seat by itself', async () => {
    const log = await openedLog();
    const seat = (n: number) => ({ tokenHash: `h${n}`, room: 'r1', team: `t${n}` });
    const orders: Order[] = [
      team(1),
      { ...team(2), seats: [seat(2)] },
      { ...team(3), seats: [seat(3)] },
      team(4),
    ];
    const { answers, appends } = await atOnce(orders, log);
    expect([answers, appends]).toEqual([[2, 3, 4, 5], 4]);
    expect((await log.seat('h3'))?.team).toBe('t3');
  });
});
