import type { Browser, CDPSession, Page } from 'playwright-core';

const FRAME = 1000 / 60;

export interface Frames {
  /** A second. */
  readonly rate: number;
  /** Left out, of a hundred. */
  readonly dropped: number;
}

/** The frames of a page over so many ms. */
export async function framesOf(page: Page, counted: number): Promise<Frames> {
  const times = await page.evaluate(
    (ms) =>
      new Promise<number[]>((resolve) => {
        const found: number[] = [];
        const step = (t: number) => {
          found.push(t);
          if (t - found[0]! < ms) requestAnimationFrame(step);
          else resolve(found);
        };
        requestAnimationFrame(step);
      }),
    counted,
  );
  const gaps = times.slice(1).map((t, i) => t - times[i]!);
  const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME) - 1), 0);
  return {
    rate: (1000 * gaps.length) / (times.at(-1)! - times[0]!),
    dropped: (100 * dropped) / (gaps.length + dropped),
  };
}

/**
 * Processor time that the main thread of a page has taken so far for scripts, and for all that it does, s. The domain
 * `Performance` has to be enabled, with the time of threads.
 */
export async function mainThread(
  cdp: CDPSession,
): Promise<{ readonly scripts: number; readonly all: number }> {
  const { metrics } = await cdp.send('Performance.getMetrics');
  const secondsOf = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? Number.NaN;
  return { scripts: secondsOf('ScriptDuration'), all: secondsOf('TaskDuration') };
}

export const slowDown = (cdp: CDPSession, rate: number): Promise<unknown> =>
  cdp.send('Emulation.setCPUThrottlingRate', { rate });

interface Bare {
  readonly width: number;
  readonly height: number;
  /** How much slower than this machine. */
  readonly slower: number;
  /** For so long, ms. */
  readonly counted: number;
}

/** What this machine can do just now: a page with one canvas of the sheet's size, painted at each frame. */
export async function bareFrames(of: Page, { width, height, slower, counted }: Bare): Promise<Frames> {
  const page = await of.context().newPage();
  await slowDown(await of.context().newCDPSession(page), slower);
  await page.setContent(`<canvas width="${width}" height="${height}"></canvas>`);
  await page.evaluate(() => {
    const canvas = document.querySelector('canvas')!;
    const ctx = canvas.getContext('2d')!;
    const draw = (t: number) => {
      ctx.clearRect(0, 0, canvas.width, canvas.height);
      ctx.fillRect((t / 8) % (canvas.width - 80), 300, 80, 80);
      requestAnimationFrame(draw);
    };
    requestAnimationFrame(draw);
  });
  const frames = await framesOf(page, counted);
  await page.close();
  return frames;
}

/**
 * Processor time of all pages of a browser so far, and of all else in it (putting pictures together, the net), s.
 * The loads of other programs don't count in it; pages that are slowed down waste it.
 */
export async function browserTime(
  browser: Browser,
): Promise<{ readonly pages: number; readonly rest: number }> {
  const cdp = await browser.newBrowserCDPSession();
  const { processInfo } = await cdp.send('SystemInfo.getProcessInfo');
  await cdp.detach();
  const sum = (pages: boolean) =>
    processInfo
      .filter(({ type }) => (type === 'renderer') === pages)
      .reduce((total, { cpuTime }) => total + cpuTime, 0);
  return { pages: sum(true), rest: sum(false) };
}
