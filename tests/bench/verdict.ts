import { judge } from '../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type Figure, percentile } from './figure.ts';

const WARM_UP = 5;
const ROUNDS = 25;
/** ms. So much an entry may take on one core. */
const MOST = 40;

/** Time of a whole verdict, from drawing to points, over the designs of all ready challenges. */
export function verdictFigures(): Figure[] {
  const cases = readyChallenges(DEMO_KIT).flatMap((one) => {
    if (!one.playable) return [];
    const { challenge } = one;
    const designs = [challenge.model, challenge.begin].filter((design) => design !== undefined);
    return designs.map((design) => ({ challenge, design }));
  });
  const times: number[] = [];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    for (const { challenge, design } of cases) {
      const began = performance.now();
      judge(challenge, design, 'entry');
      if (round >= 0) times.push(performance.now() - began);
    }
  }
  return [
    { name: 'verdict-median', value: percentile(times, 0.5), unit: 'ms' },
    { name: 'verdict-p95', value: percentile(times, 0.95), unit: 'ms', target: { at: 'most', value: MOST } },
  ];
}
