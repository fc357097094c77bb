import { expect, it } from 'vitest';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy, smallTargets } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';
import { kept, tabletIn } from './tablet-page.ts';

/** What a desk does for one team, by keys alone, and what that team's tablet shows of it. */

const here = stage('test');
const CHALLENGE = 'one-fast-stretch';
const model = challengeNamed(CHALLENGE).model!;

it('a hint, a note, the gentler form and a returned entry reach the team that they are for', async () => {
  const { browser, room } = here;
  const { hand, watched } = await tabletIn(browser, room, CHALLENGE);
  const tablet = watched.page;
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  const { page } = desk;
  here.watched.push(watched, desk);
  const coaching = () => room.desk.state!.coaching;

  // A hint, chosen and sent by keys.
  await page.locator('.team-card').first().waitFor();
  await page.keyboard.press('1');
  await page.getByRole('button', { name: 'Say something' }).waitFor();
  await page.keyboard.press('m');
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Try it now. See where the robot leaves your line.').press('Space');
  await picture(page, 'coaching-note');
  expect(await axeFindings(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await tablet.getByRole('button', { name: 'A note for you' }).click();
  await tablet.getByText('Try it now. See where the robot leaves your line.').waitFor();
  await picture(tablet, 'coaching-tablet-note');
  await tablet.getByRole('button', { name: 'Put it away' }).click();
  await room.desk.until('a note put away', () => coaching().notes.every((note) => note.away));

  // A note is text, whatever stands in it; the desk takes it back before it is read.
  await page.keyboard.press('m');
  await dialog.getByLabel('Or in your own words').fill('<b>Look</b> at the boathouse');
  await dialog.getByRole('button', { name: 'Send' }).press('Enter');
  await tablet.getByRole('button', { name: 'A note for you' }).waitFor();
  for (const [width, height] of [
    [820, 1180],
    [1180, 820],
    [1366, 768],
  ] as const) {
    await tablet.setViewportSize({ width, height });
    await expectTidy(tablet, `a note at ${width}`);
    await picture(tablet, `coaching-tablet-${width}`);
  }
  await tablet.setViewportSize({ width: 1180, height: 820 });
  await tablet.getByRole('button', { name: 'A note for you' }).click();
  await tablet.getByText('<b>Look</b> at the boathouse').waitFor();
  await tablet.keyboard.press('Escape');
  await page.keyboard.press('u');
  await tablet.getByRole('button', { name: 'A note for you' }).waitFor({ state: 'detached' });

  // The gentler form: the maker's lines are there, and only marks are the team's.
  await hand.drag([50, 160], [200, 160]);
  await kept(tablet, (design) => design.drawing.lines.length === 1);
  await page.getByLabel('Gentler form').press('Space');
  await tablet.locator('.tools').getByText('Straight').waitFor({ state: 'detached' });
  await tablet.locator('.tray').getByText('faster').first().click();
  const { from } = model.drawing.lines[0]!;
  await hand.tap(from.x + 40, from.y);
  const begun = await kept(tablet, (design) => design.drawing.marks.length === 1);
  expect(begun.drawing.lines).toEqual(model.drawing.lines);
  await hand.drag([from.x + 60, from.y], [from.x + 60, from.y - 40]);
  await picture(tablet, 'coaching-gentler');
  await expect.poll(() => page.locator('.team-card').count()).toBe(1);
  await picture(page, 'coaching-desk-gentler');
  await expectTidy(page, 'a team with the gentler form');

  // Handed in like any other drawing, given back, and handed in again.
  const handIn = async () => {
    const before = room.desk.state!.entries.length;
    await tablet.getByRole('button', { name: 'Hand in' }).click();
    await tablet.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await room.desk.until('an entry', () => (room.desk.state!.entries.at(before)?.verdict ?? null) !== null);
    await tablet.getByRole('button', { name: 'Back to the drawing' }).click();
    return room.desk.state!.entries.at(before)!;
  };
  const first = await handIn();
  expect(first.gentler).toBe(true);
  await page.getByRole('button', { name: `Entry ${first.number} ·` }).press('Enter');
  await page.getByRole('button', { name: 'Give it back' }).press('Enter');
  await page.getByRole('button', { name: 'to read the goals again' }).press('Enter');
  await page.getByText('given back, does not count').waitFor();
  await picture(page, 'coaching-returned');
  expect(await axeFindings(page)).toEqual([]);
  await expectTidy(page, 'a returned entry');
  await tablet.getByRole('button', { name: 'A note for you' }).click();
  await tablet.getByText(`Number ${first.number} is back with you`).waitFor();
  await tablet.getByRole('button', { name: 'Put it away' }).click();
  const second = await handIn();
  expect(second.number).toBe(first.number + 1);
  await page.getByRole('button', { name: 'Accept it' }).press('Enter');
  await room.desk.until('an accepted entry', () =>
    room.desk.state!.entries.every(({ returned }) => !returned),
  );

  // Back in the usual form the team finds its own drawing as it left it.
  await page.getByLabel('Gentler form').press('Space');
  await tablet.locator('.tools').getByText('Straight').waitFor();
  await tablet.getByText('15 cm of line').waitFor();
  expectClean(desk);
  expectClean(watched);
});

it('the class picture shows what trips teams and where runs fail, by one key', async () => {
  const { browser, room } = here;
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
  await room.arrive(4);
  for (const [i, drawing] of [drawings[0]!, drawings[1]!, drawings[3]!, drawings[4]!].entries())
    await room.handIn(i, drawing);
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  here.watched.push(desk);
  const { page } = desk;
  await page.locator('.team-card').first().waitFor();
  await page.keyboard.press('c');
  await page.getByText('What trips teams').waitFor();
  await page.locator('.failed-run').first().waitFor();
  await page.locator('.picture-rules li').first().waitFor();
  for (const [width, height] of [
    [1366, 768],
    [1024, 768],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expectTidy(page, `class picture at ${width}`);
    await picture(page, `class-picture-${width}`);
  }
  await page.setViewportSize({ width: 1366, height: 768 });
  expect(await axeFindings(page)).toEqual([]);
  expectClean(desk);
});

it('on a phone the essential controls are at hand in every step', async () => {
  const { browser, room } = here;
  await room.arrive(6);
  const desk = await deskPage(browser, room, { width: 390, height: 844, touch: true });
  here.watched.push(desk);
  const { page } = desk;
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  const see = async (name: string, sign: string | RegExp) => {
    await page.getByText(sign).first().waitFor();
    await expectTidy(page, `${name} on a phone`);
    await picture(page, `phone-${name}`);
    for (const button of [page.getByRole('button', { name: 'Look here' }), page.locator('.desk-pause')])
      await expect.poll(() => button.isVisible()).toBe(true);
    expect(await smallTargets(page, 24), name).toEqual([]);
    // A tablet held upright has the same layout.
    await page.setViewportSize({ width: 820, height: 1180 });
    await expectTidy(page, `${name} upright`);
    await page.setViewportSize({ width: 390, height: 844 });
  };
  await see('gather', 'Teams come in');
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'go-to', phase: 'brief' });
  await see('brief', 'Choose a challenge');
  await page.getByRole('button', { name: 'Start building' }).tap();
  await page.getByText(/\d:\d\d left/).waitFor();
  for (let i = 0; i < 5; i++) await room.handIn(i, drawings[i]!);
  await page.locator('.team-card').nth(1).tap();
  await expect
    .poll(async () => (await page.locator('.team-detail').boundingBox())?.y ?? 999)
    .toBeLessThan(400);
  await see('build', 'On the tablet now');
  await page.getByRole('button', { name: 'Say something' }).tap();
  await see('note', 'A ready-made hint');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'End building' }).tap();
  await see('build-over', 'building is over');
  await room.ask(
    { kind: 'go-to', phase: 'show' },
    { kind: 'stage', entries: [room.desk.state!.entries[0]!.id] },
  );
  await page.locator('.stage-controls').waitFor();
  await see('show', /^The stage$/);
  await room.ask({ kind: 'go-to', phase: 'close' });
  await see('close', /^Together$/);
  expectClean(desk);
});
