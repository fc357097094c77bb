import { type Kysely, type Migration, type MigrationProvider, Migrator } from 'kysely';

const ROOM_TABLES = ['rooms', 'events', 'documents', 'answers', 'seats', 'latest'];

/** Adds a column where it is missing: SQLite has no "if not exists" for columns. */
async function addSum(db: Kysely<unknown>, table: string): Promise<void> {
  const tables = await db.introspection.getTables();
  const known = tables.find((t) => t.name === table)?.columns.some((column) => column.name === 'sum');
  if (!known) await db.schema.alterTable(table).addColumn('sum', 'bigint').execute();
}

/**
 * What a database of each age still needs, in order. A migration that has been released never changes.
 * Each can be run again over its own half: a server may be killed in the middle of its first start.
 */
const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-rooms': {
    async up(db: Kysely<unknown>) {
      await db.schema
        .createTable('rooms')
        .ifNotExists()
        .addColumn('id', 'varchar(64)', (c) => c.primaryKey())
        .addColumn('word', 'varchar(64)', (c) => c.notNull().unique())
        .addColumn('opened_at', 'bigint', (c) => c.notNull())
        .execute();
      await db.schema
        .createTable('events')
        .ifNotExists()
        .addColumn('room', 'varchar(64)', (c) => c.notNull())
        .addColumn('seq', 'integer', (c) => c.notNull())
        .addColumn('at', 'bigint', (c) => c.notNull())
        .addColumn('version', 'integer', (c) => c.notNull())
        .addColumn('fact', 'text', (c) => c.notNull())
        .addPrimaryKeyConstraint('events_key', ['room', 'seq'])
        .execute();
      await db.schema
        .createTable('documents')
        .ifNotExists()
        .addColumn('room', 'varchar(64)', (c) => c.notNull())
        .addColumn('id', 'varchar(64)', (c) => c.notNull())
        .addColumn('kind', 'varchar(16)', (c) => c.notNull())
        .addColumn('body', 'text', (c) => c.notNull())
        .addPrimaryKeyConstraint('documents_key', ['room', 'id'])
        .execute();
      await db.schema
        .createTable('answers')
        .ifNotExists()
        .addColumn('room', 'varchar(64)', (c) => c.notNull())
        .addColumn('seat', 'varchar(64)', (c) => c.notNull())
        .addColumn('command', 'varchar(64)', (c) => c.notNull())
        .addColumn('answer', 'text', (c) => c.notNull())
        .addPrimaryKeyConstraint('answers_key', ['room', 'seat', 'command'])
        .execute();
      await db.schema
        .createTable('seats')
        .ifNotExists()
        .addColumn('token_hash', 'varchar(64)', (c) => c.primaryKey())
        .addColumn('room', 'varchar(64)', (c) => c.notNull())
        .addColumn('team', 'varchar(64)', (c) => c.notNull())
        .execute();
      await db.schema
        .createTable('latest')
        .ifNotExists()
        .addColumn('room', 'varchar(64)', (c) => c.notNull())
        .addColumn('key', 'varchar(96)', (c) => c.notNull())
        .addColumn('value', 'text', (c) => c.notNull())
        .addPrimaryKeyConstraint('latest_key', ['room', 'key'])
        .execute();
    },
  },
  '0002-sums': {
    async up(db: Kysely<unknown>) {
      for (const table of ROOM_TABLES) await addSum(db, table);
    },
  },
  '0003-values': {
    async up(db: Kysely<unknown>) {
      await db.schema
        .createTable('server_values')
        .ifNotExists()
        .addColumn('key', 'varchar(96)', (c) => c.primaryKey())
        .addColumn('value', 'text', (c) => c.notNull())
        .addColumn('sum', 'bigint')
        .execute();
    },
  },
};

export const MIGRATION_NAMES = Object.keys(MIGRATIONS);

const provider: MigrationProvider = { getMigrations: async () => ({ ...MIGRATIONS }) };

/** Brings the tables to this version. Throws where the database is newer or broken. */
export async function migrate(db: Kysely<never>): Promise<void> {
  const { error } = await new Migrator({ db, provider }).migrateToLatest();
  if (error) throw error;
}
