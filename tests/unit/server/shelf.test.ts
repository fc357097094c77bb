import { beforeEach, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../../server/log/memory.ts';
import { Shelf } from '../../../server/seats/shelf.ts';
import { UNDO_MS } from '../../../shared/wire/desks.ts';

let clock = 0;
let log: MemoryLog;
let shelf: Shelf;

beforeEach(() => {
  clock = 1000;
  log = new MemoryLog();
  shelf = new Shelf(log, 'challenge', 2, () => clock);
});

const idsOf = async (of: string) => (await shelf.list(of)).map(({ id }) => id);

describe('a shelf', () => {
  it('lists what was saved last first, with the newest body of each', async () => {
    await shelf.put('owner', 'a', { n: 1 });
    clock++;
    await shelf.put('owner', 'b', { n: 2 });
    clock++;
    await shelf.put('owner', 'a', { n: 3 });
    expect(await shelf.list('owner')).toEqual([
      { id: 'a', savedAt: 1002, body: { n: 3 } },
      { id: 'b', savedAt: 1001, body: { n: 2 } },
    ]);
    expect(await shelf.find('owner', 'a')).toEqual({ n: 3 });
  });

  it('is one desk’s: ids that look alike to a store’s pattern stay apart', async () => {
    await shelf.put('d_sk', 'a', 1);
    await shelf.put('desk', 'b', 2);
    expect([await idsOf('d_sk'), await idsOf('desk'), await idsOf('owner')]).toEqual([['a'], ['b'], []]);
    expect(await shelf.find('d_sk', 'b')).toBeUndefined();
  });

  it('of another kind holds other things', async () => {
    await shelf.put('owner', 'a', 1);
    expect(await new Shelf(log, 'kit', 2, () => clock).list('owner')).toEqual([]);
  });

  it('takes no more than it may, but another body of what is there', async () => {
    await shelf.put('owner', 'a', 1);
    await shelf.put('owner', 'b', 1);
    expect(await shelf.put('owner', 'c', 1)).toBe('too-many');
    expect(await shelf.put('owner', 'b', 2)).toBe('done');
    expect(await shelf.put('other', 'c', 1)).toBe('done');
  });

  it('gives back what was erased for so long as that can be undone, and then forgets it', async () => {
    await shelf.put('owner', 'a', 1);
    expect(await shelf.erase('owner', 'a')).toBe('done');
    expect([await idsOf('owner'), await shelf.find('owner', 'a')]).toEqual([[], undefined]);
    expect(await shelf.erase('owner', 'a')).toBe('gone');
    expect(await shelf.giveBack('owner', 'a')).toBe('done');
    expect(await idsOf('owner')).toEqual(['a']);
    await shelf.erase('owner', 'a');
    clock += 2 * UNDO_MS;
    expect(await shelf.giveBack('owner', 'a')).toBe('gone');
    await shelf.list('owner');
    expect(await log.values('shelf-')).toEqual([]);
  });

  it('of a desk that is no more is forgotten whole, and no other with it', async () => {
    await shelf.put('d_sk', 'a', 1);
    await shelf.put('desk', 'b', 2);
    await shelf.forget('d_sk');
    expect([await idsOf('d_sk'), await idsOf('desk')]).toEqual([[], ['b']]);
    expect((await log.values('shelf-')).length).toBe(1);
  });

  it('has room again for what was erased', async () => {
    await shelf.put('owner', 'a', 1);
    await shelf.put('owner', 'b', 1);
    await shelf.erase('owner', 'a');
    expect(await shelf.put('owner', 'c', 1)).toBe('done');
  });
});
