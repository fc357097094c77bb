import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { configFrom, startTrouble } from './environment.ts';
import type { Recovery } from './log/recovery.ts';
import { type RunningServer, type ServerConfig, startServer } from './server.ts';

/** The one place that reads the environment. `npm start` builds the pages first and then runs this. */

/** The bundle of this file lies beside the pages. */
const PAGES = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../.build/pages' : '../pages', import.meta.url),
);

const say = (text: string) => process.stdout.write(`${text}\n`);

function stop(text: string): never {
  process.stderr.write(`${text}\n`);
  process.exit(1);
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
  say(`  Everything is kept in            ${config.databaseUrl ? 'the database' : config.dataDir}`);
  if (config.pages === null) say('  The pages are not built: run npm run build');
  say('');
}

async function run(): Promise<void> {
  const read = configFrom(process.env, existsSync(PAGES) ? PAGES : null);
  if (!read.ok) return stop(read.sentence);
  const config = read.value;
  const server = await startServer(config).catch((error: unknown) => stop(startTrouble(error, config)));
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
  // A closed terminal window.
  process.on('SIGHUP', end);
  // Last, so that whoever reads where to go can also end it.
  greet(server, config);
}

await run();
