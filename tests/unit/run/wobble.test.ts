import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { PIXELS_PER_MM } from '../../../shared/run/coverage.ts';
import { launch } from '../../../shared/run/launch.ts';
import { machineOf } from '../../../shared/run/machine.ts';
import { TOLERANCES } from '../../../shared/run/model.ts';
import { lookAside, strayHere } from '../../../shared/run/wobble.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { SHEET } from './worlds.ts';

const machine = machineOf(DEMO_KIT);
const robot = (seed: number, ink = 1) =>
  launch(machine, SHEET, SHEET.start, { ...UNDISTURBED, seed, disturbance: 1, ink });

/** Offset in mm under a bar whose middle is at a place, looking along +x. */
function strayAt(seed: number, x: number, y: number) {
  const r = Object.assign(robot(seed), { x: x - DEMO_KIT.robot.barAhead, y, cos: 1, sin: 0 });
  strayHere(r, DEMO_KIT.robot.barAhead, DEMO_KIT.robot.sensorPitch);
  return {
    x: r.strayU / PIXELS_PER_MM,
    y: r.strayV / PIXELS_PER_MM,
    skewX: r.skewU / PIXELS_PER_MM,
    skewY: r.skewV / PIXELS_PER_MM,
  };
}

describe('hand-drawn ink', () => {
  it('strays by 0.3 mm on each axis, root mean square over sheet and robots', () => {
    const squares = { x: 0, y: 0 };
    let count = 0;
    for (let seed = 1; seed <= 40; seed++) {
      for (let i = 0; i < 200; i++) {
        const stray = strayAt(seed, 10 + ((i * 37) % 270), 10 + ((i * 53) % 190));
        squares.x += stray.x * stray.x;
        squares.y += stray.y * stray.y;
        count++;
      }
    }
    // About 20 places a robot are independent: 800 in all, so the deviation is 2.5 % of the size.
    for (const square of [squares.x, squares.y]) {
      expect(Math.abs(Math.sqrt(square / count) - TOLERANCES.inkWobble)).toBeLessThan(0.03);
    }
  });

  it('is found at the same place again, and differs from robot to robot', () => {
    expect(strayAt(3, 120.4, 77.7)).toEqual(strayAt(3, 120.4, 77.7));
    expect(strayAt(4, 120.4, 77.7)).not.toEqual(strayAt(3, 120.4, 77.7));
  });

  it('changes smoothly, by what it says of the next sensor', () => {
    // Looking along +x the next sensor to the right is one pitch further down. A cell is 10 mm high.
    const here = strayAt(5, 104, 102);
    const right = strayAt(5, 104, 102 + DEMO_KIT.robot.sensorPitch);
    expect(here.x + here.skewX).toBeCloseTo(right.x, 10);
    expect(here.y + here.skewY).toBeCloseTo(right.y, 10);
    const across = [strayAt(5, 109.999, 102), strayAt(5, 110.001, 102)];
    expect(Math.abs(across[0]!.x - across[1]!.x)).toBeLessThan(0.001);
  });

  it('is no matter of the undisturbed robot, nor of calm ink', () => {
    expect(robot(0)).toMatchObject({ wobble: 0, widen: 0, barScale: 1 });
    expect(robot(7, 0)).toMatchObject({ wobble: 0, widen: 0, barScale: 1 });
  });

  it('makes lines up to 0.45 mm wider or narrower in calm weather, and moves no other fault', () => {
    const widths = Array.from({ length: 200 }, (_, i) => 2 * robot(i + 1).widen);
    expect(Math.max(...widths)).toBeLessThanOrEqual(TOLERANCES.inkWidth);
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(-TOLERANCES.inkWidth);
    // Even over 0.9 mm: mean 0 and deviation 0.26, of 200 robots 0.018.
    expect(Math.abs(widths.reduce((a, b) => a + b, 0) / 200)).toBeLessThan(0.08);
    const { wobble, wobbleSeed, widen, barScale, ...rest } = robot(9);
    expect({ ...robot(9, 0), wobble, wobbleSeed, widen, barScale }).toEqual({
      ...rest,
      wobble,
      wobbleSeed,
      widen,
      barScale,
    });
  });
});

describe('lookAside', () => {
  it('looks towards a wider line, and not past its middle', () => {
    expect(lookAside(4, 0, 0.2)).toBe(-0.2);
    expect(lookAside(-4, 0, 0.2)).toBe(0.2);
    expect(lookAside(1.1, 1, 0.2)).toBeCloseTo(-0.1, 12);
    expect(lookAside(0.9, 1, 0.2)).toBeCloseTo(0.1, 12);
  });

  it('looks away from a narrower line', () => {
    expect(lookAside(4, 1, -0.2)).toBe(0.2);
    expect(lookAside(0, 1, -0.2)).toBe(-0.2);
  });
});
