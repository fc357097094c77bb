import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ROOM_LIMITS } from '../../shared/room/decision.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { BUILDS, bringUpToDate } from '../building/builds.ts';
import { portFrom, startTrouble } from '../environment.ts';
import { startServer } from '../server.ts';
import { openDesk, playDemo } from './demo/lesson.ts';

/**
 * `npm run demo -- [--teams N] [--seed N]`: a server with a throw-away store and a room full of
 * simulated teams, so that a newcomer sees a living lesson at once.
 */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const say = (text: string) => process.stdout.write(`${text}\n`);

function stop(text: string): never {
  process.stderr.write(`${text}\n`);
  process.exit(2);
}

function wholeNumber(name: string, text: string, least: number, most: number): number {
  const value = Number(text);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  return stop(`--${name} must be a whole number from ${least} to ${most}, not "${text}".`);
}

function readArguments(): { teams: number; seed: number } {
  const options = {
    teams: { type: 'string', default: '8' },
    seed: { type: 'string', default: '1' },
  } as const;
  try {
    const { values } = parseArgs({ options, strict: true });
    return {
      teams: wholeNumber('teams', values.teams, 1, ROOM_LIMITS.teams),
      seed: wholeNumber('seed', values.seed, 0, 1_000_000),
    };
  } catch (error) {
    return stop(
      `${error instanceof Error ? error.message : ''}\nUsage: npm run demo -- [--teams N] [--seed N]`,
    );
  }
}

const wait = (seconds: number) => new Promise<void>((done) => setTimeout(done, seconds * 1000));

async function run(): Promise<void> {
  const { teams, seed } = readArguments();
  const port = portFrom(process.env);
  if (!port.ok) return stop(port.sentence);
  for (const build of BUILDS.filter((one) => one.name === 'pages')) {
    say(`Building the ${build.name} where they are out of date …`);
    await bringUpToDate(ROOT, build);
  }
  const dataDir = mkdtempSync(join(tmpdir(), 'harbour-lines-demo-'));
  process.on('exit', () => rmSync(dataDir, { recursive: true, force: true }));
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => process.exit(0));

  const pages = resolve(ROOT, '.build/pages');
  const config = { dataDir, port: port.value, pages };
  const server = await startServer(config).catch((error: unknown) => stop(startTrouble(error, config)));
  const desk = await openDesk(server.url, server.deskLink);
  say('');
  say(`A lesson with ${teams} simulated teams (seed ${seed}). Open these side by side:`);
  // Each leads right into the room, so that the lesson is there at the first look.
  say(`  Desk     ${server.deskLink}&room=${desk.room}`);
  say(`  Board    ${server.boardLink}`);
  say(`  Tablet   ${server.addresses[0]}${ROUTES.joinByLink}?word=${desk.word}`);
  say('');
  await playDemo({ url: server.url, desk, teams, seed, wait, say });
  say('The lesson is over; everything stays open to look at. Ctrl-C ends it and throws the room away.');
}

await run();
