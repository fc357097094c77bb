import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { RestartNeeded } from '../../server/log/event-log.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { Syncing } from '../../server/log/syncing.ts';

/** A disk that finishes a sync when it is told to. */
const disk = vi.hoisted(() => {
  const under: ((error: Error | null) => void)[] = [];
  return {
    syncs: 0,
    holds: false,
    sync(done: (error: Error | null) => void) {
      this.syncs++;
      if (this.holds) under.push(done);
      else done(null);
    },
    finish: (error: Error | null = null) => under.shift()?.(error),
  };
});

vi.mock('node:fs', async (original) => ({
  ...(await original<typeof import('node:fs')>()),
  fdatasync: (_: number, done: (error: Error | null) => void) => disk.sync(done),
}));

/** Lets everything happen that waits for nothing else. */
const settled = () => new Promise((resolve) => setImmediate(resolve));

beforeEach(() => {
  disk.syncs = 0;
  disk.holds = true;
});

describe('Syncing', () => {
  const made = () =>
    new Syncing(
      () => new Promise((resolve, reject) => disk.sync((error) => (error ? reject(error) : resolve()))),
    );

  it('shares one sync among all who came before it began, and the next among all who came during it', async () => {
    const syncing = made();
    const done: string[] = [];
    const ask = (name: string) => void syncing.synced().then(() => done.push(name));
    ask('a');
    ask('b');
    await settled();
    ask('c');
    ask('d');
    await settled();
    expect([disk.syncs, done]).toEqual([1, []]);
    disk.finish();
    await settled();
    expect([disk.syncs, done]).toEqual([2, ['a', 'b']]);
    disk.finish();
    await settled();
    expect([disk.syncs, done]).toEqual([2, ['a', 'b', 'c', 'd']]);
  });

  it('promises nothing more once a sync has failed', async () => {
    const syncing = made();
    const first = syncing.synced();
    await settled();
    disk.finish(new Error('disk on fire'));
    await expect(first).rejects.toThrow(RestartNeeded);
    await expect(syncing.synced()).rejects.toThrow(RestartNeeded);
    expect(() => syncing.check()).toThrow('Restart the server');
    expect(disk.syncs).toBe(1);
  });
});

describe('a SQLite log', () => {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-sync-'));
  const room = { id: 'r1', word: 'plum-42', openedAt: 1000 };
  const event = (seq: number) => ({ seq, at: 1, version: 1, fact: { kind: 'look-here', on: true } }) as const;
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('says that something is done when it is on the disk, and lets lossy values wait for nothing', async () => {
    const log = await openSqliteLog(folder);
    const done: unknown[] = [];
    const steps: [string, () => Promise<unknown>][] = [
      ['opened', () => log.openRoom(room, { events: [event(1)] })],
      ['appended', () => log.append('r1', { events: [event(2)] })],
      ['set', () => log.setValue('link a', '1')],
      ['dropped', () => log.dropValue('link a')],
    ];
    for (const [name, step] of steps) {
      void step().then(() => done.push(name));
      await settled();
      expect(done).not.toContain(name);
      disk.finish();
      await settled();
      expect(done).toContain(name);
    }
    const before = disk.syncs;
    await log.keepLatest('r1', [{ key: 'draft t1', value: '1' }]);
    expect([before, disk.syncs]).toEqual([steps.length, steps.length]);
    await log.close();
  });

  it('takes nothing and is not fit once a sync has failed, and has everything after a restart', async () => {
    disk.holds = false;
    const log = await openSqliteLog(folder);
    await log.openRoom(room, { events: [event(1)] });
    await log.check();
    disk.holds = true;
    const appending = log.append('r1', { events: [event(2)] });
    await settled();
    disk.finish(new Error('disk on fire'));
    await expect(appending).rejects.toThrow(RestartNeeded);
    disk.holds = false;
    await expect(log.append('r1', { events: [event(3)] })).rejects.toThrow(RestartNeeded);
    await expect(log.check()).rejects.toThrow(RestartNeeded);
    expect((await log.eventsAfter('r1', 0)).length).toBe(3);
    await log.close();
    const again = await openSqliteLog(folder);
    await again.check();
    expect(await again.append('r1', { events: [event(4)] })).toBe('done');
    await again.close();
  });
});
