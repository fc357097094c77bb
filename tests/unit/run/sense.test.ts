import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cos, sin } from '../../../shared/geometry/exact-math.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { TILE_BITS, TILE_ROW } from '../../../shared/run/coverage.ts';
import { lightIn } from '../../../shared/run/ink-field.ts';
import { launch } from '../../../shared/run/launch.ts';
import { machineOf } from '../../../shared/run/machine.ts';
import { NOISE } from '../../../shared/run/random.ts';
import { NOT_SURE, type RobotState } from '../../../shared/run/robot.ts';
import { sense } from '../../../shared/run/sense.ts';
import { step } from '../../../shared/run/step.ts';
import { type Ambient, SAME_LIGHT, UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import '../../seed.ts';
import { SHEET, world } from './worlds.ts';

const MACHINE = machineOf(DEMO_KIT);
const DRAWN = new Pen(5).to(30, 105).straight(100).arc(20, 90).straight(60).to(150, 20).straight(120);
const { field } = world(DRAWN.mark(40, 'CA', [5.5, 5.5]).drawing());

const robotOf = (seed: number, weather: number, ambient: Ambient = SAME_LIGHT): RobotState =>
  launch(MACHINE, SHEET, SHEET.start, { ...UNDISTURBED, seed, disturbance: weather, ink: weather, ambient });

/** A byte of grey, of the pixel in a column and row of the whole sheet. */
function byteAt(column: number, row: number): number {
  const tile = (row >> TILE_BITS) * field.across + (column >> TILE_BITS);
  return field.grey[field.tiles[tile]! + row * TILE_ROW + column]! & 255;
}

/** The bar as the model's chapter describes it, one sensor after the other. */
function seenOneByOne(r: RobotState, noise: number) {
  const seen = { pattern: 0, weight: 0, moment: 0 };
  for (let i = 0; i < 5; i++) {
    const place = (2 - i) * MACHINE.pitch;
    const off = place * r.barScale + r.offset - r.offset * r.barScale;
    const u = (r.x + MACHINE.barAhead * r.cos + off * r.sin) * 3 + r.strayU - (2 - i) * r.skewU;
    const v = (r.y + MACHINE.barAhead * r.sin - off * r.cos) * 3 + r.strayV - (2 - i) * r.skewV;
    const [gain, base, white, perSpan] = r.optics.subarray(4 * i);
    let light = 0.45 * 255;
    if (u >= 0 && v >= 0 && u < 3 * SHEET.w && v < 3 * SHEET.h) {
      const [column, row] = [Math.floor(u), Math.floor(v)];
      const [right, down] = [u - column, v - row];
      const upper = byteAt(column, row) * (1 - right) + byteAt(column + 1, row) * right;
      const lower = byteAt(column, row + 1) * (1 - right) + byteAt(column + 1, row + 1) * right;
      light = upper * (1 - down) + lower * down;
    }
    const raw = Math.min(gain! * light + base! + r.greyNoise * NOISE[noise + i]!, 1.4);
    const dark = (white! - raw) * perSpan!;
    if (dark > 0.5) seen.pattern |= 16 >> i;
    if (dark <= 0.08 || Math.abs(place - r.offset) >= 1.625 * MACHINE.pitch) continue;
    seen.weight += dark;
    seen.moment += dark * place;
  }
  return seen;
}

/** Never exactly at the paper's edge, where the last bit of a place decides. */
const within = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((value) => value / 100 + 0.003);

const poses = fc.record({
  x: within(-5, 302),
  y: within(-5, 215),
  heading: within(-3, 3),
  offset: within(-9, 9),
});

describe('sense', () => {
  it('sees with all sensors at once what they see one after the other, on the paper and over its edge', () => {
    fc.assert(
      fc.property(poses, fc.integer({ min: 0, max: 99 }), fc.nat(4095), (pose, seed, noise) => {
        const r = robotOf(seed, seed % 4);
        Object.assign(r, pose, { cos: cos(pose.heading), sin: sin(pose.heading) });
        const expected = seenOneByOne(r, noise);
        sense(r, MACHINE, field, noise);
        expect(r.pattern).toBe(expected.pattern);
        expect(r.weight).toBeCloseTo(expected.weight, 8);
        expect(r.moment).toBeCloseTo(expected.moment, 8);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('noteCertain', () => {
  it('spares the step work and changes nothing, for any robot in any light', () => {
    const lights = fc.record({
      calibrated: fc.double({ min: -0.5, max: 2, noNaN: true }),
      now: fc.double({ min: -0.5, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.nat(500), fc.nat(3), lights, (seed, weather, light) => {
        const ambient = { ...SAME_LIGHT, ...light };
        const [quick, thorough] = [0, 1].map(() => robotOf(seed, weather, ambient));
        Object.assign(thorough!, { surePaper: 0, sureBlack: NOT_SURE });
        for (let i = 0; i < 1500; i++) {
          step(quick!, MACHINE, field);
          step(thorough!, MACHINE, field);
        }
        Object.assign(quick!, { surePaper: 0, sureBlack: NOT_SURE });
        expect(quick).toStrictEqual(thorough);
      }),
      { numRuns: 40 },
    );
  });

  it('is sure of paper and of black for nearly every robot in calm weather, for none in twice the light', () => {
    const sure = (robots: RobotState[]) =>
      robots.filter((r) => r.surePaper === 31 && r.sureBlack !== NOT_SURE).length;
    const robots = (ambient: Ambient) => Array.from({ length: 40 }, (_, i) => robotOf(i + 1, 1, ambient));
    expect(sure(robots(SAME_LIGHT))).toBeGreaterThan(30);
    expect(sure(robots({ ...SAME_LIGHT, now: 2 }))).toBe(0);
  });
});

describe('lightIn', () => {
  it('is each pixel at its corner, their mean in the middle, and never beyond them', () => {
    const pixels = 10 | (20 << 8) | (30 << 16) | (200 << 24);
    const corners = [
      lightIn(pixels, 0, 0),
      lightIn(pixels, 0, 1),
      lightIn(pixels, 1, 0),
      lightIn(pixels, 1, 1),
    ];
    expect(corners).toEqual([10, 20, 30, 200]);
    expect(lightIn(pixels, 0.5, 0.5)).toBe(65);
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 4, maxLength: 4 }), share, share, (bytes, right, down) => {
        const light = lightIn(new Int32Array(bytes.buffer)[0]!, right, down);
        expect(light >= Math.min(...bytes) && light <= Math.max(...bytes)).toBe(true);
      }),
    );
  });
});
