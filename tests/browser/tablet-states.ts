import type { Page } from 'playwright-core';
import { type Wording, wording } from '../../shared/wording/wording.ts';
import { TestHand } from './hand.ts';
import { challengeNamed, type TestRoom } from './room.ts';

/** Looks at a state of the page, by its name. */
export type See = (name: string) => Promise<void>;

/**
 * Leads a tablet through every screen of a lesson in which lines are drawn, and shows each. The page
 * speaks as `words` do.
 */
export async function everyTabletState(
  page: Page,
  room: TestRoom,
  see: See,
  words: Wording = wording('en'),
): Promise<void> {
  const { joining, building, showing, closing } = words.tablet;
  await page.goto(`${room.server.url}/`);
  await page.getByLabel(joining.label).fill('fern-7');
  await page.getByRole('button', { name: joining.go }).click();
  await page.getByRole('alert').waitFor();
  await see('join');
  await page.getByLabel(joining.label).fill(room.word);
  await page.getByRole('button', { name: joining.go }).click();
  await page.getByRole('heading', { name: words.emblems.name('sailboat') }).waitFor();
  await sendNote(room);
  await note(page, words).waitFor();
  await see('waiting');
  await note(page, words).click();
  await page.getByRole('button', { name: words.tablet.notes.putAway }).click();
  await room.ask({ kind: 'choose-challenge', key: 'one-fast-stretch' }, { kind: 'go-to', phase: 'brief' });
  await page.locator('.brief h1').waitFor();
  await see('brief');
  await room.ask({ kind: 'start-building', seconds: 600 });
  await drawing(page, see, words);
  await trying(page, see, words);
  await handingIn(page, see, words);
  await room.ask({ kind: 'look-here', on: true });
  await page.getByText(building.lookHere).waitFor();
  await see('look-here');
  await room.ask({ kind: 'look-here', on: false }, { kind: 'go-to', phase: 'show' });
  await page.getByText(showing.own).waitFor();
  await see('show');
  await predicting(page, room, see, words);
  await room.ask({ kind: 'go-to', phase: 'drive' });
  await page.getByText(words.onPaper.title).waitFor();
  await sendNote(room);
  await note(page, words).waitFor();
  await see('drive');
  await room.ask({ kind: 'go-to', phase: 'close' });
  await page.getByText(closing.title).waitFor();
  await note(page, words).waitFor();
  await see('close');
}

/** A hint from the desk for the first team: it waits on whatever screen the team sees. */
const sendNote = (room: TestRoom): Promise<void> =>
  room.ask({
    kind: 'send-note',
    team: room.desk.state!.teams[0]!.id,
    words: { kind: 'hint', hint: 'try-it' },
  });
const note = (page: Page, words: Wording) => page.getByRole('button', { name: words.tablet.notes.title });

const faster = (words: Wording): string => words.actions.name({ kind: 'pace-by', steps: 1 });

async function drawing(page: Page, see: See, words: Wording): Promise<void> {
  const hand = await TestHand.on(page, challengeNamed('one-fast-stretch').sheet);
  hand.pointer = 'mouse';
  await see('build-empty');
  await hand.drag([50, 160], [130, 160], [225, 160]);
  await hand.drag([225, 160], [190, 135], [150, 110]);
  await page.locator('.callout').first().waitFor();
  await see('build-finding');
  await page.getByRole('button', { name: words.tablet.building.close }).click();
  await page
    .locator('.tray')
    .getByText(`${faster(words)} ▸`)
    .click();
  await hand.tap(90, 160);
  await page.locator('.chosen-buttons').waitFor();
  await see('build-mark');
  await page.locator('.goals-head').click();
  await page.getByRole('dialog').waitFor();
  await see('build-goals');
  await page.keyboard.press('Escape');
}

async function trying(page: Page, see: See, words: Wording): Promise<void> {
  const { foretelling, tablet } = words;
  await page.getByRole('button', { name: tablet.building.tryIt }).click();
  await page.getByText(foretelling.ask).waitFor();
  await see('foretell');
  await page.getByRole('button', { name: foretelling.guess('not-sure') }).click();
  await page.getByRole('button', { name: tablet.trying.pause }).waitFor();
  await see('try');
  await page.getByText('4×').click();
  await page.locator('.trying-goals .goal-margin').first().waitFor();
  await see('tried');
  await page.getByRole('button', { name: words.tablet.trying.back }).click();
}

async function handingIn(page: Page, see: See, words: Wording): Promise<void> {
  await page.getByRole('button', { name: words.tablet.building.handIn }).click();
  await page.getByRole('dialog').waitFor();
  await see('hand-in');
  await page.getByRole('dialog').getByRole('button', { name: words.tablet.building.handIn }).click();
  await page.getByText(words.tablet.handing.takeUp).waitFor();
  await page.locator('.handing .goal-row').first().waitFor();
  await see('entries');
  await page.getByRole('button', { name: words.tablet.trying.back }).click();
}

async function predicting(page: Page, room: TestRoom, see: See, words: Wording): Promise<void> {
  await room.ask(
    { kind: 'go-to', phase: 'brief' },
    { kind: 'choose-challenge', key: 'two-travellers' },
    { kind: 'start-building', seconds: null },
  );
  await page.getByText(words.tablet.predicting.which(1, 3).split('3')[0]!).waitFor();
  await page.locator('.question').getByText(faster(words), { exact: true }).click();
  await see('predict');
  await page.getByRole('button', { name: words.tablet.predicting.chart }).click();
  await see('predict-chart');
  await page.getByRole('button', { name: words.tablet.building.close }).click();
  await page.getByRole('button', { name: words.tablet.building.handIn }).click();
  await page.getByRole('dialog').getByText(words.questions.notAnswered).first().waitFor();
  await see('predict-hand-in');
  await page.keyboard.press('Escape');
}
