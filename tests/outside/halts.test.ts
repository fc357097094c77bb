import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { drive } from '../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import type { Pen } from '../sweeps/pen.ts';
import { fromStart, SHEET } from '../unit/odds/tracks.ts';

/** Where the axle halts along a straight line from x = 30. */
function haltsAt(pen: Pen, startPace: 'creep' | 'steady' | 'brisk' | 'fast'): number {
  const kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, startPace } };
  const world = worldOf(layOut(SHEET, pen.drawing()), SHEET, kit);
  return drive(world, { ...UNDISTURBED, limit: 30 }).events.at(-1)!.x - 30;
}

// Source: the model's description, from a separate, older program. It rounds to half a millimetre, and
// counts a line as lost 0.2 mm earlier.
describe('a robot halts', () => {
  it.each([
    ['creep', -2],
    ['fast', 1.5],
  ] as const)('at a loose end, coming at %s, %f mm past the end of the line', (pace, stated) => {
    const halt = haltsAt(fromStart().straight(200), pace) - 200;
    expect(Math.abs(halt - stated)).toBeLessThan(1);
  });

  it.each([
    ['creep', 13],
    ['fast', 55],
  ] as const)('told to park, at %s, %i mm past the mark', (pace, stated) => {
    const lengths = [5.5, 5.5, 5.5];
    const word = DEMO_KIT.chart.find(({ action }) => action.kind === 'park')!.word;
    const halt = haltsAt(fromStart().straight(250).mark(80, word, lengths), pace);
    expect(Math.abs(halt - (80 + word.length * 5.5) - stated)).toBeLessThan(2);
  });

  it('told to park, the further past the mark the faster it comes', () => {
    const word = DEMO_KIT.chart.find(({ action }) => action.kind === 'park')!.word;
    const pen = fromStart().straight(250).mark(80, word, [5.5, 5.5, 5.5]);
    const halts = (['creep', 'steady', 'brisk', 'fast'] as const).map((pace) => haltsAt(pen, pace));
    expect(halts).toEqual([...halts].sort((a, b) => a - b));
  });
});
