import { describe, expect, it } from 'vitest';
import { arrivalsWithin } from '../../../shared/odds/arrivals.ts';
import type { Branch, Lead, TrackChain } from '../../../shared/odds/track-chain.ts';

const at = { x: 0, y: 0 };
const finish = { ending: 'finished', at, arrived: true } as const;
const stop = { ending: 'stopped', at, arrived: false } as const;
const toEnd = (index: number, time: number): Lead => ({ to: 'ending', index, time });
const toFork = (index: number, time: number): Lead => ({ to: 'fork', index, time });
const ways = ['left', 'straight', 'right'] as const;
const fork = (...leads: readonly Lead[]) => ({
  at,
  heading: { x: 1, y: 0 },
  branches: leads.map((lead, i): Branch => ({ way: ways[i]!, leads: lead })),
});

/** A ring of 5 s with one way out at its only junction: it is left in each round with probability 1/2. */
const RING: TrackChain = {
  first: toFork(0, 3),
  forks: [fork(toEnd(0, 2), toFork(0, 5))],
  endings: [finish],
};

describe('arrivalsWithin', () => {
  it('a way without forks arrives at its time, if that is in time', () => {
    const chain: TrackChain = { first: toEnd(0, 7.3), forks: [], endings: [finish] };
    expect(arrivalsWithin(chain, 8)).toEqual({ share: 1, meanTime: 7.3 });
    expect(arrivalsWithin(chain, 7)).toEqual({ share: 0, meanTime: undefined });
  });

  it('counts only endings in the berth', () => {
    const chain: TrackChain = {
      first: toFork(0, 1),
      forks: [fork(toEnd(0, 2), toEnd(1, 1))],
      endings: [finish, stop],
    };
    const { share, meanTime } = arrivalsWithin(chain, 60);
    expect(share).toBe(0.5);
    expect(meanTime).toBeCloseTo(3, 12);
  });

  it('follows a geometric distribution round a ring', () => {
    // Arrivals at 5, 10, 15, … with 1/2, 1/4, 1/8, …
    const { share, meanTime } = arrivalsWithin(RING, 21);
    expect(share).toBeCloseTo(1 - 1 / 16, 12);
    expect(meanTime! * share).toBeCloseTo(5 / 2 + 10 / 4 + 15 / 8 + 20 / 16, 9);
    // Without a limit the mean of 5 k with 2^-k is 10.
    expect(arrivalsWithin(RING, 400).meanTime).toBeCloseTo(10, 6);
  });

  it('splits times between its steps so that means stay exact', () => {
    const odd: TrackChain = {
      first: toFork(0, 1.013),
      forks: [fork(toFork(1, 1.0271), toFork(1, 2.0033)), fork(toEnd(0, 0.011), toEnd(0, 1.111))],
      endings: [finish],
    };
    const { share, meanTime } = arrivalsWithin(odd, 60);
    expect(share).toBeCloseTo(1, 12);
    expect(meanTime).toBeCloseTo(1.013 + (1.0271 + 2.0033) / 2 + (0.011 + 1.111) / 2, 9);
  });

  it('whoever goes round for ever never arrives', () => {
    const chain: TrackChain = {
      first: toFork(0, 1),
      forks: [fork({ to: 'endless' }, toEnd(0, 1))],
      endings: [finish],
    };
    expect(arrivalsWithin(chain, 60).share).toBe(0.5);
    expect(arrivalsWithin({ first: { to: 'endless' }, forks: [], endings: [] }, 60).share).toBe(0);
  });
});
