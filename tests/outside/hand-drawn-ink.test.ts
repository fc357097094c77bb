import { describe, expect, it } from 'vitest';
import { TOLERANCES } from '../../shared/run/model.ts';
import { Pen } from '../sweeps/pen.ts';
import { merged, OTHER_SEED, percentOf, SEED } from '../sweeps/shares.ts';
import { outcomes, passes, SET_UP, SWEEP_KIT } from '../sweeps/trial.ts';

/**
 * The table in the model's description was made with ink where it was meant to be, but for one row: corners
 * with a hand wobble of 0.35 mm and lines up to 0.45 mm wider or narrower, at 15, 35 and 85 mm/s. Source: a
 * separate, older program with the same constants, which drew its wobble into the ink, four drawings a value.
 */
const KIT = {
  ...SWEEP_KIT,
  robot: { ...SWEEP_KIT.robot, paces: { creep: 15, steady: 35, brisk: 60, fast: 85 } },
};
const INK = 0.35 / TOLERANCES.inkWobble;

function clean(interior: number, pace: 'creep' | 'steady' | 'fast'): number {
  const found = [-1, 1].map((side) => {
    const pen = new Pen()
      .to(40, 125)
      .straight(100)
      .turn(side * (180 - interior));
    const [place, heading] = [pen.ahead(48), pen.heading];
    return outcomes(
      {
        ...SET_UP,
        kit: KIT,
        ink: INK,
        pace,
        drawing: pen.straight(75).drawing(),
        start: { x: 60, y: 125, heading: 0 },
        seconds: 160 / KIT.robot.paces[pace] + 8,
        outcome: ({ robot, junctions }) => {
          if (passes(robot, place, heading)) return junctions > 0 ? 'junction' : 'clean';
          return robot.x < 60 && robot.cos < -0.5 ? 'back' : undefined;
        },
      },
      100,
      side > 0 ? SEED : OTHER_SEED,
    );
  });
  return percentOf(merged(found), 'clean');
}

describe('a corner of 50 degrees in hand-drawn ink', () => {
  // Two samples of 200 of which nine in ten succeed differ by less than 9 in 997 of 1000 cases; four
  // drawings instead of one a robot make the stated shares less sure still.
  it.each([
    ['creep', 89],
    ['steady', 97],
    ['fast', 97],
  ] as const)('at pace %s is passed clean by about %i of 100', (pace, stated) => {
    expect(Math.abs(clean(50, pace) - stated)).toBeLessThanOrEqual(10);
  });

  it('is no longer passed clean by every robot, as it is without', () => {
    expect(clean(50, 'creep')).toBeLessThan(100);
  });
});
