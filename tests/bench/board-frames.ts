import type { StageLook } from '../../shared/wire/stage.ts';
import { type BenchBoard, fourHandedIn, onBoard } from './board-page.ts';
import type { Figure } from './figure.ts';
import { bareFrames, browserTime, framesOf, mainThread, slowDown } from './frames.ts';

/** How much slower than this machine the board's is. */
const SLOWER = 4;
/** So long frames are counted in a scene, ms; shorter than the runs that are shown. */
const COUNTED = 5000;
/** The sheet on a board of 1920 × 1080. */
const SHEET = { width: 1210, height: 856 };

const USUAL: StageLook = { sensors: false, whole: false, onTop: false, ways: [], whatIf: null };

/** Puts something on the board that moves for longer than frames are counted; called again, from its beginning. */
type Scene = (board: BenchBoard, entries: readonly string[]) => Promise<void>;

const staged =
  (count: number, look: Partial<StageLook> = {}): Scene =>
  async ({ room, page }, entries) => {
    const stage = entries.slice(0, count);
    if (room.desk.state!.stage.join() !== stage.join()) await room.ask({ kind: 'stage', entries: stage });
    const clock = { playing: true, speed: 1, at: 0, look: { ...USUAL, ...look } };
    room.desk.socket.emit('latest', { kind: 'stage-clock', clock });
    await page
      .locator('.robot-sprite')
      .nth(count - 1)
      .waitFor({ timeout: 60_000 });
  };

const fleet: Scene = async ({ room, page }, entries) => {
  const before = room.desk.state!.board.fleet?.since ?? 0;
  await room.ask({ kind: 'show-fleet', entry: entries[0]!, weather: 'stormy' });
  await room.desk.until('a fleet', () => (room.desk.state!.board.fleet?.since ?? 0) > before);
  await page.locator('.robot-sprite').nth(19).waitFor({ timeout: 120_000 });
};

const SCENES: readonly (readonly [string, Scene])[] = [
  ['stage', staged(1)],
  ['heat-of-four', staged(4)],
  ['heat-on-top', staged(4, { onTop: true })],
  ['fleet-of-twenty', fleet],
];

async function figuresOf(name: string, scene: Scene, board: BenchBoard, entries: readonly string[]) {
  const { page, browser } = board;
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  // Processor time at full speed: a page that is slowed down spends it on waiting.
  await scene(board, entries);
  const [before, threadBefore] = [await browserTime(browser), await mainThread(cdp)];
  const quick = await framesOf(page, COUNTED);
  const [after, threadAfter] = [await browserTime(browser), await mainThread(cdp)];
  const aFrame = (seconds: number) => (1000 * seconds) / ((quick.rate * COUNTED) / 1000);
  await slowDown(cdp, SLOWER);
  await scene(board, entries);
  const { rate, dropped } = await framesOf(page, COUNTED);
  await slowDown(cdp, 1);
  const bare = await bareFrames(page, { ...SHEET, slower: SLOWER, counted: COUNTED });
  await page.bringToFront();
  const figures: Figure[] = [
    { name: `${name}-frames-a-second`, value: rate, unit: '1/s', target: { at: 'least', value: 59 } },
    { name: `${name}-dropped`, value: dropped, unit: '%', target: { at: 'most', value: 1 } },
    { name: `${name}-bare-frames-a-second`, value: bare.rate, unit: '1/s' },
    { name: `${name}-bare-dropped`, value: bare.dropped, unit: '%' },
    { name: `${name}-frames-to-bare`, value: rate / bare.rate, unit: 'ratio' },
    {
      name: `${name}-scripts-a-frame`,
      value: aFrame(threadAfter.scripts - threadBefore.scripts),
      unit: 'ms',
    },
    { name: `${name}-main-thread-a-frame`, value: aFrame(threadAfter.all - threadBefore.all), unit: 'ms' },
    { name: `${name}-page-time-a-frame`, value: aFrame(after.pages - before.pages), unit: 'ms' },
    { name: `${name}-other-time-a-frame`, value: aFrame(after.rest - before.rest), unit: 'ms' },
  ];
  return figures;
}

/**
 * Frames of what moves on the board, with a processor four times as slow: how many a second, how many were
 * left out, and how many to one of a bare page in the same browser, which says what a busy machine takes. And
 * the processor time of a frame at full speed, which other programs leave alone.
 */
export const frameFigures = (): Promise<Figure[]> =>
  onBoard(async (board) => {
    const entries = await fourHandedIn(board.room);
    const figures: Figure[] = [];
    for (const [name, scene] of SCENES) figures.push(...(await figuresOf(name, scene, board, entries)));
    return figures;
  });
