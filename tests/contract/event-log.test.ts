import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { afterAll, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { eventLogContract } from './event-log.ts';

const folders: string[] = [];
function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-log-'));
  folders.push(folder);
  return folder;
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

eventLogContract({ name: 'memory', make: async () => new MemoryLog() });
eventLogContract({
  name: 'SQLite',
  make: () => openSqliteLog(newFolder()),
  // While the first one still has the file open, as a second process would.
  again: () => openSqliteLog(folders.at(-1)!),
});

describe('a SQLite log', () => {
  it('opens after a first start that was cut off between two tables', async () => {
    const folder = newFolder();
    await (await openSqliteLog(folder)).close();
    const database = new Database(join(folder, 'rooms.db'));
    database.exec('drop table latest; drop table seats; delete from kysely_migration');
    database.close();
    const log = await openSqliteLog(folder);
    await log.openRoom({ id: 'r1', word: 'plum-42', openedAt: 1000 }, { events: [] });
    await log.keepLatest('r1', [{ key: 'draft t1', value: '1' }]);
    expect(await log.latest('r1')).toEqual([{ key: 'draft t1', value: '1' }]);
    expect(await log.seat('h1')).toBeUndefined();
    await log.close();
  });

  it('refuses a database of a newer version, and leaves it as it is', async () => {
    const folder = newFolder();
    await (await openSqliteLog(folder)).close();
    const database = new Database(join(folder, 'rooms.db'));
    database.exec("insert into kysely_migration values ('9999-later', '2099-01-01')");
    const steps = database.prepare('select name from kysely_migration order by name');
    const before = steps.all([]);
    await expect(openSqliteLog(folder)).rejects.toThrow('9999-later');
    expect(steps.all([])).toEqual(before);
    database.close();
  });
});
