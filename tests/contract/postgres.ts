import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';

/** A PostgreSQL server of the tests' own, in a temporary folder on a free port. */

const DEBIAN = '/usr/lib/postgresql';
const USUAL = ['/usr/bin', '/usr/local/bin', '/opt/homebrew/opt/postgresql@15/bin'];
const PATIENCE_MS = 30_000;

export const NO_POSTGRES =
  'skipped: no PostgreSQL found; install it (Debian: apt-get install postgresql) or name its folder of programs in HARBOUR_POSTGRES';

/** The folder that holds initdb and postgres: what HARBOUR_POSTGRES names, or the newest found. */
export function postgresPrograms(): string | undefined {
  const named = process.env.HARBOUR_POSTGRES;
  const debian = existsSync(DEBIAN) ? readdirSync(DEBIAN).map((version) => join(DEBIAN, version, 'bin')) : [];
  const found = [named, ...debian.sort().reverse(), ...USUAL].find(
    (folder) => folder && existsSync(join(folder, 'initdb')),
  );
  if (named !== undefined && found !== named)
    throw new Error(`HARBOUR_POSTGRES names ${named}, but there is no initdb in it.`);
  return found;
}

/** PostgreSQL refuses to run as root; Debian's package brings a user for it. */
function otherUser(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const line = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .find((l) => l.startsWith('postgres:'));
  if (!line) throw new Error('PostgreSQL does not run as root, and there is no user postgres.');
  const [, , uid, gid] = line.split(':');
  return { uid: Number(uid), gid: Number(gid) };
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}

async function answers(url: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return true;
  } catch {
    return false;
  } finally {
    await client.end().catch(() => undefined);
  }
}

export class TestDatabase {
  readonly #programs: string;
  readonly #folder: string;
  readonly #port: number;
  #child: ChildProcess | null = null;
  #databases = 0;

  private constructor(programs: string, folder: string, port: number) {
    this.#programs = programs;
    this.#folder = folder;
    this.#port = port;
  }

  static async start(): Promise<TestDatabase> {
    const programs = postgresPrograms();
    if (programs === undefined) throw new Error(NO_POSTGRES);
    const folder = mkdtempSync(join(tmpdir(), 'harbour-postgres-'));
    const user = otherUser();
    if (user) chownSync(folder, user.uid, user.gid);
    const options = ['-U', 'harbour', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync', '-D', folder];
    const made = spawnSync(join(programs, 'initdb'), options, { ...user, cwd: folder, encoding: 'utf8' });
    if (made.status !== 0) throw new Error(`initdb: ${made.stderr}`);
    const one = new TestDatabase(programs, folder, await freePort());
    await one.begin();
    return one;
  }

  #url(name: string): string {
    return `postgres://harbour@127.0.0.1:${this.#port}/${name}`;
  }

  /** Starts the server on the folder as it is, and waits until it answers. */
  async begin(): Promise<void> {
    const options = ['-D', this.#folder, '-h', '127.0.0.1', '-p', String(this.#port), '-k', ''];
    // What a server that ends at once has written is the operating system's, synced or not; only a
    // machine that loses its power would tell the difference.
    options.push('-c', 'fsync=off');
    const child = spawn(join(this.#programs, 'postgres'), options, {
      ...otherUser(),
      cwd: this.#folder,
      stdio: 'ignore',
    });
    this.#child = child;
    const end = Date.now() + PATIENCE_MS;
    while (!(await answers(this.#url('postgres')))) {
      if (child.exitCode !== null || Date.now() > end) throw new Error('PostgreSQL did not start');
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }

  /** Ends the server: `SIGINT` in good order, `SIGQUIT` at once, as in a crash. */
  async end(signal: 'SIGINT' | 'SIGQUIT' = 'SIGQUIT'): Promise<void> {
    const child = this.#child;
    this.#child = null;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const gone = once(child, 'exit');
    child.kill(signal);
    await gone;
  }

  /** The address of a new, empty database. */
  async newDatabase(): Promise<string> {
    const name = `rooms${++this.#databases}`;
    const client = new pg.Client({ connectionString: this.#url('postgres') });
    await client.connect();
    await client.query(`create database ${name}`);
    await client.end();
    return this.#url(name);
  }

  async remove(): Promise<void> {
    await this.end();
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
