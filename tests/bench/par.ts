import type { Challenge } from '../../shared/documents/challenge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { examine } from '../../shared/search/examine.ts';
import { parOf } from '../../shared/search/par.ts';
import { type Figure, timesOf } from './figure.ts';

const ROUNDS = 2;
/** s. So much a ready challenge may take; and so much until it is known whether it can be met. */
const MOST = 2;
const MOST_UNTIL_KNOWN = 1;

/** Looks until the maker's own design or the search has met the challenge, or until there is a proof. */
function untilKnown(challenge: Challenge): void {
  for (const { own, par } of examine(challenge)) if (own?.met || par) return;
}

/**
 * Processor time until it is known of each ready challenge that it can be met, and until its par is, the slowest
 * of all; and how many pars are known.
 */
export function parFigures(): Figure[] {
  const drawn = readyChallenges(DEMO_KIT).flatMap((one) =>
    one.playable && one.challenge.play !== 'predict' ? [one.challenge] : [],
  );
  const slowest = Math.max(...drawn.map((one) => Math.min(...timesOf(ROUNDS, () => parOf(one))))) / 1000;
  const answer = Math.max(...drawn.map((one) => Math.min(...timesOf(ROUNDS, () => untilKnown(one))))) / 1000;
  const known = drawn.filter((one) => parOf(one).kind === 'par').length;
  return [
    { name: 'par-of-every-ready-challenge', value: slowest, unit: 's', target: { at: 'most', value: MOST } },
    { name: 'can-it-be-met', value: answer, unit: 's', target: { at: 'most', value: MOST_UNTIL_KNOWN } },
    { name: 'pars-known', value: known, unit: 'pars', target: { at: 'least', value: drawn.length } },
  ];
}
