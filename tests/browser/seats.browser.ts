import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { seated, seqOf } from '../rooms/harness.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { stage } from './stage.ts';

/** Seats, links and rooms as a whole, on the built pages: each can be given, moved, ended and taken back. */

const LAPTOP = { width: 1366, height: 768 };
const SMALL = { width: 1024, height: 768 };
const TABLET = { width: 1180, height: 820, touch: true };

const here = stage('file');
const { watched } = here;

async function open(path: string, size: { width: number; height: number; touch?: boolean }, cookie = '') {
  const one = await watchedPage(here.browser, here.room.server.url, size);
  watched.push(one);
  if (cookie) {
    const [name = '', value = ''] = cookie.split('=');
    await one.context.addCookies([{ name, value, url: here.room.server.url }]);
  }
  await one.page.goto(here.room.server.url + path);
  return one;
}
const desk = (size = LAPTOP, path = `/desk?room=${here.room.room}`) => open(path, size, here.room.owner);

async function look(page: Page, name: string): Promise<void> {
  await expectTidy(page, name);
  expect(await axeFindings(page)).toEqual([]);
  await picture(page, name);
}

async function building(): Promise<void> {
  if (here.room.desk.state?.phase === 'build') return;
  await here.room.ask(
    { kind: 'choose-challenge', key: 'first-line' },
    { kind: 'start-building', seconds: null },
  );
}

/** A tablet that has come in by the room word and sees what its class is doing. */
async function joined(sees: 'You are' | 'Hand in' = 'You are'): Promise<Watched> {
  const tablet = await open('/', TABLET);
  await tablet.page.getByLabel('Room word').fill(here.room.word);
  await tablet.page.getByRole('button', { name: 'Go in' }).click();
  await tablet.page.getByText(sees).first().waitFor();
  return tablet;
}

describe('a team', () => {
  it('takes another emblem, moves to another tablet with its drawing, and comes back from being taken out', async () => {
    const old = await joined();
    await old.page.getByRole('button', { name: 'Another emblem' }).click();
    await look(old.page, 'tablet-swap-emblem');
    await old.page.getByRole('button', { name: 'Moon' }).click();
    await old.page.getByRole('heading', { name: 'Moon' }).waitFor();
    await look(old.page, 'tablet-waiting-swap');

    await building();
    const sheet = old.page.getByRole('application');
    await sheet.waitFor();
    const box = (await sheet.boundingBox())!;
    await old.page.mouse.click(box.x + box.width * 0.3, box.y + box.height * 0.5);
    await old.page.mouse.click(box.x + box.width * 0.6, box.y + box.height * 0.5);
    const drafts = () => here.room.desk.latest.filter((value) => value.kind === 'draft');
    const drawn = () => {
      const last = drafts().at(-1);
      return last?.kind === 'draft' ? JSON.stringify(last.design) : '';
    };
    await here.room.desk.until('a line', () => drawn().includes('"pieces"'));
    const before = drawn();

    const own = await desk(LAPTOP);
    await own.page.getByRole('button', { name: /Moon/ }).first().click();
    await own.page.getByRole('button', { name: 'Team and tablet' }).click();
    await look(own.page, 'desk-team-seat');
    await own.page.getByRole('button', { name: 'Make a code' }).click();
    const code = (await own.page.locator('.seat-code-word').textContent()) ?? '';
    expect(code).toMatch(/^moon-\d{4}$/);
    await look(own.page, 'desk-team-seat-code');

    const next = await open('/', TABLET);
    await next.page.getByLabel('Room word').fill(code);
    await next.page.getByRole('button', { name: 'Go in' }).click();
    await old.page.getByRole('heading', { name: 'Your team is on another tablet now' }).waitFor();
    await look(old.page, 'tablet-moved');
    await own.page.getByText('Another tablet has the seat now.').waitFor();
    await next.page.getByRole('application').waitFor();
    const seen = drafts().length;
    await here.room.desk.until(
      'the draft from the new tablet',
      () => drafts().length > seen || drawn() === before,
    );
    expect(drawn()).toBe(before);

    await own.page.getByRole('button', { name: 'Take the team out' }).click();
    await next.page.getByRole('heading', { name: 'This team is out of the room' }).waitFor();
    await look(next.page, 'tablet-removed');
    await look(own.page, 'desk-undo');
    await own.page.keyboard.press('u');
    await next.page.getByRole('application').waitFor();

    await own.page.getByRole('button', { name: /Moon/ }).first().click();
    await own.page.getByRole('button', { name: 'Team and tablet' }).click();
    await own.page.getByRole('button', { name: 'Have it rest' }).click();
    await next.page.getByRole('heading', { name: 'This tablet rests' }).waitFor();
    await look(next.page, 'tablet-freed');
    await own.page.keyboard.press('u');
    await next.page.getByRole('application').waitFor();
    for (const one of [old, own, next]) expectClean(one);
  });

  it('rests while everything is paused, as does the board', async () => {
    await building();
    const tablet = await joined('Hand in');
    const own = await desk(SMALL);
    await own.page.getByRole('button', { name: 'Pause' }).waitFor();
    const board = await open(`/board?room=${here.room.room}`, SMALL);
    await own.page.keyboard.press('t');
    await tablet.page.getByText('A pause').waitFor();
    await board.page.getByRole('heading', { name: 'A pause' }).waitFor();
    await look(tablet.page, 'tablet-paused');
    await look(board.page, 'board-paused');
    await look(own.page, 'desk-paused-1024');
    await own.page.keyboard.press('t');
    await tablet.page.getByText('A pause').waitFor({ state: 'hidden' });
    for (const one of [tablet, own, board]) expectClean(one);
  });
});

