import pg from 'pg';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { News, NewsListener } from '../../server/log/neighbours.ts';
import { connectionConfig, openPostgresLog } from '../../server/log/postgres.ts';
import { PostgresLine } from '../../server/log/postgres-line.ts';
import { NO_POSTGRES, postgresPrograms, TestDatabase } from './postgres.ts';

const PATIENCE_MS = 30_000;

/** Hears what the others tell, and can wait for it. */
class Ear implements NewsListener {
  readonly heard: News[] = [];
  misses = 0;
  readonly ended: string[] = [];
  readonly rooms = () => [];
  readonly news = (news: News) => void this.heard.push(news);
  readonly missed = () => void this.misses++;
  readonly gone = (process: string) => void this.ended.push(process);

  async until(what: string, holds: () => boolean): Promise<void> {
    const end = Date.now() + PATIENCE_MS;
    while (!holds()) {
      if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  }
}

if (postgresPrograms() === undefined) {
  it.skip(`the line between processes (${NO_POSTGRES})`, () => undefined);
} else {
  describe('the line between processes', () => {
    let database: TestDatabase;
    let url: string;
    const lines: PostgresLine[] = [];
    beforeAll(async () => {
      database = await TestDatabase.start();
      url = await database.newDatabase();
      await (await openPostgresLog(url)).close();
    });
    afterEach(async () => {
      for (const line of lines.splice(0)) await line.close();
    });
    afterAll(() => database.remove());

    async function join(): Promise<{ line: PostgresLine; ear: Ear }> {
      const line = new PostgresLine(connectionConfig(url), () => undefined);
      const ear = new Ear();
      lines.push(line);
      line.hear(ear);
      await ear.until('the line', () => ear.misses === 1);
      return { line, ear };
    }

    it('tells all others what one tells, and not itself', async () => {
      const [a, b, c] = [await join(), await join(), await join()];
      a.line.tell({ kind: 'events', room: 'r1', seq: 7 });
      for (const { ear } of [b, c]) {
        await ear.until('the news', () => ear.heard.length === 1);
        expect(ear.heard).toEqual([{ kind: 'events', room: 'r1', seq: 7 }]);
      }
      expect(a.ear.heard).toEqual([]);
    });

    it('cuts what is told at once into messages that PostgreSQL takes', async () => {
      const [a, b] = [await join(), await join()];
      const news = Array.from(
        { length: 500 },
        (_, i): News => ({ kind: 'events', room: `room-${i}`, seq: i }),
      );
      for (const one of news) a.line.tell(one);
      await b.ear.until('all news', () => b.ear.heard.length >= 500);
      expect(b.ear.heard).toEqual(news);
    });

    it('sends of news with the same key only the newest', async () => {
      const [a, b] = [await join(), await join()];
      for (let seq = 1; seq <= 50; seq++) a.line.tell({ kind: 'events', room: 'r1', seq });
      a.line.tell({ kind: 'opened', room: 'r2' });
      await b.ear.until('the last', () => b.ear.heard.some((one) => one.kind === 'opened'));
      expect(b.ear.heard).toEqual([
        { kind: 'events', room: 'r1', seq: 50 },
        { kind: 'opened', room: 'r2' },
      ]);
    });

    it('comes back by itself after a restart, and says that something may be missed', async () => {
      const [a, b] = [await join(), await join()];
      await database.end();
      await database.begin();
      await b.ear.until('the line again', () => b.ear.misses === 2);
      await a.ear.until('the line again', () => a.ear.misses === 2);
      a.line.tell({ kind: 'events', room: 'r2', seq: 9 });
      await b.ear.until('later news', () =>
        b.ear.heard.some((one) => one.kind === 'events' && one.room === 'r2'),
      );
    });

    it('survives that its connection alone is ended', async () => {
      const { ear } = await join();
      const other = new pg.Client({ connectionString: url });
      await other.connect();
      await other.query(
        'select pg_terminate_backend(pid) from pg_stat_activity where pid <> pg_backend_pid()',
      );
      await other.end();
      await ear.until('the line again', () => ear.misses === 2);
    });

    it('says who has ended', async () => {
      const [a, b] = [await join(), await join()];
      await lines.splice(lines.indexOf(a.line), 1)[0]!.close();
      await b.ear.until('the end', () => b.ear.ended.length === 1);
    });
  });
}
