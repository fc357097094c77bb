import type { Seconds } from '../geometry/units.ts';
import type { Lead, TrackChain } from './track-chain.ts';

export interface Arrivals {
  /** Chance of having arrived within the time limit. */
  readonly share: number;
  /** Mean time of those; undefined where none arrives. */
  readonly meanTime: Seconds | undefined;
}

/** Chances are moved on in steps of this size; each is split between its two nearest steps, so means stay exact. */
const BIN: Seconds = 0.05;

/** When robots arrive, by carrying the chances of standing at each fork forward in time up to the limit. */
export function arrivalsWithin(chain: TrackChain, limit: Seconds): Arrivals {
  const bins = Math.floor(limit / BIN) + 1;
  const at = chain.forks.map(() => new Float64Array(bins + 1));
  let share = 0;
  let moment = 0;
  const lead = (to: Lead, from: Seconds, chance: number): void => {
    if (to.to === 'endless') return;
    const t = from + to.time;
    if (t > limit) return;
    if (to.to === 'fork') {
      spread(at[to.index]!, t, chance);
    } else if (chain.endings[to.index]!.arrived) {
      share += chance;
      moment += chance * t;
    }
  };
  lead(chain.first, 0, 1);
  for (let bin = 0; bin < bins; bin++) {
    chain.forks.forEach(({ branches }, i) => {
      const chance = at[i]![bin]!;
      if (chance === 0) return;
      for (const { leads } of branches) lead(leads, bin * BIN, chance / branches.length);
    });
  }
  return { share, meanTime: share > 0 ? moment / share : undefined };
}

function spread(chances: Float64Array, t: Seconds, chance: number): void {
  const place = t / BIN;
  const low = Math.floor(place);
  chances[low]! += chance * (low + 1 - place);
  chances[low + 1]! += chance * (place - low);
}
