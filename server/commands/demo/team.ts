import type { Challenge } from '../../../shared/documents/challenge.ts';
import { Design } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import { rolled, type Sfc32 } from '../../../shared/run/random.ts';
import { type Answer, ROUTES } from '../../../shared/wire/protocol.ts';
import { type Attempts, attemptsFor, strokesOf } from './designs.ts';
import { cookieOf, openPage, type Page } from './page.ts';

/** Waits so many lesson seconds; a test makes them short. */
export type Wait = (seconds: number) => Promise<void>;

export interface TeamOrders {
  readonly url: string;
  readonly word: string;
  readonly challenge: Challenge;
  /** The sound track that the team has in mind. */
  readonly track: Design;
  /** Whether it never finds its fault. */
  readonly stuck: boolean;
  readonly dice: Sfc32;
  readonly wait: Wait;
}

export interface SimulatedTeam {
  /** Draws, tries, mends and hands in; resolves with the server's answer to each hand-in. */
  readonly play: (round: number) => Promise<readonly Answer[]>;
  readonly close: () => void;
}

/** Between two strokes, s. */
const STROKE = { least: 2, spread: 4 } as const;
const TRYING = 5;
const THINKING = 4;

/** Joins the room as a tablet would, and plans what the team will draw. */
export async function seatTeam({
  url,
  word,
  challenge,
  track,
  stuck,
  dice,
  wait,
}: TeamOrders): Promise<SimulatedTeam> {
  const response = await fetch(`${url}${ROUTES.join}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ word }),
  });
  const page = await openPage(url, cookieOf(response), { page: 'tablet', room: null });
  const attempts = attemptsFor(challenge, track, dice, stuck);
  return {
    play: (round) => playLesson(page, attempts, round, dice, wait),
    close: page.close,
  };
}

async function playLesson(
  page: Page,
  attempts: Attempts,
  round: number,
  dice: Sfc32,
  wait: Wait,
): Promise<Answer[]> {
  const pause = () => wait(STROKE.least + rolled(dice, STROKE.spread * 10) / 10);
  const answers: Answer[] = [];
  await wait(rolled(dice, 60) / 10);
  for (const [i, design] of attempts.designs.entries()) {
    page.latest({ kind: 'doing', doing: 'drawing' });
    // A second attempt mends the first in one go.
    const strokes = i === 0 ? strokesOf(design) : [design];
    for (const stroke of strokes) {
      await pause();
      page.latest({ kind: 'draft', round, design: writeDocument(Design, stroke) });
    }
    await wait(THINKING);
    page.latest({ kind: 'doing', doing: 'trying' });
    await wait(TRYING);
    const isLast = i === attempts.designs.length - 1;
    const handsIn = isLast || rolled(dice, 3) > 0;
    if (!handsIn) continue;
    answers.push(await page.ask({ kind: 'hand-in', round, design: writeDocument(Design, design) }));
    page.latest({ kind: 'doing', doing: 'handed-in' });
    await wait(THINKING);
  }
  return answers;
}
