import { afterEach, describe, expect, it } from 'vitest';
import { PHASES } from '../../shared/room/state.ts';
import type { SeatCode } from '../../shared/wire/desks.ts';
import { type ClientAsk, ROUTES } from '../../shared/wire/protocol.ts';
import { cookiesOf, joinCookie, lineDesign, openRoom, Page, post } from '../rooms/harness.ts';
import { Classroom } from './classroom.ts';
import { until } from './page.ts';

/** What happens to a class, moment by moment, each over a network that fails just then. */

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

let room: Classroom;
afterEach(() => room.end());

const handIn = (design = lineDesign(150)): ClientAsk => ({ kind: 'hand-in', round: 0, design });
const entries = () => room.desk.link.state().room?.entries ?? [];
const deskHas = (design: unknown) => {
  const drafts = Object.values(room.desk.link.state().drafts);
  return drafts.some((draft) => JSON.stringify(draft.design) === JSON.stringify(design));
};

describe('a link that is lost', () => {
  it('while drawing brings the newest drawing to the desk when it is back', async () => {
    room = await Classroom.gather();
    await room.build();
    room.tablet.draw(lineDesign(50));
    await until('the draft', () => deskHas(lineDesign(50)));
    room.tablet.proxy.change({ kind: 'refuse' });
    room.tablet.proxy.cut();
    await until('no link', () => room.tablet.link.state().status.kind === 'away');
    for (const length of [60, 70, 80]) room.tablet.draw(lineDesign(length));
    room.tablet.proxy.change({ kind: 'clear' });
    await until('the newest draft', () => deskHas(lineDesign(80)));
  });

  it.each([
    ['before the server has it', 'up'],
    ['after the server has it', 'down'],
  ] as const)('while handing in, %s, leaves one entry and its answer', async (_, way) => {
    room = await Classroom.gather();
    await room.build();
    room.tablet.proxy.change({ kind: 'lose', way });
    const answered = room.tablet.ask(handIn());
    if (way === 'down') await until('the entry', () => entries().length === 1);
    expect(room.tablet.link.state().waiting).toBe(1);
    room.tablet.proxy.cut();
    room.tablet.proxy.change({ kind: 'clear' });
    await answered;
    await until('the verdict', () => Boolean(entries()[0]?.verdict));
    expect(entries().length).toBe(1);
    expect(room.tablet.answers).toEqual([{ ok: true, seq: expect.any(Number) }]);
    await room.agree();
  });

  it('while handing in, and the page is loaded anew, leaves one entry', async () => {
    room = await Classroom.gather();
    await room.build();
    room.tablet.proxy.change({ kind: 'lose', way: 'down' });
    const answered = room.tablet.ask(handIn());
    await until('the entry', () => entries().length === 1);
    room.tablet.reload();
    room.tablet.proxy.change({ kind: 'clear' });
    await answered;
    await until('the verdict', () => Boolean(entries()[0]?.verdict));
    expect(entries().length).toBe(1);
    await room.agree();
  });

  it('while the board replays brings it back to where the desk stands', async () => {
    room = await Classroom.gather();
    await room.build();
    await room.tablet.ask(handIn());
    await until('the verdict', () => Boolean(entries()[0]?.verdict));
    await room.desks({ kind: 'go-to', phase: 'show' }, { kind: 'stage', entries: [entries()[0]!.id] });
    room.desk.link.tell({ kind: 'stage-clock', clock: { playing: true, speed: 2, at: 0 } });
    const boardClock = () => room.board.link.state().stageClock;
    await until('the replay', () => boardClock()?.playing === true);
    room.board.proxy.change({ kind: 'half-open' });
    room.desk.link.tell({ kind: 'stage-clock', clock: { playing: false, speed: 1, at: 4.25 } });
    room.board.proxy.change({ kind: 'clear' });
    room.board.proxy.cut();
    await until('the pause', () => boardClock()?.at === 4.25);
    expect(boardClock()).toMatchObject({ playing: false, speed: 1 });
    await room.agree();
  });
});

describe('a tablet that slept for twenty minutes', () => {
  it('wakes into the room as it is, and its time is the server’s', async () => {
    let slept = 0;
    room = await Classroom.gather(() => Date.now() + slept);
    const cookie = await joinCookie(room.server.running.url, room.word);
    const sleeper = await room.enter('tablet', cookie, () => slept);
    await room.build(10 * 60);
    await until('building', () => sleeper.link.state().room?.building !== null);
    // Its socket looks open to it, and the server has given it up.
    sleeper.proxy.change({ kind: 'half-open' });
    slept = 20 * MINUTE;
    await room.desks({ kind: 'look-here', on: true });
    await until('the end of building', () => room.desk.link.state().room?.building?.ended === true);
    sleeper.proxy.weather = { kind: 'clear' };
    sleeper.link.wake();
    await until('what it missed', () => sleeper.link.state().room?.building?.ended === true);
    await room.agree();
    expect(Math.abs(sleeper.link.serverNow() - (Date.now() + slept))).toBeLessThan(MINUTE);
    await sleeper.ask(handIn());
    await until('the late entry', () => entries().some((entry) => entry.late));
  });
});

