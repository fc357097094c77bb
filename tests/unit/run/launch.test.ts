import { describe, expect, it } from 'vitest';
import { USUAL_TOLERANCES } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { withProfile } from '../../../shared/kit/versions.ts';
import { launch } from '../../../shared/run/launch.ts';
import { machineOf } from '../../../shared/run/machine.ts';
import { OPTICS } from '../../../shared/run/robot.ts';
import { type DriveOptions, UNDISTURBED } from '../../../shared/run/world.ts';
import { SHEET } from './worlds.ts';

const MACHINE = machineOf(DEMO_KIT);
const launched = (options: Partial<DriveOptions>) =>
  launch(MACHINE, SHEET, SHEET.start, { ...UNDISTURBED, ...options });

/** What a sensor reads of a reflectance: 0 is paper, 1 is line. */
function reading(robot: ReturnType<typeof launched>, channel: number, reflectance: number): number {
  const [gain, base, white, perSpan] = robot.optics.subarray(OPTICS * channel);
  return (white! - (gain! * reflectance * 255 + base!)) * perSpan!;
}

describe('launch', () => {
  it('puts the undisturbed robot exactly into its berth, with perfect sensors', () => {
    const robot = launched({});
    expect([robot.x, robot.y, robot.cos, robot.sin]).toEqual([30, 105, 1, 0]);
    for (let channel = 0; channel < 8; channel++) {
      expect(reading(robot, channel, 0.85)).toBeCloseTo(0, 9);
      expect(reading(robot, channel, 0.06)).toBeCloseTo(1, 9);
    }
  });

  it('makes the same robot worse in worse weather', () => {
    const calm = launched({ seed: 5, disturbance: 1 });
    const stormy = launched({ seed: 5, disturbance: 3 });
    expect(stormy.y - 105).toBeCloseTo(3 * (calm.y - 105), 9);
    expect(stormy.die).toEqual(calm.die);
  });

  it('spreads robots by the stated tolerances', () => {
    const aside = Array.from({ length: 2000 }, (_, i) => launched({ seed: i + 1, disturbance: 1 }).y - 105);
    const deviation = Math.sqrt(aside.reduce((sum, y) => sum + y * y, 0) / aside.length);
    // 0.8 mm; the deviation of 2000 values is known to 1.6 %, four times that.
    expect(Math.abs(deviation / 0.8 - 1)).toBeLessThan(0.064);
  });

  it('spreads robots of a kit with tolerances of its own by those, the same die as ever', () => {
    const tolerances = { ...USUAL_TOLERANCES, aside: 2 * USUAL_TOLERANCES.aside };
    const other = machineOf(withProfile(DEMO_KIT, { ...DEMO_KIT.robot, tolerances }));
    const options = { ...UNDISTURBED, seed: 5, disturbance: 1 };
    const [usual, own] = [MACHINE, other].map((machine) => launch(machine, SHEET, SHEET.start, options));
    expect(own!.y - 105).toBeCloseTo(2 * (usual!.y - 105), 9);
    expect(own!.scaleLeft).toBe(usual!.scaleLeft);
  });

  it('reads darker than it is in less light than it was calibrated in', () => {
    const dimmed = launched({ ambient: { ...UNDISTURBED.ambient, calibrated: 1, now: 0.5 } });
    // By hand: white 0.85·1.25 + 0.12 = 1.1825, black 0.195; now 0.85·1.125 + 0.06 = 1.01625.
    expect(reading(dimmed, 2, 0.85)).toBeCloseTo((1.1825 - 1.01625) / (1.1825 - 0.195), 9);
  });

  it('colours the light of the colour channels alone', () => {
    const ambient = { calibrated: 0, now: 1, tint: { red: 2, green: 1, blue: 0 } };
    const robot = launched({ ambient });
    expect(reading(robot, 7, 0.85)).toBeCloseTo(0, 9);
    expect(reading(robot, 5, 0.85)).toBeLessThan(reading(robot, 2, 0.85));
  });
});
