import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { expectClean, picture, type Watched } from './browser.ts';
import { axeFindings } from './looks.ts';
import { stage } from './stage.ts';
import { kept, ofLines, ofMarks, tabletIn } from './tablet-page.ts';

let watched: Watched;
const here = stage('file');
afterEach(() => watched.context.close());

async function open(key = 'one-fast-stretch'): Promise<Page> {
  ({ watched } = await tabletIn(here.browser, here.room, key));
  return watched.page;
}

const press = async (page: Page, ...keys: readonly (string | readonly [string, number])[]) => {
  for (const key of keys) {
    const [name, times] = typeof key === 'string' ? [key, 1] : key;
    for (let i = 0; i < times; i++) await page.keyboard.press(name);
  }
};

/** By Tab alone from the top of the page to the paper. */
async function toPaper(page: Page): Promise<void> {
  const onPaper = () => page.evaluate(() => document.activeElement?.classList.contains('surface') ?? false);
  for (let i = 0; i < 30 && !(await onPaper()); i++) await page.keyboard.press('Tab');
  expect(await onPaper()).toBe(true);
}

/** Chooses in the tray of marks, by the keys of a group of radio buttons. */
async function markInTray(page: Page, row: number): Promise<void> {
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.closest('.tray') !== null)) break;
  }
  await page.keyboard.press('Space');
  await press(page, ['ArrowDown', row]);
}

describe('with keys alone', () => {
  it('draws straights, bends one, places, flips, moves and rubs out, and is told where it is', async () => {
    const page = await open();
    await toPaper(page);
    const said = page.locator('.only-read-aloud[role="status"]');
    // The boathouse of this sheet stands 5 cm across and 16 cm down.
    await expect.poll(() => said.textContent()).toBe('5 cm across, 16 cm down, Boathouse');
    await press(page, 'Enter', ['ArrowRight', 30], 'Enter');
    let design = await kept(page, ofLines(1));
    expect(design.drawing.lines[0]).toMatchObject({
      from: { x: 50, y: 160 },
      pieces: [{ to: { x: 200, y: 160 }, bulge: 0 }],
    });
    await press(page, 'Enter', ['ArrowUp', 12], ['Shift+ArrowUp', 2], 'Enter');
    design = await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    expect(design.drawing.lines[0]!.pieces[1]!.to).toEqual({ x: 200, y: 98 });
    await expect.poll(() => said.textContent()).toContain('20 cm across, 9.8 cm down, an end');

    // Curve: takes hold of the upright straight in its middle and pulls it 20 mm to the right.
    await press(page, '2', ['ArrowDown', 6], 'Enter', ['ArrowRight', 4]);
    await picture(page, 'keys-holding');
    await press(page, 'Enter');
    design = await kept(page, (d) => d.drawing.lines[0]!.pieces[1]!.bulge !== 0);
    // Bulge is the height of the arc over half its chord; an arc that lies to the right turns left: negative.
    expect(design.drawing.lines[0]!.pieces[1]!.bulge).toBeCloseTo(-20 / 31, 1);

    // The first mark of the tray, 9 cm across on the level line.
    await markInTray(page, 0);
    await page.locator('.surface').focus();
    await press(page, ['ArrowRight', 8], 'Enter');
    design = await kept(page, ofMarks(1));
    expect(design.drawing.marks[0]!.bands.map(({ ink }) => ink)).toEqual(['C', 'A']);
    await expect.poll(() => said.textContent()).toContain('9 cm across, 16 cm down, mark faster');
    await press(page, 'f');
    await kept(page, (d) => d.drawing.marks[0]?.bands[0]?.ink === 'A');
    const { at } = design.drawing.marks[0]!;
    const move = await page.locator('.tools .tool').allInnerTexts();
    await press(page, String(move.indexOf('Move') + 1), 'Enter', ['ArrowRight', 4], 'Enter');
    await kept(page, (d) => Math.abs((d.drawing.marks[0]?.at ?? 0) - at - 20) < 0.6);
    await press(page, String(move.indexOf('Rub out') + 1), 'Enter');
    await kept(page, ofMarks(0));
    expectClean(watched);
  });

  it('goes from place to place, lets go with Escape, and chooses several', async () => {
    const page = await open();
    await toPaper(page);
    const said = page.locator('.only-read-aloud[role="status"]');
    await press(page, 'Enter', ['ArrowRight', 10], 'Escape', 'Enter', ['ArrowRight', 10], 'Enter');
    // Escape let go of the first one, so that the straight began where the cursor was.
    const design = await kept(page, ofLines(1));
    expect(design.drawing.lines[0]!.from).toEqual({ x: 100, y: 160 });
    await press(page, 'Enter', ['ArrowUp', 8], 'Enter');
    await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    await press(page, 'Shift+N');
    await expect.poll(() => said.textContent()).toContain('Lighthouse');
    await press(page, 'n');
    await expect.poll(() => said.textContent()).toContain('an end');
    await press(page, 'Control+a', 'Delete');
    await kept(page, ofLines(0));
    await press(page, 'Control+z');
    await kept(page, ofLines(1));
    expectClean(watched);
  });

  it('lists all keys, opens what was found, tries it and comes back', async () => {
    const page = await open();
    await toPaper(page);
    await press(page, '?');
    await page.getByRole('dialog').getByText('move the cursor by 5 mm').waitFor();
    await picture(page, 'keys-list');
    expect(await axeFindings(page)).toEqual([]);
    await press(
      page,
      'Escape',
      'Enter',
      ['ArrowRight', 20],
      'Enter',
      'Enter',
      ['ArrowUp', 4],
      ['ArrowLeft', 12],
      'Enter',
    );
    await page.locator('.callout').waitFor();
    await picture(page, 'keys-finding');
    expect(await axeFindings(page)).toEqual([]);
    await press(page, 't');
    await page.getByRole('button', { name: 'Not sure' }).press('Enter');
    await page.getByRole('button', { name: 'Pause' }).waitFor();
    expectClean(watched);
  });
});

