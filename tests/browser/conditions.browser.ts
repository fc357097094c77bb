import { expect, it } from 'vitest';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { deskPage } from './room.ts';
import { stage } from './stage.ts';
import { kept, ofLines, tabletIn, tryIt } from './tablet-page.ts';

/** Weather of the class and of one team, chosen at the desk, and what a tablet makes of it. */

const here = stage('test');
const KEY = 'one-fast-stretch';

it('a storm reaches the team that it is for, and can be taken back', async () => {
  const { browser, room } = here;
  const { hand, watched } = await tabletIn(browser, room, KEY);
  const tablet = watched.page;
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  const { page } = desk;
  here.watched.push(watched, desk);
  const conditions = () => room.desk.state!.conditions;
  await hand.drag([50, 160], [100, 160], [200, 160]);
  await hand.drag([50, 60], [100, 60], [150, 60]);
  await kept(tablet, ofLines(2));

  // The class's weather stands beside the challenge, a team's own with the team.
  await page.getByLabel('Weather of this round').selectOption('breezy');
  await room.desk.until('a breeze for all', () => conditions().weather === 'breezy');
  await picture(page, 'desk-1366-weather');
  await page.locator('.team-card').first().click();
  await page.getByLabel('Weather for its robots').selectOption('stormy');
  await page.getByRole('region', { name: 'From now on robots drive in a storm for Sailboat.' }).waitFor();
  await tryIt(tablet);
  await tablet.getByText(/robots? (make it|do the same) in a storm/).waitFor();
  await tablet.getByRole('button', { name: 'Back to the drawing' }).click();

  for (const [width, height] of [
    [1366, 768],
    [1024, 768],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    await picture(page, `desk-${width}-conditions`);
    await expectTidy(page, `conditions at ${width}`);
  }
  await page.setViewportSize({ width: 1366, height: 768 });
  expect(await axeFindings(page)).toEqual([]);

  await page.getByLabel('Weather for its robots').selectOption('calm');
  await page.getByText('From now on robots drive in calm weather for Sailboat.').first().waitFor();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await room.desk.until('the storm again', () => conditions().own[0]?.weather === 'stormy');
  expectClean(desk);
  expectClean(watched);
});
