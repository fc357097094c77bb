import { challengeNamed, classDrawings } from '../browser/room.ts';
import { CHALLENGE, onBoard } from './board-page.ts';
import { type Figure, median, percentile } from './figure.ts';

const TEAMS = 30;
/** Points of these rise from entry to entry: none, some, all. */
const BETTER = [3, 1, 0] as const;
/** A wall that shows nothing new within this has not noticed, ms. */
const PATIENCE = 10_000;

declare global {
  interface Window {
    /** When frames began in which the standings had changed, ms since 1970. */
    changedAt: number[];
  }
}

/** From a verdict at the server to the frame in which the board's standings have it, thirty teams three times. */
export const wallFigures = (): Promise<Figure[]> =>
  onBoard(async ({ room, page }) => {
    const drawings = classDrawings(challengeNamed(CHALLENGE));
    await room.arrive(TEAMS);
    await room.ask(
      { kind: 'choose-challenge', key: CHALLENGE },
      { kind: 'start-building', seconds: null },
      { kind: 'show-standings', on: true },
    );
    // Before the first entry there is no table.
    await room.handIn(0, drawings[BETTER[0]]!);
    await page.locator('.standings-all').waitFor();
    await page.evaluate(() => {
      window.changedAt = [];
      const seen = () => requestAnimationFrame(() => window.changedAt.push(Date.now()));
      const all = { subtree: true, childList: true, characterData: true, attributes: true };
      new MutationObserver(seen).observe(document.querySelector('.standings-all')!, all);
    });
    const times: number[] = [];
    let judgedAt = 0;
    room.desk.socket.on('events', (events: readonly { fact: { kind: string } | null }[]) => {
      if (events.some(({ fact }) => fact?.kind === 'judged')) judgedAt = Date.now();
    });
    for (const drawing of BETTER)
      for (let team = 0; team < TEAMS; team++) {
        // That one has been handed in before.
        if (team === 0 && drawing === BETTER[0]) continue;
        await page.evaluate(() => {
          window.changedAt = [];
        });
        await room.handIn(team, drawings[drawing]!);
        const shown = await page
          .waitForFunction(() => window.changedAt[0], undefined, { timeout: PATIENCE })
          .then((handle) => handle.jsonValue());
        times.push(Math.max(0, shown! - judgedAt));
      }
    return [
      { name: 'verdict-to-wall-median', value: median(times), unit: 'ms' },
      {
        name: 'verdict-to-wall-p99',
        value: percentile(times, 0.99),
        unit: 'ms',
        target: { at: 'most', value: 200 },
      },
    ];
  });