describe('what is heard', () => {
  it('is the sheet in words, always there and by R in a dialog, and findings as they come', async () => {
    const page = await open();
    await toPaper(page);
    await press(page, 'Enter', ['ArrowRight', 20], 'Enter');
    const inWords = page.getByRole('region', { name: 'The sheet in words' });
    await inWords.getByText('Line 1, from Boathouse to 15 cm across, 16 cm down: 10 cm.').waitFor();
    await press(page, 'Enter', ['ArrowUp', 4], ['ArrowLeft', 12], 'Enter');
    await inWords.getByText(/^After 10 cm: corner of 18°, to the left\.$/).waitFor();
    const said = page.locator('.only-read-aloud[role="status"]');
    await expect.poll(() => said.textContent(), { timeout: 8000 }).toContain('Sharp corner (18°).');
    await press(page, 'r');
    await page.getByRole('dialog').getByText('Lines and marks').waitFor();
    await picture(page, 'reading');
    expect(await axeFindings(page)).toEqual([]);
    expectClean(watched);
  });

  it('is a sentence, read by a voice of the device where there is one', async () => {
    await here.room.ask({ kind: 'go-to', phase: 'brief' });
    const page = await open();
    expect(await page.getByRole('button', { name: 'Read aloud' }).count()).toBe(0);
    await page.evaluate(() => {
      const voice = { lang: 'en-GB', localService: true, default: true, name: 'own', voiceURI: 'own' };
      const said: string[] = [];
      Object.assign(window, {
        said,
        SpeechSynthesisUtterance: class {
          text: string;
          constructor(text: string) {
            this.text = text;
          }
        },
      });
      Object.assign(window.speechSynthesis, {
        getVoices: () => [voice],
        cancel: () => {},
        speak: (what: { text: string }) => said.push(what.text),
      });
    });
    await page.locator('.goals-head').click();
    await page.getByRole('button', { name: 'Read aloud' }).click();
    const said = () => page.evaluate(() => (window as unknown as { said: string[] }).said.join());
    await expect.poll(said).toContain('Finish at the Lighthouse.');
    await page.getByRole('button', { name: 'Stop reading' }).waitFor();
  });
});