describe('a team that goes on at another tablet', () => {
  it('when its battery died, has its drawing there; the old one that wakes up has no seat', async () => {
    room = await Classroom.gather();
    await room.build();
    const old = room.tablet;
    const you = old.link.state().you;
    if (you?.role !== 'team') throw new Error('no team');
    old.draw(lineDesign(77));
    await until('the draft', () => deskHas(lineDesign(77)));
    old.proxy.change({ kind: 'half-open' });
    const { url, deskLink } = room.server.running;
    const owner = cookiesOf(await fetch(deskLink, { redirect: 'manual' }));
    const asked = await post(url + ROUTES.seatCode, { room: room.room, team: you.team }, owner);
    const { code } = (await asked.json()) as SeatCode;
    const fresh = await room.enter('tablet', await joinCookie(url, code));
    expect(fresh.link.state().you).toEqual(you);
    expect(fresh.link.state().drafts[you.team]?.design).toEqual(lineDesign(77));
    old.proxy.change({ kind: 'clear' });
    old.proxy.cut();
    await until('no seat', () => old.link.state().status.kind === 'refused');
    await fresh.ask(handIn());
    expect(fresh.answers).toMatchObject([{ ok: true }]);
    expect(fresh.link.state().status.kind).toBe('live');
  });

  it('with the seat of its browser, finds its drawing there, and the old one rests', async () => {
    room = await Classroom.gather();
    await room.build();
    const cookie = await joinCookie(room.server.running.url, room.word);
    const old = await room.enter('tablet', cookie);
    old.draw(lineDesign(77));
    await until('the draft', () => deskHas(lineDesign(77)));
    const fresh = await room.enter('tablet', cookie);
    const you = fresh.link.state().you;
    if (you?.role !== 'team') throw new Error('no team');
    expect(fresh.link.state().drafts[you.team]?.design).toEqual(lineDesign(77));
    await until('rest', () => old.link.state().status.kind === 'quiet');
    await fresh.ask(handIn());
    expect(fresh.answers).toMatchObject([{ ok: true }]);
    await room.agree();
  });
});

describe('a desk that is opened on another laptop', () => {
  it('with the secret link goes on where the closed one stopped', async () => {
    room = await Classroom.gather();
    await room.build();
    await room.tablet.ask(handIn());
    room.desk.link.close();
    const { deskLink } = room.server.running;
    const other = await room.enter('desk', cookiesOf(await fetch(deskLink, { redirect: 'manual' })));
    expect(other.link.state().room?.entries.length).toBe(1);
    await other.ask({ kind: 'end-building' });
    expect(other.answers).toMatchObject([{ ok: true }]);
    await until('the end', () => room.tablet.link.state().room?.building?.ended === true);
    room.desk.reload();
    await room.agree();
  });
});

describe('a tablet whose clock is wrong by hours', () => {
  it.each([[5 * HOUR], [-5 * HOUR]])('(%d ms) shows the server’s time and hands in in time', async (by) => {
    room = await Classroom.gather();
    const cookie = await joinCookie(room.server.running.url, room.word);
    const wrong = await room.enter('tablet', cookie, () => by);
    await room.build(10 * 60);
    await until('building', () => wrong.link.state().room?.building !== null);
    const deadline = wrong.link.state().room?.building?.until ?? 0;
    const left = deadline - wrong.link.serverNow();
    expect(left).toBeGreaterThan(5 * MINUTE);
    expect(left).toBeLessThan(11 * MINUTE);
    wrong.draw(lineDesign(44));
    await until('the draft', () => deskHas(lineDesign(44)));
    await wrong.ask(handIn());
    await until('the entry', () => entries().length === 1);
    expect(entries()[0]?.late).toBe(false);
  });
});

describe('a server that is started anew', () => {
  /** What brings a room from the one phase to the next. */
  const NEXT: Readonly<Record<(typeof PHASES)[number], () => Promise<void>>> = {
    gather: async () => undefined,
    brief: () =>
      room.desks({ kind: 'choose-challenge', key: 'first-line' }, { kind: 'go-to', phase: 'brief' }),
    build: async () => {
      await room.desks({ kind: 'start-building', seconds: 600 });
      await room.tablet.ask(handIn());
      await until('the verdict', () => Boolean(entries()[0]?.verdict));
    },
    show: () => room.desks({ kind: 'go-to', phase: 'show' }, { kind: 'stage', entries: [entries()[0]!.id] }),
    drive: () => room.desks({ kind: 'go-to', phase: 'drive' }, { kind: 'call-turn', turn: 1 }),
    close: () => room.desks({ kind: 'go-to', phase: 'close' }),
  };

  it.each([['ended'], ['killed']] as const)(
    '(%s) in every phase finds every page where it was',
    async (how) => {
      room = await Classroom.gather();
      for (const phase of PHASES) {
        await NEXT[phase]();
        await room.agree();
        const before = room.desk.link.state().room;
        await room.restart(how);
        await until('the desk', () => room.desk.link.state().status.kind === 'live');
        expect(room.desk.link.state().room).toEqual(before);
        await room.desks({ kind: 'look-here', on: true }, { kind: 'look-here', on: false });
        await room.agree();
        expect(room.desk.link.state().room?.phase).toBe(phase);
      }
      expect(room.desk.answers.every((answer) => answer.ok)).toBe(true);
    },
  );
});

describe('two hundred tablets', () => {
  it('that come back at once are all current, and none is refused', async () => {
    room = await Classroom.gather();
    const { running } = room.server;
    const owner = cookiesOf(await fetch(running.deskLink, { redirect: 'manual' }));
    const seats: { cookie: string; word: string }[] = [];
    for (let r = 0; r < 5; r++) {
      const { word } = await openRoom(running.url, owner);
      for (let t = 0; t < 40; t++) seats.push({ word, cookie: await joinCookie(running.url, word) });
    }
    const pages = seats.map(({ cookie }) => new Page(running.url, 'tablet', cookie));
    const welcomes = await Promise.all(pages.map((page) => page.hello()));
    expect(welcomes.filter((welcome) => !welcome.ok)).toEqual([]);
    expect(pages.map((page) => page.state?.word)).toEqual(seats.map(({ word }) => word));
    expect(pages.map((page) => page.state?.teams.length)).toEqual(seats.map(() => 40));
    for (const page of pages) page.close();
  });
});
