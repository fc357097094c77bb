import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pathOf, pointAt } from '../../shared/geometry/path.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { openBrowser } from './browser.ts';
import { contactSheet } from './course-sheets.ts';

const ARTEFACTS = fileURLToPath(new URL('../../.artefacts', import.meta.url));

const course = readyChallenges(DEMO_KIT).flatMap((one) =>
  one.playable ? [[one.title.en, one.challenge] as const] : [],
);

interface Name {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

let browser: Browser;
/** Names with their boxes in mm of their sheet, by challenge. */
const names = new Map<string, readonly Name[]>();
beforeAll(async () => {
  browser = await openBrowser();
  const page = await browser.newPage({ viewport: { width: 1800, height: 900 } });
  await page.setContent(contactSheet(course));
  await page.evaluate(() => document.fonts.ready);
  mkdirSync(ARTEFACTS, { recursive: true });
  writeFileSync(`${ARTEFACTS}/course.html`, contactSheet(course));
  await page.screenshot({ path: `${ARTEFACTS}/course.png`, fullPage: true });
  const found = await page.evaluate(() =>
    [...document.querySelectorAll('figure')].map((figure) => {
      const texts = [...figure.querySelectorAll('text')].map((text) => {
        const { x, y, width, height } = text.getBBox();
        return { text: text.textContent ?? '', x, y, width, height };
      });
      return [figure.dataset.key ?? '', texts] as const;
    }),
  );
  for (const [key, texts] of found) names.set(key, texts);
});
afterAll(() => browser.close());

/** A row of letters is less high than its line. */
const letters = ({ x, y, width, height }: Name) => ({
  left: x,
  right: x + width,
  top: y + height * 0.2,
  bottom: y + height * 0.85,
});

describe('names on the sheets of the course', () => {
  it.each(course)('%s: no name leaves the sheet or lies over another name', (_, { id, sheet }) => {
    const boxes = names.get(id)!.map((name) => ({ text: name.text, ...letters(name) }));
    expect(boxes.length).toBeGreaterThan(0);
    const off = boxes.filter((b) => b.left < 0 || b.top < 0 || b.right > sheet.w || b.bottom > sheet.h);
    expect(off).toEqual([]);
    const over = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        .map((b) => `${a.text} × ${b.text}`),
    );
    expect(over).toEqual([]);
  });

  it.each(course)('%s: no given line runs through a name', (_, { id, sheet }) => {
    const struck = names.get(id)!.filter((name) => {
      const box = letters(name);
      return sheet.given.lines.some((line) => {
        const path = pathOf(line);
        const half = line.width / 2;
        return Array.from({ length: Math.ceil(path.length) + 1 }, (_, s) => pointAt(path, s)).some(
          ({ x, y }) =>
            x > box.left - half && x < box.right + half && y > box.top - half && y < box.bottom + half,
        );
      });
    });
    expect(struck.map((name) => name.text)).toEqual([]);
  });
});
