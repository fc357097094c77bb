import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Append, type Appended, StoreAway } from '../../server/log/event-log.ts';
import { MemoryLog } from '../../server/log/memory.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  lineDesign,
  makeLink,
  openRoom,
  ownerCookie,
  Page,
  pagesOfTest,
  post,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';
import { FakeLine } from './line.ts';

/** A store elsewhere, which goes away before or after it has done what it was asked. */
class MovingLog extends MemoryLog {
  away: 'no' | 'before' | 'after' = 'no';

  override async append(room: string, parts: Append): Promise<Appended> {
    if (this.away === 'before') throw new StoreAway('away');
    const result = await super.append(room, parts);
    if (this.away === 'after') throw new StoreAway('away');
    return result;
  }
}

const ownerKey = 'an-owner-key-of-these-tests';
const PATIENCE_MS = 50;

let log: MovingLog;
let line: FakeLine;
let ends: ReturnType<FakeLine['end']>[];
let servers: TestServer[];
let owner: string;
let word: string;
let room: string;
const { pages, page: sit, closePages } = pagesOfTest();

/** A page at one of the servers; a board without a cookie names the room. */
function page(at: number, kind: 'desk' | 'board' | 'tablet', cookie = ''): Promise<Page> {
  const named = kind === 'board' && cookie === '' ? room : null;
  return sit(servers[at]!.url, kind, cookie, named);
}
/** A judge that never comes back. */
function neverJudging(): typeof quickJudging {
  const closed = new AbortController();
  return {
    judge: () =>
      new Promise((_, reject) => closed.signal.addEventListener('abort', () => reject(new Error('closed')))),
    close: async () => {
      closed.abort();
      return undefined;
    },
  };
}

async function begin(...judges: (typeof quickJudging)[]): Promise<void> {
  log = new MovingLog();
  line = new FakeLine();
  ends = judges.map((_, i) => line.end(`p${i}`));
  servers = await Promise.all(
    judges.map((judging, i) =>
      testServer({ log, neighbours: ends[i]!, ownerKey, judging, patienceMs: PATIENCE_MS, endWithinMs: 0 }),
    ),
  );
  owner = await ownerCookie(servers[0]!);
  ({ room, word } = await openRoom(servers[0]!.url, owner));
}

beforeEach(() => begin(quickJudging, quickJudging));
afterEach(async () => {
  closePages();
  for (const server of servers) await server.end();
});

async function building(desk: Page): Promise<void> {
  await desk.command({ kind: 'choose-challenge', key: 'first-line' });
  await desk.command({ kind: 'start-building', seconds: null });
}

const drawn = (one: Page, team: string) =>
  one.latest.filter((value) => value.kind === 'draft' && value.team === team).at(-1);
const doing = (one: Page, team: string) => {
  const last = one.latest.filter((value) => value.kind === 'doing' && value.team === team).at(-1);
  return last?.kind === 'doing' ? last.doing : undefined;
};
const teamOf = (tablet: Page): string => {
  const { welcome } = tablet;
  return welcome?.ok && welcome.you.role === 'team' ? welcome.you.team : '';
};

