import type { Challenge } from '../../../shared/documents/challenge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { apply } from '../../../shared/room/apply.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { sfc32 } from '../../../shared/run/random.ts';
import { type ClientAsk, ROUTES } from '../../../shared/wire/protocol.ts';
import { isMet } from './designs.ts';
import { cookieOf, openPage, type Page } from './page.ts';
import { type SimulatedTeam, seatTeam, type Wait } from './team.ts';
import { tracksFor } from './tracks.ts';

export interface DemoOrders {
  readonly url: string;
  readonly desk: SimulatedDesk;
  readonly teams: number;
  readonly seed: number;
  readonly wait: Wait;
  /** Told what happens, in a few words. */
  readonly say: (text: string) => void;
}

/** One goal that can be met in many ways, so that every miniature on the desk looks different. */
const CHALLENGE = 'one-fast-stretch';
/** From one team to the next in the list of tracks, which holds four of each shape. */
const NEXT_SHAPE = 5;
/** One team of so many stays stuck. */
const STUCK_EVERY = 6;
const TIMES = {
  arriving: 1,
  gather: 6,
  brief: 8,
  build: 240,
  judging: 0.5,
  replay: 14,
  standings: 8,
} as const;

export interface SimulatedDesk {
  readonly page: Page;
  readonly room: string;
  readonly word: string;
  readonly state: () => RoomState;
}

/** Opens a room as the teacher would and keeps its state by folding events. */
export async function openDesk(url: string, deskLink: string): Promise<SimulatedDesk> {
  const cookie = cookieOf(await fetch(deskLink, { redirect: 'manual' }));
  const response = await fetch(`${url}${ROUTES.openRoom}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: JSON.stringify({ chargerWatched: true }),
  });
  const { room, word } = (await response.json()) as { room: string; word: string };
  const page = await openPage(url, cookie, { page: 'desk', room });
  if (!page.welcome.snapshot) throw new Error('a new page gets the whole state');
  let state = page.welcome.snapshot;
  page.onEvents((events) => {
    for (const event of events) if (event.seq === state.seq + 1) state = apply(state, event);
  });
  return { page, room, word, state: () => state };
}

function challengeNamed(key: string): Challenge {
  const found = readyChallenges(DEMO_KIT).find((one) => one.key === key);
  if (!found?.playable) throw new Error(`the library has no playable challenge ${key}`);
  return found.challenge;
}

/**
 * Plays one lesson, about three minutes with real seconds. A teacher may steer meanwhile from the same
 * desk: what has been done already is refused and does no harm. Resolves with the room's last state.
 */
export async function playDemo(orders: DemoOrders): Promise<RoomState> {
  const { desk, wait, say } = orders;
  const ask = async (ask: ClientAsk) => void (await desk.page.ask(ask));
  const challenge = challengeNamed(CHALLENGE);
  say(`The room word is ${desk.word}. Teams arrive.`);
  const teams = await seatTeams(orders, challenge);
  await wait(TIMES.gather);

  await ask({ kind: 'choose-challenge', key: CHALLENGE });
  await ask({ kind: 'go-to', phase: 'brief' });
  say('The goal is on the board.');
  await wait(TIMES.brief);
  await ask({ kind: 'start-building', seconds: TIMES.build });
  say('Teams draw, try, mend and hand in.');
  const round = desk.state().rounds.length - 1;
  await Promise.all(teams.map((team) => team.play(round)));
  await ask({ kind: 'end-building' });
  while (desk.state().entries.some((entry) => entry.verdict === null)) await wait(TIMES.judging);

  say('The desk shows entries on the board.');
  await showEntries(desk, ask, wait);
  for (const team of teams) team.close();
  const last = desk.state();
  desk.page.close();
  return last;
}

async function seatTeams(orders: DemoOrders, challenge: Challenge): Promise<SimulatedTeam[]> {
  const { url, teams, seed, wait } = orders;
  const { word } = orders.desk;
  const tracks = tracksFor(challenge.kit).filter((track) => isMet(challenge, track));
  const seated: SimulatedTeam[] = [];
  for (let i = 0; i < teams; i++) {
    const track = tracks[(i * NEXT_SHAPE + seed) % tracks.length]!;
    const stuck = i % STUCK_EVERY === STUCK_EVERY - 2;
    const dice = sfc32(seed * 1000 + i);
    seated.push(await seatTeam({ url, word, challenge, track, stuck, dice, wait }));
    await wait(TIMES.arriving);
  }
  return seated;
}

/** The best entry, then a heat of the best two, then the standings. */
async function showEntries(
  desk: SimulatedDesk,
  ask: (ask: ClientAsk) => Promise<void>,
  wait: Wait,
): Promise<void> {
  await ask({ kind: 'go-to', phase: 'show' });
  const best = bestEntries(desk.state());
  for (const entries of [best.slice(0, 1), best.slice(0, 2)]) {
    if (entries.length === 0) continue;
    await ask({ kind: 'stage', entries });
    desk.page.latest({ kind: 'stage-clock', clock: { playing: true, speed: 1, at: 0 } });
    await wait(TIMES.replay);
  }
  await ask({ kind: 'show-standings', on: true });
  await wait(TIMES.standings);
}

/** The best entry of each team, highest points first. */
function bestEntries(state: RoomState): string[] {
  const best = new Map<string, { id: string; points: number }>();
  for (const { id, team, verdict } of state.entries) {
    if (verdict && verdict.points > (best.get(team)?.points ?? -1))
      best.set(team, { id, points: verdict.points });
  }
  return [...best.values()].sort((a, b) => b.points - a.points).map((entry) => entry.id);
}
