import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { parOf } from '../../shared/search/par.ts';
import { type Figure, timesOf } from './figure.ts';

const ROUNDS = 2;
/** s. So much a ready challenge may take. */
const MOST = 2;

/** Processor time until the par of each ready challenge is known, the slowest of all; and how many pars are known. */
export function parFigures(): Figure[] {
  const drawn = readyChallenges(DEMO_KIT).flatMap((one) =>
    one.playable && one.challenge.play !== 'predict' ? [one.challenge] : [],
  );
  const slowest = Math.max(...drawn.map((one) => Math.min(...timesOf(ROUNDS, () => parOf(one))))) / 1000;
  const known = drawn.filter((one) => parOf(one).kind === 'par').length;
  return [
    { name: 'par-of-every-ready-challenge', value: slowest, unit: 's', target: { at: 'most', value: MOST } },
    { name: 'pars-known', value: known, unit: 'pars', target: { at: 'least', value: drawn.length } },
  ];
}
