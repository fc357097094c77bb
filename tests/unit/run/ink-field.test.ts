import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { PIXELS_PER_MM, TILE, TILE_ROW, TILE_WORDS } from '../../../shared/run/coverage.ts';
import { buildInkField, type InkField } from '../../../shared/run/ink-field.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';
import { SHEET, world } from './worlds.ts';

/** Stored bytes at the pixel nearest to a place: grey, and the colours where there are any. */
function seen(field: InkField, x: number, y: number): { grey: number; color: number[] | undefined } {
  const column = Math.round(x * PIXELS_PER_MM);
  const row = Math.round(y * PIXELS_PER_MM);
  const tile = Math.floor(row / TILE) * field.across + Math.floor(column / TILE);
  const pixel = (row % TILE) * TILE_ROW + (column % TILE);
  const start = field.colorTiles[tile]!;
  return {
    grey: (field.grey[field.tiles[tile]! + row * TILE_ROW + column]! & 255) / 255,
    color: start < 0 ? undefined : [0, 1, 2].map((c) => field.color[start + 3 * pixel + c]! / 255),
  };
}

/** Within one step of a byte. */
const BYTE = 1 / 255;
const near = (found: number, expected: number, slack = BYTE) =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(slack);

describe('buildInkField', () => {
  const line = world(new Pen(5).to(60, 105).straight(150).drawing()).field;

  it('is white on bare paper and black in a line', () => {
    near(seen(line, 30, 30).grey, 0.85);
    near(seen(line, 100, 105).grey, 0.06, 3 * BYTE);
  });

  // Source: a step edge blurred by a Gaussian of deviation 0.8 mm is the normal distribution function:
  // 0.5 at the edge, 0.8944 of the way at 1.25 deviations (standard normal table).
  it('is blurred across an edge as a normal distribution', () => {
    const at = (fromEdge: number) => (0.85 - seen(line, 100, 105 + 2.5 + fromEdge).grey) / 0.79;
    // The edge lies half way between two pixels: their mean is the value there.
    near((at(-1 / 6) + at(1 / 6)) / 2, 0.5, 2 * BYTE);
    near((at(-1 - 1 / 6) + at(-1 + 1 / 6)) / 2, 0.8944, 0.01);
  });

  it('keeps tiles only near ink', () => {
    const stored = line.grey.length / TILE_WORDS;
    expect(stored).toBeLessThan(line.tiles.length / 10);
    expect(line.color).toHaveLength(0);
  });

  const pen = new Pen(5).to(60, 105).straight(150);
  pen.mark(40, 'CA', [6, 6], 3);
  const banded = world(pen.drawing()).field;

  it('shows a band in its ink, and the gap between two as white', () => {
    // Coral #F4743B in linear light by IEC 61966-2-1: 0.9047, 0.1746, 0.0437.
    const coral = [0.9047, 0.1746, 0.0437].map((light) => 0.04 + 0.81 * light);
    seen(banded, 103, 105).color!.forEach((value, i) => {
      near(value, coral[i]!, 2 * BYTE);
    });
    near(seen(banded, 103, 105).grey, 0.3 * coral[0]! + 0.5 * coral[1]! + 0.2 * coral[2]!, 2 * BYTE);
    for (const value of seen(banded, 107.5, 105).color!) near(value, 0.85, 0.1);
    // Beyond the mark the line is black again.
    near(seen(banded, 122, 105).grey, 0.06, 3 * BYTE);
  });

  it('makes a band wider than its line by 0.4 mm', () => {
    // At 2.7 mm from the middle, the band's edge, half of the footprint lies on ink.
    const [red] = seen(banded, 103, 105 + 8 / 3).color!;
    const [, green] = seen(banded, 103, 105 + 8 / 3).color!;
    near((0.85 - green!) / (0.85 - (0.04 + 0.81 * 0.1746)), 0.5, 0.03);
    expect(red).toBeGreaterThan(0.7);
  });

  it('multiplies inks where bands overlap', () => {
    const overlapping = new Pen(5).to(60, 105).straight(150).mark(40, 'CA', [10, 10], -6).drawing();
    const color = seen(world(overlapping).field, 107, 105).color!;
    // Coral times aqua over white: aqua #2FB5C7 is 0.0284, 0.4621, 0.5711 in linear light.
    const product = [
      [0.9047, 0.0284],
      [0.1746, 0.4621],
      [0.0437, 0.5711],
    ].map(([c, a]) => ((0.04 + 0.81 * c!) * (0.04 + 0.81 * a!)) / 0.85);
    color.forEach((value, i) => {
      near(value, product[i]!, 0.01);
    });
  });

  it('leaves a line that crosses a band black', () => {
    const crossing = new Pen(5).to(103, 80, 90).straight(50).to(60, 105).straight(150);
    const color = seen(world(crossing.mark(40, 'CA', [6, 6]).drawing()).field, 103, 105).color!;
    for (const value of color) expect(value).toBeLessThan(0.1);
  });

  it('copies tiles that show the same ink, and paints those that a change touches', () => {
    const drawn = (way: number, at: number) =>
      layOut(
        SHEET,
        new Pen(5).to(60, 105).straight(150).to(60, 150).straight(way).mark(at, 'CA', [6, 6]).drawing(),
      );
    const before = buildInkField(drawn(60, 20), SHEET, DEMO_KIT);
    // Every copied pixel gives itself away.
    before.grey.fill(1);
    before.color.fill(1);
    const copied = (x: number, y: number, way: number, at: number) =>
      seen(buildInkField(drawn(way, at), SHEET, DEMO_KIT, before), x, y).grey === 1 / 255;
    expect([copied(100, 105, 60, 20), copied(90, 150, 60, 20)]).toEqual([true, true]);
    expect([copied(100, 105, 61, 20), copied(118, 150, 61, 20)]).toEqual([true, false]);
    expect([copied(100, 105, 60, 20.01), copied(86, 150, 60, 20.01)]).toEqual([true, false]);
  });

  it('holds a sheet of 4 m by 2 m in a few megabytes', () => {
    const wide = new Pen(5).to(60, 105).straight(3800).turn(90).straight(1700).turn(90).straight(3800);
    const { field } = world(wide.drawing(), { w: 4000, h: 2000 });
    const bytes =
      2 * field.grey.length + field.color.length + 4 * (field.tiles.length + field.colorTiles.length);
    expect(bytes).toBeLessThan(6_000_000);
  });
});
