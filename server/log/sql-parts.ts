import type { Kysely } from 'kysely';
import type { Append } from './event-log.ts';
import { summed } from './sums.ts';
import type { Tables } from './tables.ts';

/** What is written for a room must not outlive it. */
export class RoomGone extends Error {}

/** Holds a room's row until the end of the transaction, so that the room cannot be removed meanwhile. */
export async function holdRoom(trx: Kysely<Tables>, room: string, locksRows: boolean): Promise<void> {
  const row = trx.selectFrom('rooms').select('id').where('id', '=', room);
  const found = await (locksRows ? row.forKeyShare() : row).executeTakeFirst();
  if (!found) throw new RoomGone(`no room ${room}`);
}

/** Inserts all that belongs to one append, inside of a transaction. */
export async function insertParts(trx: Kysely<Tables>, room: string, parts: Append): Promise<void> {
  for (const { seq, at, version, fact } of parts.events) {
    await trx
      .insertInto('events')
      .values(summed('events', { room, seq, at, version, fact: JSON.stringify(fact) }))
      .execute();
  }
  for (const document of parts.documents ?? []) {
    const { id, kind, body } = document;
    const row = summed('documents', { room, id, kind, body });
    await trx
      .insertInto('documents')
      .values(row)
      .onConflict((c) => c.doNothing())
      .execute();
  }
  if (parts.freed !== undefined) {
    await trx.deleteFrom('seats').where('room', '=', room).where('team', '=', parts.freed).execute();
  }
  for (const { tokenHash, team } of parts.seats ?? []) {
    const row = summed('seats', { token_hash: tokenHash, room, team });
    await trx.insertInto('seats').values(row).execute();
  }
  for (const { seat, command, answer } of parts.answers ?? []) {
    await trx
      .insertInto('answers')
      .values(summed('answers', { room, seat, command, answer: JSON.stringify(answer) }))
      .execute();
  }
}
