import { describe, expect, test } from 'vitest';
import type { Steadiness } from '../../../shared/documents/outlook.ts';
import type { RunEvent } from '../../../shared/documents/trace.ts';
import { dependsOnRobots, dependsOnRuns } from '../../../shared/goals/evaluate.ts';
import { at, CONTEXT, measured, run } from './hand-made.ts';

const end = at.end('finished');

const junction = (by: 'mark' | 'chance' | 'straight'): RunEvent => ({
  kind: 'junction',
  t: 1,
  x: 0,
  y: 0,
  way: 0,
  pace: 'steady',
  took: 'left',
  by,
  arms: ['left', 'straight'],
});

const robots = (same: number, of = 20) => {
  const steadiness: Steadiness = {
    weather: 'breezy',
    same,
    of,
    interval: { low: 0, high: 1 },
    strays: [],
  };
  return { ...CONTEXT, steadiness };
};

describe('G-decided', () => {
  test('marks and the kit’s own rule decide: nothing is left to chance', () => {
    const decided = run([junction('mark'), junction('straight'), end]);
    expect(measured({ kind: 'decided' }, [decided])).toMatchObject({ met: true, margin: 0, unit: 'count' });
  });
  test('two junctions that are left open are two too many, in the run that meets most', () => {
    const once = run([junction('chance'), end]);
    const twice = run([junction('chance'), junction('mark'), junction('chance'), end]);
    expect(measured({ kind: 'decided' }, [once, twice])).toMatchObject({ met: false, margin: -2, run: 1 });
  });
  test('the opposite wish: one open junction is enough', () => {
    const wish = { kind: 'not', of: { kind: 'decided' } } as const;
    expect(measured(wish, [run([junction('chance'), end])])).toMatchObject({ met: true, margin: 0 });
    expect(measured(wish, [run([end])])).toMatchObject({ met: false, margin: -1 });
  });
});

describe('G-steadiness', () => {
  const wish = { kind: 'steadiness', least: 0.9 } as const;
  test('18 of 20 robots are exactly 0.9', () => {
    expect(measured(wish, [run([end])], robots(18))).toMatchObject({
      met: true,
      margin: 0,
      unit: 'ratio',
      by: 'steadiness',
    });
  });
  test('17 of 20 lack one robot, 20 of 20 have two to spare', () => {
    expect(measured(wish, [run([end])], robots(17))).toMatchObject({ met: false, margin: -0.05 });
    expect(measured(wish, [run([end])], robots(20))).toMatchObject({ met: true, margin: 0.1 });
  });
  test('while no robots were driven it is open, whatever it stands beside', () => {
    expect(measured(wish, [run([end])])).toMatchObject({ met: false, open: true });
    const both = { kind: 'and', of: [{ kind: 'finish' }, { kind: 'not', of: wish }] } as const;
    expect(measured(both, [run([end])])).toMatchObject({ met: false, open: true });
    expect(dependsOnRobots(both)).toBe(true);
  });
  test('beside a margin in mm: two robots are nearer to failing than 30 mm', () => {
    const both = { kind: 'and', of: [{ kind: 'finish' }, wish] } as const;
    // 30 mm are three steps of 10, 0.1 are two of 0.05.
    const deep = run([end], { finish: -30 });
    expect(measured(both, [deep], robots(20))).toMatchObject({ by: 'steadiness', margin: 0.1 });
    const rim = run([end], { finish: -12 });
    expect(measured(both, [rim], robots(20))).toMatchObject({ by: 'finish', margin: 12 });
  });
  test('looks at no run, and runs look at no robots', () => {
    expect(dependsOnRuns(wish)).toBe(false);
    expect(dependsOnRobots({ kind: 'decided' })).toBe(false);
    expect(dependsOnRobots({ kind: 'lasting', of: { kind: 'finish' }, how: 'at-least', time: 1 })).toBe(
      false,
    );
  });
});
