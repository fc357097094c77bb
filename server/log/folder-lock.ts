import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';

const FILE = 'in-use.db';
/** A server that is just ending may need a moment to let go, ms. */
const PATIENCE_MS = 1000;

/** Another running server keeps its rooms in this folder. */
export class FolderInUse extends Error {
  readonly code = 'FOLDER_IN_USE';
}

const isBusy = (error: unknown) =>
  error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY');

/**
 * Takes a data folder for this server alone, and returns how to let it go. The lock is the operating
 * system's own on an open file, by way of a transaction that never ends: it goes with its process,
 * however that ends, on every system that SQLite runs on. Throws FolderInUse.
 */
export function lockFolder(folder: string): () => void {
  mkdirSync(folder, { recursive: true });
  const database = new Database(join(folder, FILE));
  try {
    database.pragma(`busy_timeout = ${PATIENCE_MS}`);
    database.exec('begin exclusive');
  } catch (error) {
    database.close();
    throw isBusy(error) ? new FolderInUse(`${folder} is in use`) : error;
  }
  return () => {
    // A server may be told to end twice.
    if (!database.open) return;
    // Closing alone leaves the file open until the garbage is collected.
    database.exec('rollback');
    database.close();
  };
}
