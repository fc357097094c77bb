import { describe, expect, it } from 'vitest';
import { forksOf } from '../../../../client/tablet/trying/forks.ts';
import { judge } from '../../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { FORK, RING, type Scene, STREET } from '../../odds/tracks.ts';

const tracesOn = ({ sheet, drawing }: Scene) =>
  judge(
    {
      version: 1,
      id: 'test',
      topic: 1,
      sentence: { en: 'Arrive.' },
      play: 'draw',
      kit: DEMO_KIT,
      sheet,
      starts: ['start'],
      goals: [{ id: 'g', formula: { kind: 'finish' }, must: true, weight: 1 }],
      limits: { time: 30 },
    },
    { version: 1, drawing },
    'live',
  ).traces;

describe('forksOf', () => {
  it('a fork: two ways, each with chance one half, one of them the run that is shown', () => {
    const traces = tracesOn(FORK);
    expect(traces).toHaveLength(2);
    for (const shown of traces) {
      const [fork, ...more] = forksOf(traces, shown);
      expect(more).toEqual([]);
      expect(fork!.ways.map(({ way, chance }) => [way, chance])).toEqual([
        ['left', 0.5],
        ['right', 0.5],
      ]);
      expect(fork!.ways.find(({ way }) => way === fork!.took)!.trace).toBe(shown);
      expect(new Set(fork!.ways.map(({ trace }) => trace))).toEqual(new Set(traces));
      // The robot comes from the left: its left is up the sheet, where y is smaller.
      expect(fork!.ways[0]!.heading.y).toBeCloseTo(-1, 1);
    }
  });

  it('crossings one after another: the chances at each add up to 1', () => {
    for (const scene of [STREET, RING]) {
      const traces = tracesOn(scene);
      for (const fork of forksOf(traces, traces[0]!)) {
        expect(fork.ways.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
      }
    }
  });

  it('choosing the other way of a fork leads to a run that takes it there', () => {
    const traces = tracesOn(STREET);
    const [first] = forksOf(traces, traces[0]!);
    const other = first!.ways.find(({ way }) => way !== first!.took)!;
    expect(forksOf(traces, other.trace)[0]!.took).toBe(other.way);
  });
});
