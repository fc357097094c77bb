import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Recovery } from './log/recovery.ts';
import { type RunningServer, type ServerConfig, startServer } from './server.ts';

/** The one place that reads the environment. `npm start` builds the pages first and then runs this. */

const DEFAULT_PORT = 4310;
/** The bundle of this file lies beside the pages. */
const PAGES = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../.build/pages' : '../pages', import.meta.url),
);
const NOT_WRITABLE = ['EACCES', 'EPERM', 'EROFS', 'SQLITE_CANTOPEN', 'SQLITE_READONLY'];
const LOG_LEVELS = ['silent', 'error', 'warn', 'info'] as const;

const say = (text: string) => process.stdout.write(`${text}\n`);

function stop(text: string): never {
  process.stderr.write(`${text}\n`);
  process.exit(1);
}

function portFrom(text: string | undefined): number {
  if (text === undefined || text === '') return DEFAULT_PORT;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  return stop(`PORT must be a whole number from 0 to 65535, not "${text}".`);
}

function configFrom(env: NodeJS.ProcessEnv): ServerConfig {
  const { OWNER_KEY, PUBLIC_URL, HOST, LOG_LEVEL } = env;
  const logLevel = LOG_LEVELS.find((level) => level === LOG_LEVEL);
  if (OWNER_KEY !== undefined && !/^[A-Za-z0-9_-]{16,64}$/.test(OWNER_KEY)) {
    stop('OWNER_KEY must be 16 to 64 letters, digits, dashes or underscores.');
  }
  if (PUBLIC_URL !== undefined && !/^https?:\/\/[^\s/]+\/?$/.test(PUBLIC_URL)) {
    stop('PUBLIC_URL must look like http://192.168.1.20:4310 (no path behind the port).');
  }
  return {
    port: portFrom(env.PORT),
    dataDir: resolve(env.DATA_DIR ?? '.data'),
    pages: existsSync(PAGES) ? PAGES : null,
    ...(HOST && { host: HOST }),
    ...(OWNER_KEY && { ownerKey: OWNER_KEY }),
    ...(PUBLIC_URL && { publicUrl: PUBLIC_URL }),
    ...(logLevel && { logLevel }),
  };
}

/** Why the server could not start, as a sentence that says what to do. */
function startTrouble(error: unknown, config: ServerConfig): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'FOLDER_IN_USE') {
    return `Another server is running already on the data folder ${config.dataDir}. Use that one, or end it first; for a second one beside it choose another folder, for example: DATA_DIR=./rooms npm start`;
  }
  if (code === 'EADDRINUSE') {
    return `Port ${config.port} is busy: another program, maybe an earlier start of this one, uses it. End that one, or choose another port, for example: PORT=${config.port + 1} npm start`;
  }
  if (code === 'EACCES' && config.port < 1024 && config.port > 0) {
    return `Port ${config.port} needs administrator rights. Choose one above 1023, for example: PORT=${DEFAULT_PORT} npm start`;
  }
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND') {
    return `HOST=${config.host} is not an address of this machine. Leave HOST out to listen on all of them.`;
  }
  if (NOT_WRITABLE.includes(String(code))) {
    return `The data folder ${config.dataDir} cannot be written. Choose another, for example: DATA_DIR=./rooms npm start`;
  }
  const reason = error instanceof Error ? error.message : String(error);
  return `The server could not start: ${reason}`;
}

/** What a teacher should know of a data file that was damaged. */
function recoveryText({ damagedFile, file, rooms, events, lost }: Recovery): string {
  const missing = lost === 0 ? 'What was written last may be missing' : `At least ${lost} events are missing`;
  return `The file with the rooms was damaged. What could be read of it, ${rooms} rooms with ${events} events, is in ${file} now. ${missing}: look through the newest room before you go on. The damaged file is kept: ${damagedFile}`;
}

function greet(server: RunningServer, config: ServerConfig): void {
  say('');
  if (server.recovery) say(`${recoveryText(server.recovery)}\n`);
  say('Harbour Lines is running. Ctrl-C ends it; nothing is lost.');
  say('');
  say(`  Desk (secret, for the teacher)   ${server.deskLink}`);
  say(`  Board (for the projector)        ${server.boardLink}`);
  say(`  Tablets                          ${server.addresses[0]}`);
  for (const address of server.addresses.slice(1)) say(`                                   ${address}`);
  say(`  Everything is kept in            ${config.dataDir}`);
  if (config.pages === null) say('  The pages are not built: run npm run build');
  say('');
}

async function run(): Promise<void> {
  const config = configFrom(process.env);
  const server = await startServer(config).catch((error: unknown) => stop(startTrouble(error, config)));
  greet(server, config);
  let ending = false;
  const end = () => {
    // A second Ctrl-C means: now.
    if (ending) process.exit(1);
    ending = true;
    say('Ending …');
    server.close().then(
      () => process.exit(0),
      (error: unknown) => stop(`Not ended cleanly: ${String(error)}`),
    );
  };
  process.on('SIGINT', end);
  process.on('SIGTERM', end);
}

await run();
