import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { examine } from '../../shared/search/examine.ts';
import { coreSeconds, type Figure, median } from './figure.ts';

/**
 * How long it takes to know whether a challenge can be met: by the maker's own design, and without it by the
 * search alone. Processor time, ms, of every ready challenge that has goals.
 */
export function metFigures(): Figure[] {
  const all = readyChallenges(DEMO_KIT).flatMap((each) =>
    each.playable && each.challenge.goals.length > 0 ? [each] : [],
  );
  const timed = all.map(({ key, challenge }) => {
    const { model: _, ...bare } = challenge;
    return { key, own: timeUntil(challenge, 'own'), search: timeUntil(bare, 'par') };
  });
  const worst = timed.reduce((a, b) => (b.search > a.search ? b : a));
  return [
    { name: 'met-by-own-worst', value: Math.max(...timed.map(({ own }) => own)), unit: 'ms', target: SECOND },
    { name: 'met-by-search-median', value: median(timed.map(({ search }) => search)), unit: 'ms' },
    { name: `met-by-search-worst-${worst.key}`, value: worst.search, unit: 'ms', target: SECOND },
  ];
}

const SECOND = { at: 'most', value: 1000 } as const;

function timeUntil(challenge: Parameters<typeof examine>[0], found: 'own' | 'par'): number {
  const began = coreSeconds();
  for (const piece of examine(challenge)) if (found in piece) break;
  return (coreSeconds() - began) * 1000;
}
