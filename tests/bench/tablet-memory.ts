import type { CDPSession } from 'playwright-core';
import { tool } from '../browser/tablet-page.ts';
import type { Figure } from './figure.ts';
import { onTablet } from './tablet-page.ts';

/** Half an hour with something done every two seconds: strokes, and every second ten of them taken back. */
const DONE_IN_HALF_AN_HOUR = 900;
const WARM_UP = 100;
const IN_A_ROW = 10;

async function heapOf(cdp: CDPSession): Promise<number> {
  await cdp.send('HeapProfiler.collectGarbage');
  const { metrics } = await cdp.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN) / 1e6;
}

const stroke = (turn: number) =>
  Array.from({ length: 24 }, (_, i): [number, number] => [
    60 + i * 7,
    30 + ((turn * 13) % 100) + 10 * Math.sin(i / 3),
  ]);

/** MB of heap before and after half an hour of drawing and undoing, played at speed. */
export const memoryFigures = (): Promise<Figure[]> =>
  onTablet(async ({ page, cdp, hand }) => {
    await cdp.send('Performance.enable');
    await tool(page, 'Freehand');
    const play = async (many: number) => {
      for (let turn = 0; turn < many; turn++) {
        if (Math.floor(turn / IN_A_ROW) % 2 === 0) await hand.drag(...stroke(turn));
        else await page.keyboard.press('Control+z');
      }
    };
    await play(WARM_UP);
    const before = await heapOf(cdp);
    await play(DONE_IN_HALF_AN_HOUR);
    const after = await heapOf(cdp);
    return [
      { name: 'heap-before', value: before, unit: 'MB' },
      { name: 'heap-growth', value: after - before, unit: 'MB', target: { at: 'most', value: 2 } },
    ];
  });
