import { isDeepStrictEqual } from 'node:util';
import { Challenge } from '../shared/documents/challenge.ts';
import { FRESH_MARKS, FRESH_TOPICS } from '../shared/documents/fresh.ts';
import { parseDocument, writeDocument } from '../shared/documents/values.ts';
import { checkChallenge } from '../shared/judge/check-challenge.ts';
import { judge } from '../shared/judge/judge.ts';
import { DEMO_KIT } from '../shared/kit/demo-kit.ts';
import { type FreshResult, type FreshWish, freshChallenge } from '../shared/search/fresh.ts';
import { parOf } from '../shared/search/par.ts';
import { fresh } from '../shared/wording/wording.ts';

/** Every topic with every number of marks in turn, each with a seed of its own. */
export function wishFor(seed: number): FreshWish {
  const topic = FRESH_TOPICS[seed % FRESH_TOPICS.length]!;
  const marks = FRESH_MARKS[Math.floor(seed / FRESH_TOPICS.length) % FRESH_MARKS.length]!;
  return { topic, marks, seed, kit: DEMO_KIT, words: fresh };
}

/** Whether its file holds it as it is. */
const isFiled = (challenge: Challenge): boolean =>
  isDeepStrictEqual(parseDocument(Challenge, writeDocument(Challenge, challenge)), {
    ok: true,
    value: challenge,
  });

/** What is wrong with a fresh challenge, in a word each; none means that it is what was wished for. */
export function faultsOf(wish: FreshWish, result: FreshResult): string[] {
  if (result.kind !== 'fresh') return [result.kind];
  const { challenge, difficulty } = result;
  const faults: string[] = checkChallenge(challenge).map(({ code }) => code);
  if (!isFiled(challenge)) faults.push('not-as-its-file');
  const { verdict } = judge(challenge, challenge.model!, 'live');
  if (!verdict.met) faults.push('model-unmet');
  if (verdict.runs.length !== 1 || verdict.runs[0]!.probability !== 1) faults.push('left-to-chance');
  if (difficulty.marks !== wish.marks || challenge.par !== 20 * wish.marks) faults.push('other-marks');
  const fewer = { ...challenge, limits: { ...challenge.limits, marks: wish.marks - 1 } };
  if (parOf(fewer).kind !== 'impossible') faults.push('fewer-marks-do-it');
  return faults;
}

export const madeFor = (seed: number): { wish: FreshWish; result: FreshResult } => {
  const wish = wishFor(seed);
  return { wish, result: freshChallenge(wish) };
};
