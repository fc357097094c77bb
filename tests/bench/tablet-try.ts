import { challengeNamed } from '../browser/room.ts';
import { tryIt } from '../browser/tablet-page.ts';
import type { Figure } from './figure.ts';
import { bareFrames, framesOf, slowDown } from './frames.ts';
import { onTablet, putDrawing, SHEET_KEY, SLOWER } from './tablet-page.ts';

/** So long frames are counted on each page, ms; shorter than the run that is shown. */
const COUNTED = 6000;

/**
 * Frames of a replay on a slow tablet of 1180 × 820: how many a second, how many were left out, and how
 * many to one of a bare page in the same browser, which says what a busy machine takes.
 */
export const tryFigures = (): Promise<Figure[]> =>
  onTablet(async (tablet) => {
    const { page, cdp } = tablet;
    await putDrawing(tablet, challengeNamed(SHEET_KEY).model!);
    const bare = await bareFrames(page, { width: 880, height: 679, slower: SLOWER, counted: COUNTED });
    await page.bringToFront();
    await slowDown(cdp, SLOWER);
    await tryIt(page);
    await page.getByRole('button', { name: 'Pause' }).waitFor({ timeout: 120_000 });
    const { rate, dropped } = await framesOf(page, COUNTED);
    return [
      { name: 'try-frames-a-second', value: rate, unit: '1/s', target: { at: 'least', value: 59 } },
      { name: 'try-dropped', value: dropped, unit: '%', target: { at: 'most', value: 1 } },
      { name: 'bare-frames-a-second', value: bare.rate, unit: '1/s' },
      { name: 'try-frames-to-bare', value: rate / bare.rate, unit: 'ratio' },
    ];
  });
