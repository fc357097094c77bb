import type { Class } from './room-clients.ts';
import { draft, shot } from './room-clients.ts';

/**
 * How busy a lesson is. A whole one of thirty teams and 45 minutes is taken to have 600 entries and
 * 50,000 drafts: a team hands in every 135 s, and its drawing changes every 1.6 s, which is a line or a
 * mark at a time by two children who also talk. Teams act by chance and not together (a Poisson process).
 */
const LESSON_SECONDS = 45 * 60;
const TEAMS = 30;
export const ENTRIES = 600;
export const DRAFTS = 50_000;
const EVENTS_PER_TEAM_SECOND = (ENTRIES + DRAFTS) / TEAMS / LESSON_SECONDS;
const SHARE_OF_ENTRIES = ENTRIES / (ENTRIES + DRAFTS);

/** Numbers from 0 to 1 from a seed (mulberry32). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Plays classes at a lesson's rate; the time of each entry until every other client has it, ms. */
export async function atLessonRate(
  classes: readonly Class[],
  seconds: number,
  seed: number,
): Promise<number[]> {
  const random = chance(seed);
  const teams = classes.flatMap((one) => one.tablets.map((_, tablet) => ({ one, tablet })));
  const rate = teams.length * EVENTS_PER_TEAM_SECOND;
  const busy = new Map<Class, Promise<unknown>>();
  const times: number[] = [];
  const began = performance.now();
  let at = 0;
  for (let i = 0; ; i++) {
    at += (-Math.log(1 - random()) / rate) * 1000;
    if (at > seconds * 1000) break;
    const wait = began + at - performance.now();
    if (wait > 1) await new Promise((resolve) => setTimeout(resolve, wait));
    const { one, tablet } = teams[Math.floor(random() * teams.length)]!;
    if (random() >= SHARE_OF_ENTRIES) {
      one.tablets[tablet]!.socket.emit('latest', draft(i));
    } else if (!busy.has(one)) {
      // One entry of a class at a time, so that what comes can be told apart.
      const shown = shot(one, tablet, i).then((ms) => times.push(ms));
      busy.set(one, shown);
      void shown.finally(() => busy.delete(one));
    }
  }
  await Promise.all(busy.values());
  return times;
}
