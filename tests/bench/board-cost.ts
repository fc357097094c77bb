import { watchedPage } from '../browser/browser.ts';
import { challengeNamed, classDrawings, deskPage } from '../browser/room.ts';
import { CHALLENGE, fourHandedIn, inRoom } from './board-page.ts';
import type { Figure } from './figure.ts';
import { browserTime } from './frames.ts';

const TEAMS = 30;
/** A team's drawing changes every 1.6 s (`room-rate.ts`). */
const DRAFT_EVERY_MS = 1600;
const MEASURED_MS = 16_000;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** What thirty drawings that change cost the desk: of a core, its page with its judge. */
export const miniatureFigures = (): Promise<Figure[]> =>
  inRoom(async (browser, room) => {
    const model = classDrawings(challengeNamed(CHALLENGE))[0]!;
    const moved = (turn: number) => {
      const marks = model.drawing.marks.map((mark, i) =>
        i === 0 ? { ...mark, at: mark.at + (turn % 40) / 10 } : mark,
      );
      return { ...model, drawing: { ...model.drawing, marks } };
    };
    const { page } = await deskPage(browser, room, { width: 1366, height: 768 });
    await room.arrive(TEAMS);
    await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
    for (let team = 0; team < TEAMS; team++) room.draft(team, moved(team));
    await page
      .locator('.team-card .miniature')
      .nth(TEAMS - 1)
      .waitFor();
    // The first drawings are judged by and by.
    await pause(6000);
    const still = await timeOver(browser, 5000, async () => pause(5000));
    let turn = 0;
    const busy = await timeOver(browser, MEASURED_MS, async () => {
      const until = performance.now() + MEASURED_MS;
      while (performance.now() < until) {
        room.draft(turn % TEAMS, moved(++turn));
        await pause(DRAFT_EVERY_MS / TEAMS);
      }
    });
    const drafts = turn / (MEASURED_MS / 1000);
    return [
      { name: 'miniatures-drafts-a-second', value: drafts, unit: '1/s' },
      { name: 'desk-at-rest', value: 100 * still, unit: '% of a core' },
      { name: 'miniatures-desk', value: 100 * busy, unit: '% of a core', target: { at: 'most', value: 10 } },
    ];
  });

/** The share of a core that the pages of a browser take while something is done for so long. */
async function timeOver(
  browser: Parameters<typeof browserTime>[0],
  ms: number,
  work: () => Promise<unknown>,
): Promise<number> {
  const before = await browserTime(browser);
  await work();
  const after = await browserTime(browser);
  return (after.pages - before.pages) / (ms / 1000);
}

/** All that the board's page asks for until a drawing is on its stage, packed, but its fonts: kB. */
export const weightFigures = (): Promise<Figure[]> =>
  inRoom(async (browser, room) => {
    const [first] = await fourHandedIn(room);
    const { page, context } = await watchedPage(browser, room.server.url, { width: 1920, height: 1080 });
    const cdp = await context.newCDPSession(page);
    await cdp.send('Network.enable');
    const sizes = { font: 0, other: 0 };
    cdp.on('Network.responseReceived', ({ type, response: { headers } }) => {
      const length = Object.entries(headers).find(([name]) => name.toLowerCase() === 'content-length');
      sizes[type === 'Font' ? 'font' : 'other'] += Number(length?.[1] ?? 0);
    });
    await page.goto(`${room.server.url}/board?room=${room.word}`);
    await room.ask({ kind: 'stage', entries: [first!] });
    await page.locator('.robot-sprite').waitFor();
    return [
      { name: 'board-page', value: sizes.other / 1000, unit: 'kB', target: { at: 'most', value: 250 } },
      { name: 'board-fonts', value: sizes.font / 1000, unit: 'kB' },
    ];
  });
