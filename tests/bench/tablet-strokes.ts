import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { pathOf } from '../../shared/geometry/path.ts';
import { pieceAt } from '../../shared/geometry/piece.ts';
import { drawFreely, type Redrawn, redrawn } from '../browser/recorded.ts';
import { referenceIsHere } from '../reference.ts';
import { recordedStrokes } from '../strokes.ts';
import { type Figure, percentile } from './figure.ts';
import { onTablet } from './tablet-page.ts';

const SHEET = fileURLToPath(new URL('../../.artefacts/tablet-strokes.png', import.meta.url));
const COLUMNS = 15;

const points = (all: readonly { readonly x: number; readonly y: number }[]): string =>
  all.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** One stroke: the line that was made of it, broad and grey, and the samples over it. */
function cell({ stroke, lines, worst }: Redrawn, i: number): string {
  const made = lines.map((line) => {
    const along = pathOf(line).pieces.flatMap((piece) =>
      Array.from({ length: 13 }, (_, k) => pieceAt(piece, (piece.length * k) / 12)),
    );
    return `<polyline points="${points(along)}" fill="none" stroke="#b9bdc7" stroke-width="7"/>`;
  });
  const at = `translate(${(i % COLUMNS) * 200} ${Math.floor(i / COLUMNS) * 225})`;
  return `<g transform="${at}"><rect width="200" height="225" fill="none" stroke="#ddd"/>${made.join('')}
    <polyline points="${points(stroke.points)}" fill="none" stroke="#b3261e" stroke-width="1.4"/>
    <text x="6" y="219" font-size="15" font-family="sans-serif">${stroke.word} ${worst.toFixed(1)} mm</text></g>`;
}

/** All strokes with what became of them on one picture, for people to look at. */
async function contactSheet(page: Page, all: readonly Redrawn[]): Promise<void> {
  const [width, height] = [COLUMNS * 200, Math.ceil(all.length / COLUMNS) * 225];
  await page.setViewportSize({ width: width / 2, height: Math.ceil(height / 2) });
  const cells = all.map(cell).join('');
  await page.setContent(
    `<body style="margin:0"><svg width="${width / 2}" height="${height / 2}" viewBox="0 0 ${width} ${height}">${cells}</svg>`,
  );
  mkdirSync(fileURLToPath(new URL('.', `file://${SHEET}`)), { recursive: true });
  await page.screenshot({ path: SHEET });
}

/** How far lines lie from the recorded strokes that they were made of, on the page and with their own timing. */
export async function strokeFigures(): Promise<Figure[]> {
  if (!referenceIsHere) return [];
  return onTablet(async ({ page, hand }) => {
    await drawFreely(page);
    const all: Redrawn[] = [];
    for (const stroke of recordedStrokes()) all.push(await redrawn(page, hand, stroke));
    await contactSheet(await page.context().newPage(), all);
    const worst = all.map((each) => each.worst);
    return [
      { name: 'strokes', value: all.length, unit: 'strokes' },
      ...[0.5, 0.9, 0.99].map(
        (share): Figure => ({
          name: `stroke-worst-p${share * 100}`,
          value: percentile(worst, share),
          unit: 'mm',
        }),
      ),
      { name: 'stroke-worst', value: Math.max(...worst), unit: 'mm', target: { at: 'most', value: 4 } },
    ];
  });
}
