import type { Challenge } from '../documents/challenge.ts';
import type { Difficulty } from '../documents/fresh.ts';
import type { Misread } from '../documents/misread.ts';
import type { ChallengeProblem } from '../documents/refusal.ts';
import { checkChallenge } from '../judge/check-challenge.ts';
import { type Confirmed, confirm } from './confirm.ts';
import { difficultyOf } from './difficulty.ts';
import { misreadOf } from './misread.ts';
import { type ParResult, parOf } from './par.ts';

/** What is known of a challenge that somebody is building. */
export interface Examined {
  /** Why it can't be played yet; then nothing else is looked for. */
  readonly problems: readonly ChallengeProblem[];
  /** What the maker's own design comes to, where there is one. */
  readonly own?: Confirmed;
  readonly par?: ParResult;
  readonly difficulty?: Difficulty;
  readonly misread?: readonly Misread[];
}

/**
 * Looks at a challenge in steps, the quickest first, and says after each what it has found: whether it may be
 * played at all, whether the maker's own design meets it, par or a proof, how hard it is, and what those
 * would draw who misread marks. `most` as for `parOf`.
 */
export function* examine(challenge: Challenge, most?: number): Generator<Partial<Examined>> {
  const problems = checkChallenge(challenge);
  yield { problems };
  if (problems.length > 0) return;
  if (challenge.model) yield { own: confirm(challenge, challenge.model) };
  const par = parOf(challenge, most === undefined ? {} : { most });
  yield { par };
  if (par.kind !== 'par') return;
  yield { difficulty: difficultyOf(challenge, par.design, par.searched) };
  let misread: readonly Misread[] = [];
  for (const one of misreadOf(challenge, par.design)) {
    misread = [...misread, one];
    yield { misread };
  }
}
