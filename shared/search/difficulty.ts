import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import type { Difficulty } from '../documents/fresh.ts';
import { actionOf, reversed } from '../documents/kit.ts';
import { judge } from '../judge/judge.ts';
import { SCALE } from './measure.ts';

/** Steps of any scale: more is not easier. */
const MOST_SLACK = 10;

/** How hard a challenge is, counted on a design that solves it; `searched` as the search for it says. */
export function difficultyOf(challenge: Challenge, design: Design, searched: number): Difficulty {
  const { kit } = challenge;
  const { verdict } = judge(challenge, design, 'live');
  const readings = verdict.runs.flatMap((run) => run.readings);
  const isSided = (word: string): boolean =>
    JSON.stringify(actionOf(kit, word)) !== JSON.stringify(actionOf(kit, reversed(word)));
  const sided = readings.filter(({ word }) => isSided(word)).length;
  const musts = new Set(challenge.goals.filter((goal) => goal.must).map(({ id }) => id));
  // A count is met or not: nothing of it can be spared.
  const margins = verdict.goals.filter(({ id, unit }) => musts.has(id) && unit !== 'count');
  const slack = margins.reduce((least, goal) => Math.min(least, goal.margin / SCALE[goal.unit]), MOST_SLACK);
  const marks = design.drawing.marks.length;
  return { marks, sided, slack, searched, score: 2 * marks + sided + (slack < 1 ? 1 : 0) };
}