describe('two processes on one store', () => {
  it('tell their pages what the other has appended, in order', async () => {
    const here = await page(0, 'desk', owner);
    const there = await page(1, 'desk', owner);
    for (let i = 0; i < 6; i++) await (i % 2 ? here : there).command({ kind: 'look-here', on: i % 2 === 0 });
    await Promise.all([here.reaches(7), there.reaches(7)]);
    expect(here.events).toEqual(there.events);
    expect(here.state).toEqual(there.state);
  });

  it('let one of two commands at the same moment win, and decide the other anew', async () => {
    const desks = [await page(0, 'desk', owner), await page(1, 'desk', owner)];
    const answers = await Promise.all(desks.map((desk) => desk.command({ kind: 'look-here', on: true })));
    expect(answers.map(codeOf).sort()).toEqual(['accepted', 'already-so']);
    expect((await log.eventsAfter(room, 1)).length).toBe(1);
  });

  it('give a repeat at the other process its first answer', async () => {
    const desks = [await page(0, 'desk', owner), await page(1, 'desk', owner)];
    const first = await desks[0]!.command({ kind: 'look-here', on: true }, 'same');
    expect(await desks[1]!.command({ kind: 'look-here', on: true }, 'same')).toEqual(first);
  });

  it('have the pages of both follow a room that one of them opens', async () => {
    const board = await page(1, 'board', owner);
    const opened = await openRoom(servers[0]!.url, owner);
    await board.until('moved', () => board.moved === 1);
    expect(await board.hello(null, 0)).toMatchObject({ ok: true, room: opened.room });
  });

  it('have a tablet rest whose seat is opened at the other one', async () => {
    const cookie = await joinCookie(servers[0]!.url, word);
    const first = await page(0, 'tablet', cookie);
    await page(1, 'tablet', cookie);
    await first.until('quiet', () => first.quiet === 1);
    expect(codeOf(await first.command({ kind: 'hand-in', round: 0, design: lineDesign(100) }))).toBe(
      'no-seat',
    );
  });

  it('read on before they welcome a page, also where no news came', async () => {
    const here = await page(0, 'desk', owner);
    await page(1, 'desk', owner);
    for (const end of ends) end.cut();
    const seq = seqOf(await here.command({ kind: 'look-here', on: true }));
    const there = await page(1, 'desk', owner);
    expect(there.state).toMatchObject({ seq, lookHere: true });
  });

  it('catch up with all that was missed while the line was cut', async () => {
    const desk = await page(0, 'desk', owner);
    const board = await page(1, 'board');
    ends[1]!.cut();
    const seq = seqOf(await desk.command({ kind: 'look-here', on: true }));
    ends[1]!.mend();
    await board.reaches(seq);
    expect(board.state?.lookHere).toBe(true);
  });
});

describe('a link that is revoked at one process', () => {
  it.each([['at once'], ['when the line is mended']])('closes its desk at the other one %s', async (when) => {
    const made = await makeLink(servers[0]!.url, { kind: 'room', room }, owner);
    const { cookie } = await visitLink(servers[1]!.url, made);
    const desk = new Page(servers[1]!.url, 'desk', cookie, room);
    pages.push(desk);
    expect(codeOf(await desk.hello())).toBe('accepted');
    const closed = new Promise((resolve) => desk.socket.once('disconnect', resolve));
    if (when !== 'at once') ends[1]!.cut();
    await post(servers[0]!.url + ROUTES.revokeLink, { id: made.link.id }, owner);
    if (when !== 'at once') {
      // What was told is lost; the desk sits there still.
      expect(codeOf(await desk.command({ kind: 'look-here', on: true }))).toBe('accepted');
      ends[1]!.mend();
    }
    expect(await closed).toBe('io server disconnect');
  });
});

