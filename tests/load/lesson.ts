import { isDeepStrictEqual } from 'node:util';
import { Link } from '../../client/link/link.ts';
import { memoryShelf } from '../../client/link/outbox.ts';
import { socketTo } from '../../client/link/wire.ts';
import { stateOf } from '../../shared/room/apply.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import { view } from '../../shared/room/seen.ts';
import type { Answer, ClientAsk } from '../../shared/wire/protocol.ts';
import { notJudgedOnce } from '../faults/judged-once.ts';
import { joinCookie, lineDesign, openRoom, ownerCookie } from '../rooms/harness.ts';

/** A class that plays a lesson with the link that pages have, through whatever is at `url`. */

const PATIENCE_MS = 120_000;
const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

export async function until(what: string, holds: () => boolean): Promise<void> {
  const end = Date.now() + PATIENCE_MS;
  while (!holds()) {
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await later(5);
  }
}

const timers = {
  now: () => Date.now(),
  after: (ms: number, work: () => void) => {
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
};

interface Told {
  readonly ask: ClientAsk;
  readonly answer: Answer;
}

/** One page. What it draws and hands in is remembered. */
export class LessonPage {
  readonly link: Link;
  readonly told: Told[] = [];
  drawn: unknown = null;

  constructor(
    url: string,
    page: 'desk' | 'board' | 'tablet',
    cookie: string,
    name: string,
    room: string | null = null,
  ) {
    let ids = 0;
    this.link = new Link({
      handshake: { page, room },
      openWire: socketTo({ url, cookie }),
      shelf: memoryShelf(),
      timers,
      newId: () => `${name}-${ids++}`,
    });
  }

  get state() {
    return this.link.state();
  }

  /** Resolves when it is answered, however long that takes. */
  async ask(ask: ClientAsk): Promise<Answer> {
    const answer = await this.link.command(ask);
    this.told.push({ ask, answer });
    return answer;
  }
}

export interface Lesson {
  readonly room: string;
  readonly desk: LessonPage;
  readonly board: LessonPage;
  readonly tablets: readonly LessonPage[];
  readonly pages: readonly LessonPage[];
}

/** Opens a room and seats desk, board and tablets; building has begun. */
export async function gather(url: string, ownerKey: string, teams: number): Promise<Lesson> {
  const owner = await ownerCookie({ url, ownerKey });
  const { room, word } = await openRoom(url, owner);
  const desk = new LessonPage(url, 'desk', owner, 'desk');
  const board = new LessonPage(url, 'board', '', 'board', room);
  const tablets: LessonPage[] = [];
  for (let i = 0; i < teams; i++) {
    tablets.push(new LessonPage(url, 'tablet', await joinCookie(url, word), `team-${i}`));
  }
  const pages = [desk, board, ...tablets];
  await until('all pages', () => pages.every((page) => page.state.status.kind === 'live'));
  await desk.ask({ kind: 'choose-challenge', key: 'first-line' });
  await desk.ask({ kind: 'start-building', seconds: 3600 });
  return { room, desk, board, tablets, pages };
}

/** Draws and hands in so many drawings, each another one; `handedIn` is called after every answer. */
export async function teamPlays(
  tablet: LessonPage,
  team: number,
  drawings: number,
  handedIn: () => void,
): Promise<void> {
  for (let i = 0; i < drawings; i++) {
    const design = lineDesign(60 + 7 * i, 20 + 3 * team);
    tablet.drawn = design;
    tablet.link.tell({ kind: 'draft', round: 0, design });
    await tablet.ask({ kind: 'hand-in', round: 0, design });
    handedIn();
    await later(100);
  }
}

/** What is wrong at the end: nothing, when all pages show the log and everything acknowledged is in it once. */
export function differences(
  { pages, tablets }: Lesson,
  events: readonly RoomEvent[],
  drawings: number,
): string[] {
  const wrong: string[] = [];
  const state = stateOf(events);
  if (!state) return ['the log opens no room'];
  if (events.some((event, i) => event.seq !== i + 1)) wrong.push('a hole in the numbers of the log');
  for (const [i, { state: shown, told }] of pages.entries()) {
    if (!shown.you || !isDeepStrictEqual(shown.room, view(state, shown.you)))
      wrong.push(`page ${i} shows another room`);
    for (const { ask, answer } of told) {
      if (!answer.ok) wrong.push(`page ${i}: ${ask.kind} was refused: ${answer.refusal.code}`);
      else if (!events.some((event) => event.seq === answer.seq)) wrong.push(`event ${answer.seq} is lost`);
    }
  }
  for (const [i, { state: shown }] of tablets.entries()) {
    const team = shown.you?.role === 'team' ? shown.you.team : '';
    const designs = state.entries.filter((entry) => entry.team === team).map((entry) => entry.design);
    if (designs.length !== drawings || new Set(designs).size !== drawings)
      wrong.push(`team ${i} has ${designs.length} entries of ${new Set(designs).size} drawings`);
  }
  return [...wrong, ...notJudgedOnce(state, events)];
}
