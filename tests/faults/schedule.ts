import { isDeepStrictEqual } from 'node:util';
import { stateOf } from '../../shared/room/apply.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import { view } from '../../shared/room/seen.ts';
import { joinCookie, lineDesign, openRoom, ownerCookie } from '../rooms/harness.ts';
import { notJudgedOnce } from './judged-once.ts';
import { FaultyPage, later, until } from './page.ts';
import { FaultyProxy, type Weather } from './proxy.ts';
import { randomFrom } from './random.ts';
import { inMemory, onDisk, RestartableServer } from './restarts.ts';

/** One lesson over bad connections, all of it from one seed. */

const TEAMS = 3;
const HAND_INS = 5;
const FAULTS = 16;
const RESTARTS = 2;
/** Every so manieth lesson is kept in a file, where a commit takes its time; the others in memory. */
const ON_DISK = 3;

function weatherBy(random: () => number): Weather {
  const kinds: Weather[] = [
    { kind: 'delay', ms: Math.floor(random() * 200) },
    { kind: 'throttle', bytes: 20 + Math.floor(random() * 200) },
    { kind: 'half-open' },
    { kind: 'lose', way: random() < 0.5 ? 'up' : 'down' },
    { kind: 'hold' },
    { kind: 'refuse' },
    { kind: 'clear' },
  ];
  return kinds[Math.floor(random() * kinds.length)]!;
}

interface Lesson {
  readonly server: RestartableServer;
  readonly pages: readonly FaultyPage[];
}

/** The server goes at once, or has died in the middle of what it did; the network finds the new one. */
async function restart({ server, pages }: Lesson, how: 'ended' | 'killed'): Promise<void> {
  if (how === 'killed') for (const page of pages) page.proxy.cut();
  await server.restart(how);
  for (const { proxy } of pages) proxy.target = server.running.port;
}

/** Something bad at a random page. */
function mishap({ proxy }: FaultyPage, random: () => number): void {
  const deed = random();
  proxy.doubling = random() < 0.2;
  if (deed < 0.25) proxy.cut();
  else if (deed < 0.5) {
    // The way clears up for the next connection, and the one before comes back to life.
    proxy.haunt(20 + random() * 1200);
    proxy.change({ kind: 'clear' });
  } else proxy.change(weatherBy(random));
}

/** Bad weather at random pages and moments and restarts of the server; then it clears up. */
async function storm(lesson: Lesson, random: () => number): Promise<void> {
  const { pages } = lesson;
  const restarts = new Map<number, 'ended' | 'killed'>();
  for (let i = 0; i < RESTARTS; i++) {
    restarts.set(Math.floor(random() * FAULTS), random() < 0.5 ? 'ended' : 'killed');
  }
  for (let i = 0; i < FAULTS; i++) {
    const page = pages[Math.floor(random() * pages.length)]!;
    const how = restarts.get(i);
    if (how) await restart(lesson, how);
    else if (random() < 0.1) page.reload();
    else mishap(page, random);
    await later(random() * 160);
  }
  for (const { proxy } of pages) {
    proxy.doubling = false;
    proxy.change({ kind: 'clear' });
  }
}

async function deskPlays(desk: FaultyPage, random: () => number): Promise<void> {
  for (let i = 0; i < 6; i++) {
    await desk.ask({ kind: 'look-here', on: i % 2 === 0 });
    await desk.ask({ kind: 'show-standings', on: i % 3 === 0 });
    await later(random() * 60);
  }
}

async function teamPlays(tablet: FaultyPage, team: number, random: () => number): Promise<void> {
  for (let i = 0; i < HAND_INS; i++) {
    const design = lineDesign(60 + 20 * i, 20 + team);
    tablet.draw(design);
    await tablet.ask({ kind: 'hand-in', round: 0, design });
    await later(random() * 60);
  }
}

const judgedOn = (page: FaultyPage): number =>
  page.link.state().room?.entries.filter((entry) => entry.verdict).length ?? 0;

