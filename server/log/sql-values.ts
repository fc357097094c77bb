import type { Kysely } from 'kysely';
import type { LatestRecord } from './event-log.ts';
import { summed } from './sums.ts';
import type { Tables } from './tables.ts';

/** Values of the server itself, and what goes with a room that is removed: whichever database kysely speaks to. */

export async function oneValue(db: Kysely<Tables>, key: string): Promise<string | undefined> {
  const row = await db.selectFrom('server_values').select('value').where('key', '=', key).executeTakeFirst();
  return row?.value;
}

/** `prefix` is one of the server's own words: nothing in it means something to LIKE. */
export const someValues = (db: Kysely<Tables>, prefix: string): Promise<LatestRecord[]> =>
  db
    .selectFrom('server_values')
    .select(['key', 'value'])
    .where('key', 'like', `${prefix}%`)
    .orderBy('key')
    .execute();

export async function setValue(db: Kysely<Tables>, key: string, value: string): Promise<void> {
  const row = summed('server_values', { key, value });
  await db
    .insertInto('server_values')
    .values(row)
    .onConflict((c) => c.column('key').doUpdateSet({ value, sum: row.sum }))
    .execute();
}

export async function dropValue(db: Kysely<Tables>, key: string): Promise<boolean> {
  const { numDeletedRows } = await db
    .deleteFrom('server_values')
    .where('key', '=', key)
    .executeTakeFirstOrThrow();
  return Number(numDeletedRows) > 0;
}

export async function removeRows(trx: Kysely<Tables>, room: string): Promise<void> {
  // The room first: that waits for whoever is writing something of it, and what they wrote is seen then.
  await trx.deleteFrom('rooms').where('id', '=', room).execute();
  for (const table of ['events', 'documents', 'answers', 'seats', 'latest'] as const) {
    await trx.deleteFrom(table).where('room', '=', room).execute();
  }
}

/** Asks for the newest event of each room alone: all events of a store are too many to look through. */
export async function lastUsed(
  db: Kysely<Tables>,
  rooms: readonly string[] | null,
): Promise<ReadonlyMap<string, number>> {
  if (rooms?.length === 0) return new Map();
  const all = db
    .selectFrom('rooms')
    .select(({ selectFrom }) => [
      'id',
      'opened_at',
      selectFrom('events')
        .select('events.at')
        .whereRef('events.room', '=', 'rooms.id')
        .orderBy('events.seq', 'desc')
        .limit(1)
        .as('at'),
    ]);
  const rows = await (rooms ? all.where('id', 'in', rooms) : all).execute();
  return new Map(rows.map((row) => [row.id, Math.max(Number(row.opened_at), Number(row.at ?? 0))]));
}
