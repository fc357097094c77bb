import { challengeNamed } from '../browser/room.ts';
import { tryIt } from '../browser/tablet-page.ts';
import type { Figure } from './figure.ts';
import { onTablet, putDrawing, SHEET_KEY, SLOWER, slowDown } from './tablet-page.ts';

const FRAME = 1000 / 60;

/** Frames of a replay on a slow tablet of 1180 × 820: how many a second, and how many were left out. */
export const tryFigures = (): Promise<Figure[]> =>
  onTablet(async (tablet) => {
    const { page, cdp } = tablet;
    await putDrawing(tablet, challengeNamed(SHEET_KEY).model!);
    await slowDown(cdp, SLOWER);
    await tryIt(page);
    await page.getByRole('button', { name: 'Pause' }).waitFor({ timeout: 120_000 });
    const times = await page.evaluate(
      () =>
        new Promise<number[]>((resolve) => {
          const found: number[] = [];
          const step = (t: number) => {
            found.push(t);
            if (t - found[0]! < 6000) requestAnimationFrame(step);
            else resolve(found);
          };
          requestAnimationFrame(step);
        }),
    );
    const gaps = times.slice(1).map((t, i) => t - times[i]!);
    const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME) - 1), 0);
    const share = (100 * dropped) / (gaps.length + dropped);
    const rate = (1000 * gaps.length) / (times.at(-1)! - times[0]!);
    return [
      { name: 'try-frames-a-second', value: rate, unit: '1/s', target: { at: 'least', value: 59 } },
      { name: 'try-dropped', value: share, unit: '%', target: { at: 'most', value: 1 } },
    ];
  });
