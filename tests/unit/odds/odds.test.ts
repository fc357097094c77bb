import { describe, expect, it } from 'vitest';
import type { Direction } from '../../../shared/geometry/piece.ts';
import { oddsFrom } from '../../../shared/odds/odds.ts';
import type { Branch, Fork, Lead, TrackChain } from '../../../shared/odds/track-chain.ts';

/** Chains written by hand, so that every chance can be worked out on paper. */

const ending = (kind: 'finished' | 'stopped' | 'lost', arrived = kind === 'finished') =>
  ({ ending: kind, at: { x: 7, y: 9 }, arrived }) as const;
const ENDINGS = [ending('finished'), ending('stopped'), ending('lost')] as const;
const [FINISH, STOP, LOST] = [0, 1, 2].map((index): Lead => ({ to: 'ending', index, time: 1 })) as [
  Lead,
  Lead,
  Lead,
];
const ENDLESS: Lead = { to: 'endless' };
const toFork = (index: number): Lead => ({ to: 'fork', index, time: 1 });
const WAYS = ['left', 'straight', 'right'] as const;

interface Place {
  readonly x?: number;
  readonly y?: number;
  readonly heading?: Direction;
  readonly ways?: readonly (typeof WAYS)[number][];
}

const fork = (
  leads: readonly Lead[],
  { x = 0, y = 0, heading = { x: 1, y: 0 }, ways = WAYS }: Place = {},
): Fork => ({
  at: { x, y },
  heading,
  branches: leads.map((lead, i): Branch => ({ way: ways[i]!, leads: lead })),
});

const solved = (forks: readonly Fork[], first: Lead = toFork(0)) =>
  oddsFrom({ first, forks, endings: ENDINGS } satisfies TrackChain, 'track', 'finish', 60);

describe('oddsFrom', () => {
  it('gives endings with their chance, the likeliest first, and none that never comes', () => {
    const odds = solved([fork([STOP, FINISH, STOP])]);
    expect(odds).toMatchObject({
      start: 'finish',
      basis: 'track',
      finish: expect.closeTo(1 / 3, 12),
      endless: 0,
    });
    expect(odds.endings).toEqual([
      { ending: 'stopped', at: { x: 7, y: 9 }, probability: expect.closeTo(2 / 3, 12) },
      { ending: 'finished', at: { x: 7, y: 9 }, probability: expect.closeTo(1 / 3, 12) },
    ]);
    expect(odds.inTime).toEqual({
      limit: 60,
      finish: expect.closeTo(1 / 3, 12),
      meanTime: expect.closeTo(2, 9),
    });
  });

  it('counts every way to arrive, however the run ends then', () => {
    const endings = [ending('finished'), ending('stopped'), ending('lost', true)];
    const chain = { first: toFork(0), forks: [fork([FINISH, STOP, LOST])], endings };
    expect(oddsFrom(chain, 'runs', 'start', 60)).toMatchObject({
      finish: expect.closeTo(2 / 3, 12),
      open: [{ arms: [{ finish: 1 }, { finish: 0 }, { finish: 1 }] }],
    });
  });

  it('without a fork has nothing open, and without an arrival no mean time', () => {
    const odds = solved([], LOST);
    expect(odds.open).toEqual([]);
    expect(odds.endings).toMatchObject([{ ending: 'lost', probability: 1 }]);
    expect(odds.inTime).toEqual({ limit: 60, finish: 0 });
    expect(solved([], ENDLESS)).toMatchObject({ endless: 1, endings: [], finish: 0 });
  });

  it('each way of an open junction is worth what follows it', () => {
    const odds = solved([fork([FINISH, toFork(1), ENDLESS]), fork([STOP, FINISH], { x: 50, y: 20 })]);
    expect(odds.open).toHaveLength(2);
    expect(odds.open[0]).toEqual({
      at: { x: 0, y: 0 },
      heading: { x: 1, y: 0 },
      met: 1,
      arms: [
        { way: 'left', chance: 1 / 3, finish: 1 },
        { way: 'straight', chance: 1 / 3, finish: 1 / 2 },
        { way: 'right', chance: 1 / 3, finish: 0 },
      ],
    });
    expect(odds.open[1]).toMatchObject({ at: { x: 50, y: 20 }, met: expect.closeTo(1 / 3, 12) });
    expect(odds.endless).toBeCloseTo(1 / 3, 12);
  });
});

describe('forks that differ only in what the robot has in mind', () => {
  /** Two of three ways lead to the first of two forks, one to the second; they lead to opposite ends. */
  const second = (one: Place, other: Place, leads: readonly Lead[] = [STOP, FINISH]) =>
    solved([
      fork([toFork(1), toFork(1), toFork(2)], { x: -200 }),
      fork([FINISH, STOP], one),
      fork(leads, other),
    ]).open.slice(1);
  const together = (one: Place, other: Place, leads?: readonly Lead[]) =>
    second(one, other, leads).length === 1;

  it('are one junction, each as heavy as it is often met', () => {
    const [junction, ...others] = second({ x: 100 }, { x: 104 });
    expect(others).toEqual([]);
    expect(junction).toMatchObject({ at: { x: 100, y: 0 }, met: expect.closeTo(1, 12) });
    expect(junction!.arms).toEqual([
      { way: 'left', chance: 1 / 2, finish: expect.closeTo(2 / 3, 12) },
      { way: 'straight', chance: 1 / 2, finish: expect.closeTo(1 / 3, 12) },
    ]);
  });

  it('lie within 8 mm, in either direction', () => {
    expect(together({ x: 100 }, { x: 108 })).toBe(true);
    expect(together({ x: 108 }, { x: 100 })).toBe(true);
    expect(together({ x: 100 }, { x: 108.1 })).toBe(false);
    expect(together({ y: 100 }, { y: 108.1 })).toBe(false);
  });

  it('are come to in one direction, within some 25 degrees', () => {
    const heading = (degrees: number): Place => ({
      heading: { x: Math.cos((degrees * Math.PI) / 180), y: Math.sin((degrees * Math.PI) / 180) },
    });
    expect([0, 60, 90, 200].map((at) => together(heading(at), heading(at + 25)))).toEqual(
      Array(4).fill(true),
    );
    expect([0, 60, 90, 200].map((at) => together(heading(at), heading(at + 27)))).toEqual(
      Array(4).fill(false),
    );
    expect(together(heading(0), heading(180))).toBe(false);
    expect(together(heading(90), heading(-90))).toBe(false);
  });

  it('have the same ways', () => {
    expect(together({}, {}, [STOP, FINISH, STOP])).toBe(false);
    expect(together({}, { ways: ['left', 'right'] })).toBe(false);
    expect(together({}, { ways: ['straight', 'left'] })).toBe(false);
    expect(together({ ways: ['left', 'right'] }, { ways: ['left', 'right'] })).toBe(true);
  });

  it('are worth nothing, but known, where they are met only by going round for ever', () => {
    const odds = solved([
      fork([FINISH, toFork(1)], { x: -200 }),
      fork([toFork(2), toFork(2)], { x: 100 }),
      fork([toFork(1), toFork(1)], { x: 102 }),
    ]);
    expect(odds.endless).toBe(0.5);
    expect(odds.open[1]).toMatchObject({ met: 0.5, arms: [{ finish: 0 }, { finish: 0 }] });
    expect(odds.open).toHaveLength(2);
  });
});
