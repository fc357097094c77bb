import type { Page as BrowserPage } from 'playwright-core';
import { expect, it } from 'vitest';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { joinCookie, ownerCookie, type Page, seated, seqOf, testServer } from '../rooms/harness.ts';
import { expectClean, openBrowser, PAGES, picture, watchedPage } from './browser.ts';
import { challengeNamed, classDrawings } from './room.ts';

/** A desk without a mouse: nothing here clicks, and nothing puts the focus anywhere but the keys. */

const FIRST = 'one-fast-stretch';
const drawings = classDrawings(challengeNamed(FIRST));
const MOST_TABS = 120;

/** Tabs on until what has the focus has this name, or begins with it. */
async function tabTo(page: BrowserPage, name: string): Promise<void> {
  const seen: string[] = [];
  for (let i = 0; i < MOST_TABS; i++) {
    const at = await page.evaluate(() => {
      const { activeElement: e } = document;
      const labels = e instanceof HTMLInputElement ? [...(e.labels ?? [])].map((l) => l.textContent) : [];
      return e?.getAttribute('aria-label') ?? (labels.join(' ') || (e?.textContent ?? ''));
    });
    if (at.startsWith(name)) return;
    seen.push(at.slice(0, 30));
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by Tab to “${name}”: ${seen.join(' | ')}`);
}

const press = async (page: BrowserPage, ...keys: string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};

/** The blue button's key, once the button says this. */
async function next(page: BrowserPage, label: string): Promise<void> {
  await page.locator('.desk-head').getByRole('button', { name: label, disabled: false }).waitFor();
  await page.keyboard.press('n');
}

async function handIn(team: Page, desk: Page, design: Design): Promise<void> {
  const round = desk.state!.rounds.length - 1;
  const before = desk.state!.entries.length;
  const ask = { kind: 'hand-in', round, design: writeDocument(Design, design) } as const;
  await desk.reaches(seqOf(await team.command(ask)));
  await desk.until('a verdict', () => (desk.state!.entries.at(before)?.verdict ?? null) !== null);
}

it('a whole lesson of two challenges goes by keys alone', async () => {
  const server = await testServer({ pages: PAGES });
  const browser = await openBrowser();
  const own = await watchedPage(browser, server.url, { width: 1366, height: 768 });
  const { page } = own;
  await page.goto(server.deskLink);
  const sockets: Page[] = [];
  try {
    // Prepare and gather.
    await page.getByText('No room has been opened here yet.').waitFor();
    await press(page, 'n');
    await page.waitForURL(/\/desk\?room=/);
    await page.getByText('Nobody has said that they stay with the charger.').first().waitFor();
    const room = new URL(page.url()).searchParams.get('room')!;
    const word = (await page.locator('.desk-word strong').textContent())!;
    const desk = await seated(server.url, 'desk', await ownerCookie(server), room);
    sockets.push(desk);
    for (let i = 0; i < 2; i++)
      sockets.push(await seated(server.url, 'tablet', await joinCookie(server.url, word)));
    const [, first, second] = sockets as [Page, Page, Page];
    await page.getByText('2 teams').waitFor();

    // A queue of three, put in order and one of them taken off.
    const queue = () => desk.state!.plan.queue.join();
    await press(page, ']');
    await tabTo(page, 'Where the line ends');
    const add = async (keys: string) => {
      await page.getByRole('button', { name: 'Put it in the queue', disabled: false }).waitFor();
      await press(page, 'q');
      await desk.until(keys, () => queue() === keys);
      await page.getByRole('button', { name: 'Take it off the queue', disabled: false }).waitFor();
    };
    await press(page, 'ArrowDown');
    await add('first-line');
    await press(page, 'ArrowDown');
    await add('first-line,sharp-corner');
    for (let i = 0; i < 20 && !(await page.getByRole('radio', { name: /One fast stretch/ }).isChecked()); i++)
      await press(page, 'ArrowDown');
    await add(`first-line,sharp-corner,${FIRST}`);
    await tabTo(page, '“One fast stretch” sooner');
    await press(page, 'Enter');
    await desk.until('sooner', () => queue() === `first-line,${FIRST},sharp-corner`);
    // The focus comes after the row.
    await page.locator(`.queue-row:nth-child(2)[data-key="${FIRST}"] .queue-sooner:focus`).waitFor();
    await press(page, 'Enter');
    await desk.until('first', () => queue() === `${FIRST},first-line,sharp-corner`);
    await tabTo(page, 'Take “A corner too sharp” off');
    await press(page, 'Enter');
    await desk.until('taken off', () => queue() === `${FIRST},first-line`);
    await page.getByRole('region', { name: '“A corner too sharp” is off the queue.' }).waitFor();
    await press(page, 'u');
    await desk.until('back', () => queue() === `${FIRST},first-line,sharp-corner`);
    await picture(page, 'desk-keys-queue');

    // The first of the queue, one key away.
    await press(page, '[');
    await next(page, 'Next: One fast stretch');
    await next(page, 'Start building');
    await page.getByText(/^(10:00|9:5\d) left$/).waitFor();
    await press(page, '+');
    await page.getByText(/^1[12]:\d\d left$/).waitFor();
    await press(page, 'h');
    await page.getByRole('button', { name: 'Look here', pressed: true }).waitFor();
    await press(page, 'h');

    // A team, a hint for it, the gentler form, an entry given back and taken back.
    await handIn(first, desk, drawings[1]!);
    await handIn(second, desk, drawings[0]!);
    await press(page, '1');
    await page.getByRole('heading', { name: 'Sailboat' }).waitFor();
    await press(page, 'm');
    await tabTo(page, 'Follow the line');
    await press(page, 'ArrowDown', 'Enter');
    await first.until('a hint', () => first.state!.coaching.notes.length === 1);
    expect(first.state!.coaching.notes[0]?.words).toEqual({ kind: 'hint', hint: 'one-goal' });
    await page.getByText('The note is with Sailboat.').first().waitFor();
    await tabTo(page, 'Gentler form');
    await press(page, 'Space');
    await first.until('the gentler form', () => first.state!.coaching.gentler.length === 1);
    await tabTo(page, 'Entry 1');
    await press(page, 'Enter');
    await tabTo(page, 'Give it back');
    await press(page, 'Enter');
    await tabTo(page, 'not finished yet');
    await press(page, 'Enter');
    await first.until('a returned entry', () => first.state!.entries[0]?.returned === true);
    await page.getByRole('region', { name: 'Entry 1 is back with Sailboat.' }).waitFor();
    await press(page, 'u');
    await first.until('an accepted entry', () => first.state!.entries[0]?.returned === false);

    // The class as a whole, and back to the teams.
    await press(page, 'c');
    await page.getByText('What trips teams').waitFor();
    await press(page, '[', ']', 'g');
    await page.getByText('2 teams').first().waitFor();

    // The end of the building, taken back once.
    await next(page, 'End building');
    await page.getByRole('region', { name: 'The building has ended.' }).waitFor();
    await press(page, 'u');
    await desk.until('building goes on', () => desk.state!.building?.ended === false);
    await next(page, 'End building');
    await page.getByText('building is over').waitFor();

    // Both drawings on the stage, then the next challenge.
    await next(page, 'Go to showing');
    await page.getByRole('heading', { name: 'The stage' }).waitFor();
    for (const shown of ['Sailboat', 'Bell']) {
      await next(page, 'Next drawing');
      await page.locator('.show-team[data-on="true"]', { hasText: shown }).waitFor();
    }
    await press(page, 's');
    await desk.until('standings', () => desk.state!.standingsShown);
    await next(page, 'Next: The first line');
    await desk.until('the next challenge', () => desk.state!.rounds.at(-1)?.key === 'first-line');
    await next(page, 'Start building');
    await page.getByText(/^(10:00|9:5\d) left$/).waitFor();
    await press(page, 't');
    await desk.until('a pause', () => desk.state!.paused !== null);
    await page.locator('.desk-pause[aria-pressed="true"]').waitFor();
    await press(page, 't');
    await desk.until('no pause', () => desk.state!.paused === null);
    await next(page, 'End building');
    await page.getByText('building is over').waitFor();

    // The screen flips to the board and back; the end.
    await press(page, 'b');
    await page.waitForURL(/\/board/);
    await page.getByText('Pens down').first().waitFor();
    await press(page, 'b');
    await page.waitForURL(/\/desk/);
    await page.getByText('building is over').waitFor();
    for (let i = 0; i < 4 && !(await page.getByRole('heading', { name: 'Count back in' }).isVisible()); i++)
      await press(page, ']');
    await next(page, 'Close the lesson');
    await desk.until('the end', () => desk.state!.phase === 'close');
    expectClean(own);
  } finally {
    for (const socket of sockets) socket.close();
    await own.context.close();
    await browser.close();
    await server.end();
  }
});
