import { describe, expect, it } from 'vitest';
import { MemoryLog } from '../../../server/log/memory.ts';
import { mayHave, Newest } from '../../../server/rooms/newest.ts';
import type { RoomFact } from '../../../shared/room/events.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import type { LatestDown } from '../../../shared/wire/protocol.ts';

const DESK = { role: 'desk' } as const;
const BOARD = { role: 'board' } as const;
const T1 = { role: 'team', team: 't1' } as const;
const T2 = { role: 'team', team: 't2' } as const;

const draft = (team: string, size: number): LatestDown => ({
  kind: 'draft',
  team,
  round: 0,
  design: { size },
});
const doing = (team: string): LatestDown => ({ kind: 'doing', team, doing: 'trying' });
const clock: LatestDown = {
  kind: 'stage-clock',
  clock: { playing: true, speed: 1, at: 0, since: 1000 },
};
const state = {
  teams: ['t1', 't2'].map((id, i) => ({ id, emblem: 'bell', berth: i })),
} as unknown as RoomState;

class SlowLog extends MemoryLog {
  writes = 0;
  failing = false;
  override async keepLatest(...parts: Parameters<MemoryLog['keepLatest']>) {
    this.writes++;
    if (this.failing) throw new Error('no space');
    return super.keepLatest(...parts);
  }
}

async function newest(): Promise<{ log: SlowLog; values: Newest }> {
  const log = new SlowLog();
  await log.openRoom({ id: 'r1', word: 'plum-42', openedAt: 1 }, { events: [] });
  return { log, values: await Newest.load({ log, room: 'r1', kept: () => undefined }) };
}

describe('mayHave', () => {
  it('gives drafts to desk and own team, words to desk and board, the clock to desk and board', () => {
    const who = (value: LatestDown) => [DESK, BOARD, T1, T2].map((seat) => mayHave(seat, value));
    expect(who(draft('t1', 1))).toEqual([true, false, true, false]);
    expect(who(doing('t1'))).toEqual([true, true, false, false]);
    expect(who(clock)).toEqual([true, true, false, false]);
  });
});

describe('Newest', () => {
  it('keeps only the newest of each kind and team', async () => {
    const { values } = await newest();
    for (const value of [draft('t1', 1), draft('t2', 1), draft('t1', 2), clock]) values.put(value);
    await values.keep();
    expect(values.seenBy(T1, state, () => true)).toEqual([draft('t1', 2)]);
    const kinds = values.seenBy(DESK, state, () => true).map((value) => value.kind);
    expect(kinds.sort()).toEqual(['doing', 'doing', 'draft', 'draft', 'stage-clock']);
  });

  it('writes many changes once, and drafts are there for the next process', async () => {
    const { log, values } = await newest();
    for (let i = 0; i < 50; i++) values.put(draft('t1', i));
    values.put(doing('t1'));
    await values.keep();
    expect(log.writes).toBe(1);
    const again = await Newest.load({ log, room: 'r1', kept: () => undefined });
    expect(again.seenBy(T1, state, () => true)).toEqual([draft('t1', 49)]);
    expect((await log.latest('r1')).length).toBe(1);
  });

  it('drops the clock of a stage when another takes its place, also for the next process', async () => {
    const { log, values } = await newest();
    const happens = (fact: RoomFact) => values.look([{ seq: 2, at: 1, version: 2, fact }], true);
    values.put(clock);
    await values.keep();
    happens({ kind: 'look-here', on: true });
    expect(values.seenBy(BOARD, state, () => true)).toContainEqual(clock);
    happens({ kind: 'staged', entries: ['e1'], designs: ['d1'], verdicts: [] });
    await values.keep();
    const again = await Newest.load({ log, room: 'r1', kept: () => undefined });
    for (const each of [values, again])
      expect(each.seenBy(BOARD, state, () => true)).not.toContainEqual(clock);
    values.put(clock);
    expect(values.seenBy(BOARD, state, () => true)).toContainEqual(clock);
  });

  it('tries a failed write again with the next one', async () => {
    const { log, values } = await newest();
    log.failing = true;
    values.put(draft('t1', 1));
    await values.keep();
    log.failing = false;
    values.put(draft('t2', 1));
    await values.keep();
    expect((await log.latest('r1')).map((record) => record.key).sort()).toEqual(['draft t1', 'draft t2']);
  });

  it('says of a team without a tablet that it is away', async () => {
    const { values } = await newest();
    values.put(doing('t1'));
    values.put(doing('t2'));
    expect(values.seenBy(BOARD, state, (team) => team === 't1')).toEqual([
      doing('t1'),
      { kind: 'doing', team: 't2', doing: 'away' },
    ]);
  });
});
