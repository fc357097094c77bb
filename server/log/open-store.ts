import type { EventLog } from './event-log.ts';
import { lockFolder } from './folder-lock.ts';
import { ALONE, type Neighbours } from './neighbours.ts';
import { connectionConfig, openPostgresLog } from './postgres.ts';
import { PostgresLine } from './postgres-line.ts';
import type { Recovery } from './recovery.ts';
import { openSqliteLog } from './sqlite.ts';

/** Where a server keeps its rooms, and who else keeps them there. */
export interface Store {
  readonly log: EventLog;
  readonly neighbours: Neighbours;
  /** What was done where the data file was damaged. */
  readonly recovery: Recovery | null;
  readonly close: () => Promise<void>;
}

async function openFolder(folder: string): Promise<Store> {
  const unlock = lockFolder(folder);
  try {
    let recovery: Recovery | null = null;
    const log = await openSqliteLog(folder, {
      told: (done) => {
        recovery = done;
      },
    });
    const close = async () => {
      await log.close();
      unlock();
    };
    return { log, neighbours: ALONE, recovery, close };
  } catch (error) {
    unlock();
    throw error;
  }
}

export type Trouble = (what: string, error: unknown) => void;

async function openDatabase(url: string, trouble: Trouble): Promise<Store> {
  const log = await openPostgresLog(url);
  const neighbours = new PostgresLine(connectionConfig(url), trouble);
  const close = async () => {
    await neighbours.close();
    await log.close();
  };
  return { log, neighbours, recovery: null, close };
}

/**
 * The data folder for this process alone, or a database that many processes share. Rejects with
 * FolderInUse, with StoreAway, or with what the system or the database says.
 */
export const openStore = (folder: string, databaseUrl: string | undefined, trouble: Trouble) =>
  databaseUrl === undefined ? openFolder(folder) : openDatabase(databaseUrl, trouble);
