import { describe, expect, it } from 'vitest';
import { pathOf } from '../../../shared/geometry/path.ts';
import { swathBox } from '../../../shared/geometry/swath.ts';

/** Boxes around a strip, worked out by hand. */

const at = (x: number, y: number) => ({ x, y });
const straight = pathOf({ from: at(0, 50), pieces: [{ to: at(100, 50), bulge: 0 }] });
/** A half circle of radius 40 around (150, 100), over its top at y = 60. */
const arch = pathOf({ from: at(110, 100), pieces: [{ to: at(190, 100), bulge: 1 }] });

function expectBox(box: ReturnType<typeof swathBox>, minX: number, minY: number, maxX: number, maxY: number) {
  expect(box.minX).toBeCloseTo(minX, 9);
  expect(box.minY).toBeCloseTo(minY, 9);
  expect(box.maxX).toBeCloseTo(maxX, 9);
  expect(box.maxY).toBeCloseTo(maxY, 9);
}

describe('swathBox', () => {
  it('of a level straight is the strip', () => {
    expectBox(swathBox(straight, 10, 21, 2.7), 10, 47.3, 21, 52.7);
  });

  it('of a slanting straight holds the corners of its square ends', () => {
    // 3, 4, 5: from (6, 8) to (12, 16), and 5 mm to the side are (4, 3).
    const slant = pathOf({ from: at(0, 0), pieces: [{ to: at(30, 40), bulge: 0 }] });
    expectBox(swathBox(slant, 10, 20, 5), 2, 5, 16, 19);
  });

  it('of an arc goes to its outer edge where that faces a side, and else to its square ends', () => {
    expectBox(swathBox(arch, 0, arch.length, 5), 105, 55, 195, 100);
    expectBox(swathBox(arch, 0, arch.length / 2, 5), 105, 55, 150, 100);
    // From 30° before the top to 30° behind it: the ends reach down to 100 − 35 · cos 30°.
    const third = (40 * Math.PI) / 6;
    const { length } = arch;
    const half = 45 * Math.sin(Math.PI / 6);
    const low = 100 - 35 * Math.cos(Math.PI / 6);
    expectBox(swathBox(arch, length / 2 - third, length / 2 + third, 5), 150 - half, 55, 150 + half, low);
  });

  it('of an arc tighter than the strip is wide still holds it', () => {
    const hook = pathOf({ from: at(110, 100), pieces: [{ to: at(112, 100), bulge: 1 }] });
    // Radius 1, half 3: the inner edge turns over to 2 mm beyond the centre.
    expectBox(swathBox(hook, 0, hook.length, 3), 107, 96, 115, 102);
  });

  it('of several pieces holds all of them', () => {
    const elbow = pathOf({
      from: at(0, 0),
      pieces: [
        { to: at(20, 0), bulge: 0 },
        { to: at(20, 20), bulge: 0 },
      ],
    });
    expectBox(swathBox(elbow, 10, 30, 2), 10, -2, 22, 10);
  });

  it('ends where the path ends, and of nothing is a point', () => {
    expectBox(swathBox(straight, 95, 130, 2), 95, 48, 100, 52);
    expectBox(swathBox(straight, 40, 40, 2), 40, 50, 40, 50);
  });
});
