import type { Page } from 'playwright-core';
import { tool } from '../browser/tablet-page.ts';
import { type Figure, percentile } from './figure.ts';
import { slowDown } from './frames.ts';
import { fullSheet } from './tablet-drawings.ts';
import { type BenchTablet, onTablet, putDrawing, SLOWER } from './tablet-page.ts';

const FRAME = 1000 / 60;

interface Sample {
  readonly ms: number;
  readonly frames: number;
}

interface Probe {
  samples: Sample[];
}

/** Notes for each pointer sample how long after its arrival a frame's work had drawn something, and in which. */
const watchInk = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const probe: { samples: { ms: number; frames: number }[] } = { samples: [] };
    (window as unknown as { probe: typeof probe }).probe = probe;
    let waiting: { at: number; frame: number }[] = [];
    let frame = 0;
    let inked = false;
    const ask = window.requestAnimationFrame.bind(window);
    const count = () => {
      frame++;
      ask(count);
    };
    ask(count);
    window.addEventListener('pointermove', () => waiting.push({ at: performance.now(), frame }), true);
    const { clearRect } = CanvasRenderingContext2D.prototype;
    CanvasRenderingContext2D.prototype.clearRect = function (...box) {
      inked = true;
      clearRect.apply(this, box);
    };
    window.requestAnimationFrame = (work) =>
      ask((t) => {
        inked = false;
        work(t);
        if (!inked || waiting.length === 0) return;
        const now = performance.now();
        for (const each of waiting) probe.samples.push({ ms: now - each.at, frames: frame - each.frame });
        waiting = [];
      });
  });

const samplesOf = (page: Page): Promise<Sample[]> =>
  page.evaluate(() => {
    const { probe } = window as unknown as { probe: Probe };
    const { samples } = probe;
    probe.samples = [];
    return samples;
  });

/** A wave of `count` samples from one place to another. */
const wave = (from: readonly [number, number], to: readonly [number, number], count: number) =>
  Array.from({ length: count }, (_, i): [number, number] => [
    from[0] + ((to[0] - from[0]) * i) / (count - 1),
    from[1] + ((to[1] - from[1]) * i) / (count - 1) + 6 * Math.sin(i / 6),
  ]);

async function measured({ page, hand }: BenchTablet, name: string, chosen: string, from: [number, number]) {
  await tool(page, chosen);
  await samplesOf(page);
  for (let round = 0; round < 3; round++) {
    await hand.drag(...wave(from, [from[0] + 150, from[1] + 20], 150));
    await page.keyboard.press('Control+z');
  }
  const samples = await samplesOf(page);
  const ms = samples.map((sample) => sample.ms);
  const frames = samples.map((sample) => sample.frames);
  return [
    { name: `${name}-ink-median`, value: percentile(ms, 0.5), unit: 'ms' },
    {
      name: `${name}-ink-p95`,
      value: percentile(ms, 0.95),
      unit: 'ms',
      target: { at: 'most', value: FRAME },
    },
    {
      name: `${name}-frames-p95`,
      value: percentile(frames, 0.95),
      unit: 'frames',
      target: { at: 'most', value: 1 },
    },
  ] satisfies Figure[];
}

/** From a pointer's sample to its ink, with forty lines and twenty marks on a slow tablet. */
export const inkFigures = (): Promise<Figure[]> =>
  onTablet(async (tablet) => {
    await putDrawing(tablet, fullSheet());
    await watchInk(tablet.page);
    await slowDown(tablet.cdp, SLOWER);
    return [
      ...(await measured(tablet, 'freehand', 'Freehand', [60, 180])),
      ...(await measured(tablet, 'straight', 'Straight', [60, 180])),
      ...(await measured(tablet, 'corner', 'Move', [250, 120])),
      ...(await measured(tablet, 'bands', 'Bands', [80, 160])),
    ];
  });