/** What is wrong at the end: nothing, when every page shows the log and every entry is there once, judged once. */
function differences(events: readonly RoomEvent[], pages: readonly FaultyPage[]): string[] {
  const wrong: string[] = [];
  const state = stateOf(events);
  if (!state) return ['the log opens no room'];
  for (const [i, page] of pages.entries()) {
    if (!isDeepStrictEqual(page.link.state().room, view(state, page.seat(state)))) {
      wrong.push(`page ${i} shows another room`);
    }
    for (const answer of page.answers) {
      if (answer.ok && !events.some((event) => event.seq === answer.seq))
        wrong.push(`no event ${answer.seq}`);
    }
  }
  for (const team of state.teams) {
    const designs = state.entries.filter((entry) => entry.team === team.id).map((entry) => entry.design);
    if (designs.length !== HAND_INS || new Set(designs).size !== HAND_INS) {
      wrong.push(
        `team ${team.emblem} has ${designs.length} entries, ${new Set(designs).size} different ones`,
      );
    }
  }
  return [...wrong, ...notJudgedOnce(state, events)];
}

/** Plays the schedule of a seed; what was wrong in the end. Rejects where a page never comes back. */
export async function playSchedule(seed: number): Promise<string[]> {
  const random = randomFrom(seed);
  const server = await RestartableServer.start(Date.now, seed % ON_DISK === 0 ? onDisk() : inMemory());
  const { running } = server;
  const proxies = await Promise.all(
    Array.from({ length: TEAMS + 2 }, () => FaultyProxy.before(running.port)),
  );
  const pages: FaultyPage[] = [];
  try {
    const owner = await ownerCookie(running);
    const { word, room } = await openRoom(running.url, owner);
    const cookies = [owner, ''];
    for (let i = 0; i < TEAMS; i++) cookies.push(await joinCookie(running.url, word));
    for (const [i, proxy] of proxies.entries()) {
      pages.push(new FaultyPage(proxy, i === 0 ? 'desk' : i === 1 ? 'board' : 'tablet', cookies[i]!));
    }
    const [desk, , ...tablets] = pages as [FaultyPage, FaultyPage, ...FaultyPage[]];
    await until('all pages', () => pages.every((page) => page.link.state().status.kind === 'live'));
    await desk.ask({ kind: 'choose-challenge', key: 'first-line' });
    await desk.ask({ kind: 'start-building', seconds: null });
    await Promise.all([
      storm({ server, pages }, random),
      deskPlays(desk, random),
      ...tablets.map((tablet, team) => teamPlays(tablet, team, random)),
    ]);
    const events = () => server.log.eventsAfter(room, 0);
    await until('verdicts', () => judgedOn(desk) >= TEAMS * HAND_INS);
    const last = (await events()).at(-1)?.seq;
    await until('all pages to be current', () => pages.every((page) => page.link.state().room?.seq === last));
    await until('the newest drafts at the desk', () =>
      tablets.every((tablet) => {
        const you = tablet.link.state().you;
        const draft = you?.role === 'team' ? desk.link.state().drafts[you.team] : undefined;
        return isDeepStrictEqual(draft?.design, tablet.drawn);
      }),
    );
    const connections = proxies.reduce((sum, proxy) => sum + proxy.accepted, 0);
    if (connections <= pages.length) return ['no connection was ever lost'];
    return differences(await events(), pages);
  } finally {
    for (const page of pages) page.link.close();
    await Promise.all(proxies.map((proxy) => proxy.close()));
    await server.end();
  }
}

/** Several schedules, some at a time; seed and what was wrong of those that failed. */
export async function playSchedules(first: number, count: number, atOnce: number): Promise<string[]> {
  const failures: string[] = [];
  let next = first;
  const work = async () => {
    for (let seed = next++; seed < first + count; seed = next++) {
      const wrong = await playSchedule(seed).catch((error: unknown) => [String(error)]);
      if (wrong.length > 0) failures.push(`schedule ${seed}: ${wrong.join('; ')}`);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return failures;
}
