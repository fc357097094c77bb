import type { Design, Drawing } from '../../shared/documents/design.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
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

type DrawingOf = (team: number, turn: number) => Design;

/** The maker's own drawing at each team, one mark of which goes to and fro. */
const alike =
  ([model]: readonly Design[]): DrawingOf =>
  (_, turn) =>
    withDrawing(model!, ({ lines, marks }) => ({
      lines,
      marks: marks.map((mark, i) => (i === 0 ? { ...mark, at: mark.at + (turn % 40) / 10 } : mark)),
    }));

/** The same of drawings that differ from team to team, as a class makes them: five kinds, each in seven places. */
const ownEach =
  (drawings: readonly Design[]): DrawingOf =>
  (team, turn) => {
    const down = ({ x, y }: PaperPoint) => ({ x, y: y + (team % 7) / 2 });
    return withDrawing(alike([drawings[team % drawings.length]!])(team, turn), ({ lines, marks }) => ({
      lines: lines.map(({ from, pieces, ...line }) => ({
        ...line,
        from: down(from),
        pieces: pieces.map(({ to, bulge }) => ({ to: down(to), bulge })),
      })),
      marks,
    }));
  };

const withDrawing = (design: Design, change: (drawing: Drawing) => Drawing): Design => ({
  ...design,
  drawing: change(design.drawing),
});

/** What thirty drawings that change cost the desk: of a core, its page with its judge. */
export const miniatureFigures = (): Promise<Figure[]> =>
  inRoom(async (browser, room) => {
    const drawings = classDrawings(challengeNamed(CHALLENGE));
    const { page } = await deskPage(browser, room, { width: 1366, height: 768 });
    await room.arrive(TEAMS);
    await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
    const busyWith = async (drawn: DrawingOf) => {
      for (let team = 0; team < TEAMS; team++) room.draft(team, drawn(team, 0));
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
          room.draft(turn % TEAMS, drawn(turn % TEAMS, ++turn));
          await pause(DRAFT_EVERY_MS / TEAMS);
        }
      });
      return { still: 100 * still, busy: 100 * busy, rate: turn / (MEASURED_MS / 1000) };
    };
    const [same, own] = [await busyWith(alike(drawings)), await busyWith(ownEach(drawings))];
    return [
      { name: 'miniatures-drafts-a-second', value: own.rate, unit: '1/s' },
      { name: 'desk-at-rest', value: own.still, unit: '% of a core' },
      { name: 'miniatures-desk-all-alike', value: same.busy, unit: '% of a core', target: A_TENTH },
      { name: 'miniatures-desk', value: own.busy, unit: '% of a core', target: A_TENTH },
    ];
  });

const A_TENTH = { at: 'most', value: 10 } as const;

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
