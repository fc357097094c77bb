import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN, type Line } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { parOf } from '../../../shared/search/par.ts';
import { bandsOf, KITS, wordFor } from '../../kits.ts';

const Y = 100;
const RIM = 12;

const straight = (id: string, from: number, to: number): Line => ({
  id,
  width: 5,
  from: { x: from, y: Y },
  pieces: [{ to: { x: to, y: Y }, bulge: 0 }],
});

/** Straight lines from a berth at x = 40 towards another one, which the robot is to reach. */
const towards = (kit: Kit, lines: Line[], finish: number): Challenge => ({
  version: 1,
  id: 'straight-on',
  topic: 1,
  sentence: { en: 'Reach the other berth.' },
  play: 'fill-in',
  kit,
  sheet: {
    w: 420,
    h: 210,
    start: { name: { en: 'Pier' }, at: { x: 40, y: Y }, heading: 0, r: RIM },
    finish: { name: { en: 'Quay' }, at: { x: finish, y: Y }, heading: 0, r: RIM },
    gates: [],
    areas: [],
    keepOut: [],
    given: { lines, marks: [] },
  },
  starts: ['start'],
  goals: [{ id: 'finish', formula: { kind: 'finish' }, must: true, weight: 1 }],
  limits: { time: 60 },
});

describe.each(KITS)('parOf with the kit $id', (kit) => {
  test.each([4, 6, 8])('a gap of %d mm that the robot drives over: nothing has to be drawn', (gap) => {
    const challenge = towards(kit, [straight('a', 25, 140), straight('b', 140 + gap, 260)], 240);
    const { verdict } = judge(challenge, EMPTY_DESIGN, 'entry');
    expect([verdict.met, verdict.steadiness?.same]).toEqual([true, 20]);
    expect(parOf(challenge)).toMatchObject({ kind: 'par', cost: 0, design: EMPTY_DESIGN });
  });

  test('a gap in the line, and a goal that nothing found meets: open, not impossible', () => {
    const challenge = towards(kit, [straight('a', 25, 140), straight('b', 146, 260)], 240);
    const goals = [...challenge.goals, { ...challenge.goals[0]!, id: 'soon', formula: IN_A_SECOND }];
    expect(parOf({ ...challenge, goals })).toEqual({ kind: 'open', searched: 0 });
  });

  test('the same goal on an unbroken line: impossible', () => {
    const challenge = towards(kit, [straight('a', 25, 260)], 240);
    const goals = [{ ...challenge.goals[0]!, formula: IN_A_SECOND }];
    const limits = { ...challenge.limits, marks: 1 };
    expect(parOf({ ...challenge, goals, limits })).toMatchObject({ kind: 'impossible' });
  });
});

/** No sample robot drives 188 mm from berth to rim in a second. */
const IN_A_SECOND = { kind: 'time', from: 0, to: 1 } as const;

describe('parOf, where the finish begins about where the line ends', () => {
  const END = 380;
  const beyond = (off: number): Challenge => towards(DEMO_KIT, [straight('a', 25, END)], END + RIM + off);
  const faster = (at: number) => ({
    id: `mark-${at}`,
    line: 'a',
    at,
    bands: bandsOf(DEMO_KIT, wordFor(DEMO_KIT, 'pace-by', { steps: 1 })),
  });
  // A fast robot halts further on than a steady one.
  const fast: Design = { version: 1, drawing: { lines: [], marks: [faster(80), faster(150)] } };

  test('half a millimetre further: marks may bring a robot there, so open', () => {
    const { verdict } = judge(beyond(0.5), fast, 'entry');
    expect(verdict.met).toBe(true);
    expect(verdict.steadiness?.same).toBeGreaterThanOrEqual(19);
    expect(parOf(beyond(0.5))).toEqual({ kind: 'open', searched: 0 });
  });

  test('a maker’s design that gets there is the par', () => {
    const model = { ...beyond(0.5), model: fast };
    expect(parOf(model)).toMatchObject({ kind: 'par', cost: 40, proof: 'model', design: fast });
  });

  test('ten millimetres further: out of reach', () => {
    expect(parOf(beyond(10))).toMatchObject({
      kind: 'impossible',
      why: [{ code: 'out-of-reach', goal: 'finish', place: { en: 'Quay' } }],
    });
  });
});