describe('newest values of two processes', () => {
  it('a drawing too large for news reaches the desk at the other one', async () => {
    const desk = await page(0, 'desk', owner);
    await building(desk);
    const tablet = await page(1, 'tablet', await joinCookie(servers[1]!.url, word));
    const lines = Array.from({ length: 100 }, (_, i) => ({
      ...lineDesign(100, 20 + i).drawing.lines[0]!,
      id: `l${i}`,
    }));
    const design = { version: 1, drawing: { lines, marks: [] } };
    await tablet.hello();
    await tablet.ask('latest', { kind: 'draft', round: 0, design });
    const team = teamOf(tablet);
    await desk.until('the drawing', () => drawn(desk, team) !== undefined);
    expect(JSON.stringify(design).length).toBeGreaterThan(8000);
    expect(drawn(desk, team)).toMatchObject({ design: { drawing: { lines: { length: 100 } } } });
    expect(line.largest).toBeLessThan(1000);
  });

  it('what a team does and the clock of the stage reach the other one at once', async () => {
    const desk = await page(0, 'desk', owner);
    const board = await page(1, 'board');
    await building(desk);
    const tablet = await page(0, 'tablet', await joinCookie(servers[0]!.url, word));
    await tablet.ask('latest', { kind: 'doing', doing: 'trying' });
    await board.until('trying', () => doing(board, teamOf(tablet)) === 'trying');
    const clock = { playing: true, speed: 2, at: 1 };
    await desk.ask('latest', { kind: 'stage-clock', clock });
    await board.until('the clock', () => board.latest.some((value) => value.kind === 'stage-clock'));
    expect(board.latest).toContainEqual({ kind: 'stage-clock', clock: expect.objectContaining(clock) });
  });

  it('a team that moves to the other process is not away', async () => {
    const cookie = await joinCookie(servers[0]!.url, word);
    const board = await page(1, 'board');
    const tablet = await page(0, 'tablet', cookie);
    const team = teamOf(tablet);
    await board.until('drawing', () => doing(board, team) === 'drawing');
    const moved = await page(1, 'tablet', cookie);
    await tablet.until('quiet', () => tablet.quiet === 1);
    tablet.close();
    await moved.ask('latest', { kind: 'doing', doing: 'trying' });
    await board.until('trying', () => doing(board, team) === 'trying');
    expect(board.latest.filter((value) => value.kind === 'doing').map((value) => value.doing)).not.toContain(
      'away',
    );
  });

  it('teams of a process that is gone are away, and a page that comes is told who is where', async () => {
    const board = await page(1, 'board');
    const tablet = await page(0, 'tablet', await joinCookie(servers[0]!.url, word));
    const team = teamOf(tablet);
    await board.until('drawing', () => doing(board, team) === 'drawing');
    const second = await page(1, 'board');
    expect(second.welcome).toMatchObject({ latest: [{ kind: 'doing', team, doing: 'drawing' }] });
    ends[0]!.die();
    await board.until('away', () => doing(board, team) === 'away');
    const third = await page(1, 'board');
    expect(third.welcome).toMatchObject({ latest: [{ kind: 'doing', team, doing: 'away' }] });
  });
});

describe('an entry', () => {
  it('is judged by the process that took it, and once', async () => {
    const desk = await page(1, 'desk', owner);
    await building(desk);
    const tablet = await page(0, 'tablet', await joinCookie(servers[0]!.url, word));
    await tablet.hello();
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict?.points === 60);
    await new Promise((resolve) => setTimeout(resolve, 3 * PATIENCE_MS));
    const kinds = (await log.eventsAfter(room, 0)).map(({ fact }) => fact?.kind);
    expect(kinds.filter((kind) => kind === 'judged').length).toBe(1);
  });

  it('that has waited too long is judged by another process', async () => {
    for (const server of servers) await server.end();
    await begin(neverJudging(), quickJudging);
    const desk = await page(1, 'desk', owner);
    await building(desk);
    const tablet = await page(0, 'tablet', await joinCookie(servers[0]!.url, word));
    await tablet.hello();
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict?.points === 60);
  });
});

describe('a store that goes away', () => {
  it('is a refusal of its own, and the repeat is carried out', async () => {
    const desk = await page(0, 'desk', owner);
    log.away = 'before';
    expect(codeOf(await desk.command({ kind: 'look-here', on: true }, 'c'))).toBe('store-away');
    log.away = 'no';
    const seq = seqOf(await desk.command({ kind: 'look-here', on: true }, 'c'));
    await desk.reaches(seq);
    expect(desk.state?.lookHere).toBe(true);
  });

  it('after it has done what it was asked: the repeat gets the first answer, every page the event', async () => {
    const desk = await page(0, 'desk', owner);
    const board = await page(1, 'board');
    log.away = 'after';
    expect(codeOf(await desk.command({ kind: 'look-here', on: true }, 'c'))).toBe('store-away');
    log.away = 'no';
    ends[0]!.mend();
    ends[1]!.mend();
    const seq = seqOf(await desk.command({ kind: 'look-here', on: true }, 'c'));
    await Promise.all([desk.reaches(seq), board.reaches(seq)]);
    expect((await log.eventsAfter(room, 1)).length).toBe(1);
  });
});
