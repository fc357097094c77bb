import { afterEach, describe, expect, it } from 'vitest';
import { pointAt } from '../../shared/geometry/path.ts';
import { layOut } from '../../shared/track/layout.ts';
import { expectClean, type Watched } from './browser.ts';
import type { TestHand } from './hand.ts';
import { lookAtTablet } from './looks.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';
import { tabletIn } from './tablet-page.ts';

/** Predict, run, because; and what a run shows. */

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const looks = (name: string) => lookAtTablet(watched.page, name);

const open = async (key: string) => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, key));
};
const press = (name: string) => watched.page.getByRole('button', { name, exact: true }).click();
const fast = () => watched.page.getByText('4×').click();
const lastTry = () => here.room.desk.state!.tries.at(-1);
const atTheEnd = () => watched.page.locator('.trying-goals[data-known="true"]').waitFor();

describe('predict, run, because', () => {
  it('asks before the first try of a changed drawing, and not again for the same one', async () => {
    const tries = () => here.room.desk.state!.tries.length;
    const before = tries();
    await open('one-fast-stretch');
    await hand.drag([50, 160], [200, 160]);
    await press('Try it');
    await watched.page.getByText('What will the robot do?').waitFor();
    await looks('foretell');
    await press('It doesn’t');
    await watched.page.getByText('Where does it go wrong?').waitFor();
    await looks('foretell-where');
    await hand.tap(200, 160);
    await watched.page.getByRole('button', { name: 'Pause' }).waitFor();
    await here.room.desk.until('the try', () => tries() === before + 1);
    expect(lastTry()).toMatchObject({ guess: 'fails', made: false });
    expect(Math.abs(lastTry()!.at!.x - 200)).toBeLessThanOrEqual(2);
    expect(Math.abs(lastTry()!.at!.y - 160)).toBeLessThanOrEqual(2);
    await fast();
    await atTheEnd();
    expect(await watched.page.locator('.why-choice').count()).toBe(0);
    await press('Back to the drawing');
    await press('Try it');
    await watched.page.getByRole('button', { name: 'Pause' }).waitFor();
    expect(tries()).toBe(before + 1);
    expectClean(watched);
  });

  it('after a run that went otherwise it gives three reasons, of which one is true', async () => {
    await open('one-fast-stretch');
    await hand.drag([50, 160], [200, 160]);
    await press('Try it');
    await press('It makes it');
    await fast();
    await watched.page.locator('.why-choice').first().waitFor();
    expect(await watched.page.locator('.why-choice').count()).toBe(3);
    await looks('why');
    const texts = await watched.page.locator('.why-choice').allTextContents();
    expect(texts).toContain('The line ends before the goal.');
    const mistaken = texts.find((text) => text !== 'The line ends before the goal.')!;
    await press(mistaken);
    await watched.page.getByText('This is it: The line ends before the goal.').waitFor();
    await looks('why-answered');
    await here.room.desk.until('the reason', () => lastTry()!.because !== null);
    expect(lastTry()).toMatchObject({ guess: 'makes-it', made: false, because: { right: 'line-ends' } });
    await press('Show me');
    await watched.page.getByRole('button', { name: 'Pause' }).waitFor();
    expectClean(watched);
  });
});

describe('a run', () => {
  it('has a log to be tapped, sensors on demand, and the trouble a button away', async () => {
    await open('one-fast-stretch');
    await hand.drag([50, 160], [200, 160]);
    await watched.page.getByText('faster ▸').click();
    await hand.tap(110, 160);
    await press('Try it');
    await press('Not sure');
    await press('Sensors');
    await watched.page.getByText('The middle sensor sees').waitFor();
    await fast();
    await atTheEnd();
    await watched.page.locator('.trying-robots').getByText('of 20 robots').waitFor({ timeout: 60_000 });
    await looks('run-over');
    const log = watched.page.locator('.trying-log');
    await log.getByRole('button', { name: 'faster' }).click();
    // The page goes there with its next frame.
    const read = log.locator('[data-now="true"]', { hasText: 'faster' });
    const at = (await read.locator('.log-time').textContent())!;
    await watched.page.locator('.controls-time output', { hasText: new RegExp(`^${at} `) }).waitFor();
    await press('To the trouble');
    await watched.page.getByRole('button', { name: 'Pause' }).waitFor();
    expectClean(watched);
  });

  it('at a junction left to luck each way has its chance and can be chosen', async () => {
    await open('ferry-junction');
    await press('Try it');
    await press('Not sure');
    await fast();
    await atTheEnd();
    const ways = watched.page.locator('.log-ways').first().getByRole('button');
    await ways.first().waitFor();
    const said = await ways.allTextContents();
    expect(said.every((text) => /: \d+(\.\d)? of 20$/.test(text))).toBe(true);
    await looks('fork');
    const other = watched.page.locator('.log-ways').first().locator('[aria-pressed="false"]').first();
    const name = (await other.textContent())!;
    await other.click();
    await watched.page.locator('.log-ways [aria-pressed="true"]', { hasText: name }).first().waitFor();
    expectClean(watched);
  });

  it('when all goals are met the next question comes by itself, and can be seen', async () => {
    await open('park-on-the-landing');
    const { sheet, model } = challengeNamed('park-on-the-landing');
    const mark = model!.drawing.marks[0]!;
    const line = layOut(sheet, model!.drawing).lines.find(({ id }) => id === mark.line)!;
    const middle = pointAt(line.path, mark.at + 1.5 * mark.bands[0]!.length);
    await watched.page.locator('.tray').getByText('park', { exact: true }).click();
    await hand.tap(middle.x, middle.y);
    await press('Try it');
    await press('It makes it');
    await fast();
    await atTheEnd();
    await watched.page.getByRole('heading', { name: 'Next question' }).waitFor({ timeout: 60_000 });
    await press('No');
    await looks('next-question');
    await watched.page
      .locator('.trying-card')
      .getByText(/Right|No\./)
      .waitFor();
    expectClean(watched);
  });
});
