import { describe, expect, it } from 'vitest';
import { MemoryLog } from '../../../server/log/memory.ts';
import { linkWord } from '../../../server/rooms/words.ts';
import { isSeatCode, Links } from '../../../server/seats/links.ts';
import { EMBLEMS } from '../../../shared/room/state.ts';

const place = { room: 'r1', team: 't1' };

function links() {
  const log = new MemoryLog();
  let now = 1_000_000;
  const made = new Links(log, () => now, linkWord);
  const pass = (ms: number) => {
    now += ms;
  };
  return { log, links: made, pass };
}

describe('seat codes', () => {
  it('begin with an emblem, and no room word is taken for one', () => {
    expect(EMBLEMS.filter((emblem) => !isSeatCode(`${emblem}-0421`))).toEqual([]);
    const words = new Set(Array.from({ length: 3000 }, linkWord));
    expect([...words].filter((word) => isSeatCode(`${word}-4821`))).toEqual([]);
    expect(['bell-42', 'bell-48213', 'bell', 'constructor-1234'].filter(isSeatCode)).toEqual([]);
  });

  it('are used up, and old ones leave the store', async () => {
    const { log, links: own, pass } = links();
    const first = await own.makeCode('bell', place);
    await own.makeCode('bell', { ...place, team: 't2' });
    expect(first.ok && (await own.takeCode(first.value.code))).toMatchObject(place);
    expect(first.ok && (await own.takeCode(first.value.code))).toBeUndefined();
    pass(5 * 60_000);
    await own.makeCode('bell', place);
    expect((await log.values('code ')).length).toBe(1);
  });
});

describe('a room that is forgotten', () => {
  it('leaves no link and no code behind, and keeps those of other rooms', async () => {
    const { log, links: own } = links();
    for (const room of ['r1', 'r2']) {
      await own.giveRoom(room, 'desk-link');
      await own.make({ kind: 'room', room });
      await own.makeCode('bell', { ...place, room });
    }
    await own.forget('r1');
    expect(JSON.stringify(await log.values(''))).not.toContain('r1');
    expect((await log.values('')).length).toBe(3);
  });
});

describe('links', () => {
  it('are found by their secret alone, which is not kept', async () => {
    const { log, links: own } = links();
    const made = await own.make({ kind: 'desk', room: null });
    const { token, link } = made.ok ? made.value : { token: '', link: null };
    expect(await own.find(token)).toEqual(link);
    expect(await own.find(link?.id)).toBeUndefined();
    expect(JSON.stringify(await log.values(''))).not.toContain(token);
  });

  it('that a full store cannot change stay as they were, and say so', async () => {
    const { log, links: own } = links();
    const made = await own.make({ kind: 'desk', room: null });
    const { token, link } = made.ok ? made.value : { token: '', link: null };
    const space = log.setValue;
    log.setValue = async () => 'full';
    expect(await own.revoke(link?.id ?? '')).toBe('full');
    expect(await own.find(token)).toEqual(link);
    log.setValue = space;
    expect(await own.revoke(link?.id ?? '')).toBe('done');
    log.setValue = async () => 'full';
    expect(await own.giveBack(link?.id ?? '')).toBe('full');
  });

  it('that were revoked leave the store when they can’t be given back any more, after what was theirs', async () => {
    const { log, links: own, pass } = links();
    const ids: string[] = [];
    for (let i = 0; i < 2; i++) {
      const made = await own.make({ kind: 'desk', room: null });
      if (made.ok) ids.push(made.value.link.id);
    }
    await own.revoke(ids[0] ?? '');
    pass(20_000);
    await own.revoke(ids[1] ?? '');
    const forgotten: string[] = [];
    await own.forgetRevoked(async ({ id }) => {
      forgotten.push(`${id} of ${(await log.values('link ')).length}`);
    });
    expect(forgotten).toEqual([`${ids[0]} of 2`]);
    expect((await log.values('link ')).length).toBe(1);
    expect(await own.giveBack(ids[0] ?? '')).toBe('too-late');
    expect(await own.giveBack(ids[1] ?? '')).toBe('done');
  });

  it('of a store that is full are not made', async () => {
    class FullLog extends MemoryLog {
      override async setValue() {
        return 'full' as const;
      }
    }
    const own = new Links(new FullLog(), () => 0, linkWord);
    expect(await own.make({ kind: 'desk', room: null })).toEqual({ ok: false });
    expect(await own.makeCode('bell', place)).toEqual({ ok: false });
  });
});
