import type { Browser, Page } from 'playwright-core';
import type { Watched } from './browser.ts';
import { watchedPage } from './browser.ts';
import { challengeNamed, classDrawings, deskPage, type TestRoom } from './room.ts';

const CHALLENGE = 'one-fast-stretch';
const drawings = classDrawings(challengeNamed(CHALLENGE));

export interface ClassPages {
  readonly desk: Watched;
  readonly board: Watched;
  readonly check: Watched;
}

/** Desk, board and check page of a room, each in a browser of its own. */
export async function classPages(browser: Browser, room: TestRoom): Promise<ClassPages> {
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  const board = await watchedPage(browser, room.server.url, { width: 1024, height: 768 });
  await board.page.goto(`${room.server.url}/board?room=${room.room}`);
  const check = await watchedPage(browser, room.server.url, { width: 820, height: 1180 });
  await check.page.goto(`${room.server.url}/check`);
  await check.page.getByText('Measure again').waitFor();
  return { desk, board, check };
}

/** Looks at a page in a state of the lesson, by the state's name. */
export type SeePage = (page: Page, name: string) => Promise<void>;

/** Leads a class through a lesson, and shows every leaf of the desk and every scene of the board. */
export async function everyLeafAndScene(pages: ClassPages, room: TestRoom, see: SeePage): Promise<void> {
  const [desk, board] = [pages.desk.page, pages.board.page];
  const both = async (name: string, ofDesk: string | RegExp, ofBoard: string | RegExp) => {
    await desk.getByText(ofDesk).first().waitFor();
    await board.getByText(ofBoard).first().waitFor();
    await see(desk, `desk-${name}`);
    await see(board, `board-${name}`);
  };
  await see(pages.check.page, 'check');
  await both('gather-empty', 'Nobody is here yet.', 'Free berths wait for you.');
  await room.arrive(8);
  await both('gather', '8 teams', '8 teams are in');
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'go-to', phase: 'brief' });
  await both('brief', 'Choose a challenge', 'What must come true');
  await room.ask({ kind: 'start-building', seconds: 600 });
  for (let i = 0; i < 6; i++) room.draft(i, drawings[i % drawings.length]!);
  for (let i = 0; i < 5; i++) await room.handIn(i, drawings[i]!);
  await desk.locator('.team-card').first().waitFor();
  await desk.keyboard.press('5');
  await desk.locator('.entry-tabs button').nth(1).click();
  await both('build', 'Why these points', '10 minutes left');
  await room.ask({ kind: 'end-building' });
  await both('build-over', 'building is over', 'Pens down');
  await showing(desk, room, both);
  await room.ask({ kind: 'go-to', phase: 'drive' });
  await desk.locator('.trials-turn[data-now="true"] .trials-pick').first().click();
  await both('drive', 'Foretold:', 'Robots on paper');
  await room.ask({ kind: 'go-to', phase: 'close' });
  await both('close', 'Count back in', 'Robots back in their berths');
  await room.ask({ kind: 'look-here', on: true });
  await both('look', 'Count back in', 'Hands off the tablets');
  await beside(desk, room, see);
}

async function showing(
  desk: Page,
  room: TestRoom,
  both: (name: string, ofDesk: string | RegExp, ofBoard: string | RegExp) => Promise<void>,
): Promise<void> {
  await room.ask({ kind: 'go-to', phase: 'show' });
  await both('show-empty', 'Nothing is on the stage.', 'Which drawing comes first?');
  const [first, , third] = room.desk.state!.entries;
  await room.ask({ kind: 'stage', entries: [first!.id] });
  await desk.locator('.stage-controls').waitFor();
  await both('show', 'The stage', /^Driving /);
  await room.ask({ kind: 'stage', entries: [first!.id, third!.id] });
  await both('heat', 'The stage', 'Side by side');
  await room.ask({ kind: 'show-standings', on: true }, { kind: 'stage', entries: [] });
  await both('standings', 'The stage', 'Standings');
  await room.ask({ kind: 'show-standings', on: false }, { kind: 'hang', entries: [first!.id, third!.id] });
  await both('gallery', 'The stage', '2 drawings');
  await room.ask({ kind: 'show-fleet', entry: first!.id, weather: 'calm' });
  await both('fleet', 'Once more', /of 20 still do as planned/);
  await room.ask({ kind: 'foretell', entry: first!.id });
  await both('foretell', 'Drive on', 'Hands up: what does this mark say?');
}

/** What the desk has beside the lesson: paper, keys, this device, rooms, cautions and rota. */
async function beside(desk: Page, room: TestRoom, see: SeePage): Promise<void> {
  await desk.keyboard.press('c');
  await desk.getByText('What trips teams').waitFor();
  await see(desk, 'desk-picture');
  await desk.keyboard.press('o');
  await desk.getByText('Drawing the page').waitFor({ state: 'detached' });
  await see(desk, 'desk-paper');
  await desk.keyboard.press('?');
  await desk.getByText('Single keys do something on this page').waitFor();
  await see(desk, 'desk-keys');
  await desk.keyboard.press('Escape');
  await desk.keyboard.press('l');
  await desk.getByText('Only for this device.').waitFor();
  await see(desk, 'desk-device');
  await desk.goto(`${room.server.url}/desk`);
  await desk.getByText('Rooms on this machine').first().waitFor();
  await see(desk, 'desk-lobby');
  const leaves = [
    'Cautions',
    'Charging rota',
    'Kit',
    'Supplies',
    'Fit to the robots',
    'Lesson plan',
    'What is kept',
  ];
  for (const leaf of leaves) {
    await desk.getByRole('button', { name: leaf, exact: true }).click();
    await see(desk, `desk-${leaf}`);
  }
  await desk.getByRole('button', { name: 'Kit', exact: true }).click();
  await desk.getByRole('button', { name: 'Copy “Demo kit”' }).click();
  for (const part of ['Chart', 'Inks', 'Drawing rules']) {
    await desk.getByRole('button', { name: part, exact: true }).click();
    await see(desk, `desk-kit-${part}`);
  }
}