describe('links', () => {
  it('the owner makes a desk, which opens rooms of its own, and revokes it', async () => {
    const own = await desk(LAPTOP, '/desk');
    await own.page.getByText('No link has been made yet.').waitFor();
    await own.page.getByRole('button', { name: 'Make a desk link' }).click();
    const address = await own.page.getByLabel(/Address of the link/).inputValue();
    await look(own.page, 'desk-links');
    const { pathname, search } = new URL(address);
    const teacher = await open(pathname + search, LAPTOP);
    await teacher.page.getByText('No room has been opened here yet.').waitFor();
    expect(new URL(teacher.page.url()).search).toBe('');
    await look(teacher.page, 'desk-by-link');
    await teacher.page.getByRole('button', { name: 'Open a room' }).click();
    await teacher.page.waitForURL(/room=/);
    await teacher.page.getByRole('heading', { name: 'Teams come in' }).waitFor();
    await own.page.getByRole('button', { name: /^Revoke the link/ }).click();
    await teacher.page.getByText('This browser has no desk.').waitFor();
    await look(teacher.page, 'desk-revoked');
    await own.page.getByRole('button', { name: /^Give the link/ }).click();
    await teacher.page.getByRole('heading', { name: 'Teams come in' }).waitFor();
    for (const one of [own, teacher]) expectClean(one);
  });

  it('a desk gives a substitute one room, and revokes that', async () => {
    const own = await desk(LAPTOP, '/desk');
    await own.page.getByRole('button', { name: `Keep, hand over or erase ${here.room.word}` }).click();
    await own.page.getByRole('button', { name: 'Make a link to this room' }).click();
    const address = await own.page.getByLabel(/Address of the link/).inputValue();
    await look(own.page, 'desk-room-keeping');
    const { pathname, search } = new URL(address);
    const substitute = await open(pathname + search, SMALL);
    await substitute.page.getByText(here.room.word).first().waitFor();
    await own.page
      .getByRole('dialog')
      .getByRole('button', { name: /^Revoke the link/ })
      .click();
    await substitute.page.getByText('This browser has no desk.').waitFor();
    for (const one of [own, substitute]) expectClean(one);
  });
});

describe('a room', () => {
  it('is erased after a second question, and kept when that is taken back', async () => {
    const own = await desk(SMALL, '/desk');
    await own.page.getByRole('button', { name: `Keep, hand over or erase ${here.room.word}` }).click();
    await own.page.getByRole('button', { name: 'Erase this room' }).click();
    await look(own.page, 'desk-erase-1024');
    await own.page.getByRole('button', { name: `Yes, erase ${here.room.word}` }).click();
    await own.page.getByText(`${here.room.word} is erased in ten seconds.`).first().waitFor();
    await own.page.getByRole('button', { name: `Go on with ${here.room.word}` }).waitFor({ state: 'hidden' });
    await look(own.page, 'desk-erasing-1024');
    await own.page.keyboard.press('u');
    await own.page.getByRole('button', { name: `Go on with ${here.room.word}` }).waitFor();
    const again = await seated(here.room.server.url, 'desk', here.room.owner, here.room.room);
    seqOf(await again.command({ kind: 'look-here', on: true }));
    again.close();
    expectClean(own);
  });
});
