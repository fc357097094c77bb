import { describe, expect, it } from 'vitest';
import { finishOrder } from '../../../../client/parts/finish-order.ts';
import { runWith } from './runs.ts';

const arrived = (finish: number) => [runWith({ finish, end: finish + 0.5 })];

describe('finishOrder', () => {
  it('counts places by arrival, in the order of what is given', () => {
    const order = finishOrder([arrived(8.2), arrived(7), arrived(9)]);
    expect(order.map(({ place, at }) => [place, at])).toEqual([
      [2, 8.2],
      [1, 7],
      [3, 9],
    ]);
  });

  it('equal tenths share a place and the next one is left out (standard competition ranking)', () => {
    expect(finishOrder([arrived(7.01), arrived(7.04), arrived(7.1)]).map(({ place }) => place)).toEqual([
      1, 1, 3,
    ]);
  });

  it('who does not arrive has no place, and says when and how it ended', () => {
    const lost = [runWith({ ending: 'lost', end: 4 })];
    expect(finishOrder([lost, arrived(7), []])).toEqual([
      { place: null, at: 4, ending: 'lost' },
      { place: 1, at: 7, ending: 'finished' },
      { place: null, at: 0, ending: null },
    ]);
  });

  it('two robots have arrived when the last one has; one that does not keeps both from it', () => {
    const both = [...arrived(5), ...arrived(8)];
    const one = [...arrived(3), runWith({ start: 'finish', ending: 'off-paper', end: 6 })];
    expect(finishOrder([both, one, arrived(7)])).toEqual([
      { place: 2, at: 8, ending: 'finished' },
      { place: null, at: 6, ending: 'off-paper' },
      { place: 1, at: 7, ending: 'finished' },
    ]);
  });
});
