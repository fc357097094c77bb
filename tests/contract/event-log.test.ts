import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
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
