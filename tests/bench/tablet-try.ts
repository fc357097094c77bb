import type { Page } from 'playwright-core';
import { challengeNamed } from '../browser/room.ts';
import { tryIt } from '../browser/tablet-page.ts';
import type { Figure } from './figure.ts';
import { onTablet, putDrawing, SHEET_KEY, SLOWER, slowDown } from './tablet-page.ts';

const FRAME = 1000 / 60;
/** So long frames are counted on each page, ms; shorter than the run that is shown. */
const COUNTED = 6000;

interface Frames {
  /** A second. */
  readonly rate: number;
  /** Left out, of a hundred. */
  readonly dropped: number;
}

async function framesOf(page: Page): Promise<Frames> {
  const times = await page.evaluate(
    (counted) =>
      new Promise<number[]>((resolve) => {
        const found: number[] = [];
        const step = (t: number) => {
          found.push(t);
          if (t - found[0]! < counted) requestAnimationFrame(step);
          else resolve(found);
        };
        requestAnimationFrame(step);
      }),
    COUNTED,
  );
  const gaps = times.slice(1).map((t, i) => t - times[i]!);
  const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME) - 1), 0);
  return {
    rate: (1000 * gaps.length) / (times.at(-1)! - times[0]!),
    dropped: (100 * dropped) / (gaps.length + dropped),
  };
}

/** What this machine can do just now: a page with one canvas of the sheet's size, painted at each frame. */
async function bareFrames(of: Page): Promise<Frames> {
  const page = await of.context().newPage();
  await slowDown(await of.context().newCDPSession(page), SLOWER);
  await page.setContent('<canvas width="880" height="679"></canvas>');
  await page.evaluate(() => {
    const ctx = document.querySelector('canvas')!.getContext('2d')!;
    const draw = (t: number) => {
      ctx.clearRect(0, 0, 880, 679);
      ctx.fillRect((t / 8) % 800, 300, 80, 80);
      requestAnimationFrame(draw);
    };
    requestAnimationFrame(draw);
  });
  const frames = await framesOf(page);
  await page.close();
  return frames;
}

/**
 * Frames of a replay on a slow tablet of 1180 × 820: how many a second, how many were left out, and how
 * many to one of a bare page in the same browser, which says what a busy machine takes.
 */
export const tryFigures = (): Promise<Figure[]> =>
  onTablet(async (tablet) => {
    const { page, cdp } = tablet;
    await putDrawing(tablet, challengeNamed(SHEET_KEY).model!);
    const bare = await bareFrames(page);
    await page.bringToFront();
    await slowDown(cdp, SLOWER);
    await tryIt(page);
    await page.getByRole('button', { name: 'Pause' }).waitFor({ timeout: 120_000 });
    const { rate, dropped } = await framesOf(page);
    return [
      { name: 'try-frames-a-second', value: rate, unit: '1/s', target: { at: 'least', value: 59 } },
      { name: 'try-dropped', value: dropped, unit: '%', target: { at: 'most', value: 1 } },
      { name: 'bare-frames-a-second', value: bare.rate, unit: '1/s' },
      { name: 'try-frames-to-bare', value: rate / bare.rate, unit: 'ratio' },
    ];
  });
