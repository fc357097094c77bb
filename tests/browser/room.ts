import type { Browser } from 'playwright-core';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import {
  joinCookie,
  openRoom,
  ownerCookie,
  type Page,
  seated,
  seqOf,
  type TestServer,
  testServer,
} from '../rooms/harness.ts';
import { PAGES, type Watched, type WatchOptions, watchedPage } from './browser.ts';

/** A running server with a room that a test moves on over sockets, while browsers look at it. */
export interface TestRoom {
  readonly server: TestServer;
  readonly owner: string;
  readonly room: string;
  readonly word: string;
  readonly desk: Page;
  readonly teams: Page[];
  /** Does something at the desk and waits until the room has done it. */
  readonly ask: (...asks: ClientAsk[]) => Promise<void>;
  readonly arrive: (count: number) => Promise<void>;
  /** What a team has on its tablet. */
  readonly draft: (team: number, design: Design) => void;
  /** Hands in for a team and waits for the verdict. */
  readonly handIn: (team: number, design: Design) => Promise<void>;
  readonly end: () => Promise<void>;
}

export async function testRoom(): Promise<TestRoom> {
  const server = await testServer({ pages: PAGES });
  const owner = await ownerCookie(server);
  const { room, word } = await openRoom(server.url, owner);
  const desk = await seated(server.url, 'desk', owner, room);
  const teams: Page[] = [];
  const round = () => desk.state!.rounds.length - 1;
  return {
    server,
    owner,
    room,
    word,
    desk,
    teams,
    ask: async (...asks) => {
      for (const ask of asks) await desk.reaches(seqOf(await desk.command(ask)));
    },
    arrive: async (count) => {
      for (let i = 0; i < count; i++) {
        teams.push(await seated(server.url, 'tablet', await joinCookie(server.url, word)));
      }
      await desk.until('all teams', () => desk.state?.teams.length === teams.length);
    },
    draft: (team, design) => {
      teams[team]!.socket.emit('latest', {
        kind: 'draft',
        round: round(),
        design: writeDocument(Design, design),
      });
    },
    handIn: async (team, design) => {
      const answer = await teams[team]!.command({
        kind: 'hand-in',
        round: round(),
        design: writeDocument(Design, design),
      });
      const seq = seqOf(answer);
      await desk.reaches(seq);
      const { id } = desk.state!.entries.at(-1)!;
      await desk.until('a verdict', () => desk.state!.entries.find((e) => e.id === id)!.verdict !== null);
    },
    end: async () => {
      for (const page of [desk, ...teams]) page.close();
      await server.end();
    },
  };
}

/** A browser of its own that has opened the desk's secret link, at the desk of the room. */
export async function deskPage(
  browser: Browser,
  { server, room, word }: TestRoom,
  size: WatchOptions,
): Promise<Watched> {
  const desk = await watchedPage(browser, server.url, size);
  await desk.page.goto(`${server.deskLink}&room=${room}`);
  await desk.page.getByText(word).first().waitFor();
  return desk;
}

export function challengeNamed(key: string): Challenge {
  const found = readyChallenges(DEMO_KIT).find((each) => each.key === key);
  if (!found?.playable) throw new Error(`no playable challenge is called ${key}`);
  return found.challenge;
}

const changed = (design: Design, drawing: Partial<Design['drawing']>): Design => ({
  ...design,
  drawing: { ...design.drawing, ...drawing },
});

/** Drawings as a class makes them: the maker's own, and ones with a fault each. */
export function classDrawings(challenge: Challenge): Design[] {
  const model = challenge.model!;
  const { lines, marks } = model.drawing;
  const shorter = lines.map((line) => ({
    ...line,
    pieces: line.pieces.slice(0, Math.max(1, line.pieces.length - 1)),
  }));
  return [
    model,
    changed(model, { marks: marks.slice(1) }),
    changed(model, { marks: marks.map((mark) => ({ ...mark, bands: [...mark.bands].reverse() })) }),
    changed(model, { lines: shorter, marks: marks.slice(0, 1) }),
    changed(model, { marks: marks.map((mark, i) => (i === 0 ? { ...mark, at: 10 } : mark)) }),
  ];
}
