import { describe, expect, it } from 'vitest';
import type { Line } from '../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { cornerAngle, exitFor, exitsOf } from '../../../shared/track/arms.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { drawn, line, SHEET } from '../rules/setting.ts';

const build = (...lines: Line[]) => buildTrack(layOut(SHEET, drawn(lines)), DEMO_KIT);
/** A line to the right that ends at (150, 100), where `arms` begin at these angles, clockwise from ahead. */
const fan = (...degrees: number[]) =>
  build(
    line('stem', [50, 100], [150, 100]),
    ...degrees.map((d, i) => {
      const angle = (d * Math.PI) / 180;
      return line(`arm${i}`, [150, 100], [150 + 60 * Math.cos(angle), 100 + 60 * Math.sin(angle)]);
    }),
  );
const ways = (track: ReturnType<typeof build>, edge = 0) => exitsOf(track, edge).map((exit) => exit.way);

describe('exitsOf', () => {
  it('y points down: a positive turn is to the right', () => {
    expect(ways(fan(-90, 0, 90))).toEqual(['left', 'straight', 'right']);
    expect(ways(fan(90, -90))).toEqual(['left', 'right']);
  });

  it('straight is within 20 degrees of ahead, and of two such arms the nearer one', () => {
    expect(ways(fan(-19.9, 90))).toEqual(['straight', 'right']);
    expect(ways(fan(-20.1, 90))).toEqual(['left', 'right']);
    expect(ways(fan(-15, 10))).toEqual(['left', 'straight']);
  });

  it('a crossing met from below has the same ways, turned', () => {
    const track = build(line('level', [50, 100], [250, 100]), line('upright', [150, 180], [150, 20]));
    // Edges of the first line: 0 to 3; edge 4 goes up towards the crossing.
    expect(exitsOf(track, 4).map(({ edge, way }) => [edge, way])).toEqual([
      [1, 'left'],
      [6, 'straight'],
      [2, 'right'],
    ]);
  });

  it('an arm that bends away is seen where the bar would be', () => {
    // Tangent ahead, but a quarter circle of 15 mm: 11 mm along it has turned 42 degrees, seen at 21.
    const bent = build(
      line('stem', [50, 100], [150, 100]),
      line('bent', [150, 100], [165, 115, Math.SQRT2 - 1], [165, 180]),
      line('up', [150, 100], [150, 20]),
    );
    expect(ways(bent)).toEqual(['left', 'right']);
  });

  it('nothing leads on from a loose end; a corner has one way', () => {
    expect(ways(build(line('l', [50, 100], [150, 100])))).toEqual([]);
    expect(ways(build(line('l', [50, 100], [150, 100], [150, 160])))).toEqual(['right']);
  });
});

describe('exitFor', () => {
  it('takes the arm nearest to ahead', () => {
    const exits = exitsOf(fan(-120, -60, 60, 120), 0);
    expect(Math.round((exitFor(exits, 'left')!.turn * 180) / Math.PI)).toBe(-60);
    expect(Math.round((exitFor(exits, 'right')!.turn * 180) / Math.PI)).toBe(60);
    expect(exitFor(exits, 'straight')).toBeUndefined();
  });
});

describe('cornerAngle', () => {
  it('is the inner angle', () => {
    const track = build(line('l', [50, 100], [150, 100], [90, 180]));
    // atan2(80, 60) = 53.13 degrees
    const corner = track.nodes.find((node) => node.kind === 'corner')!;
    expect((cornerAngle(corner) * 180) / Math.PI).toBeCloseTo(53.1301, 3);
  });
});
