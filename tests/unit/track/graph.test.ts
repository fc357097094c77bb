import { describe, expect, it } from 'vitest';
import type { Line, Mark } from '../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import type { Track } from '../../../shared/track/track.ts';
import { drawn, line, mark, SHEET } from '../rules/setting.ts';

const track = (lines: Line[], marks: Mark[] = []): Track =>
  buildTrack(layOut(SHEET, drawn(lines, marks)), DEMO_KIT);
const kinds = (t: Track): string[] => t.nodes.map((node) => node.kind).sort();
const lengths = (t: Track): number[] =>
  t.edges.filter((edge) => edge.along).map((edge) => Math.round(edge.length * 100) / 100);

const LEVEL = line('level', [40, 100], [240, 100]);

describe('buildTrack', () => {
  it('makes one edge and two loose ends of a line', () => {
    const t = track([LEVEL]);
    expect(kinds(t)).toEqual(['end', 'end']);
    expect(t.edges.map(({ from, to, length, along }) => [from, to, length, along])).toEqual([
      [0, 1, 200, true],
      [1, 0, 200, false],
    ]);
  });

  it('makes a corner where the line turns by more than 20 degrees', () => {
    const turning = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      return line('l', [40, 100], [140, 100], [140 + 100 * Math.cos(angle), 100 + 100 * Math.sin(angle)]);
    };
    expect(kinds(track([turning(19.9)]))).toEqual(['end', 'end']);
    expect(kinds(track([turning(20.1)]))).toEqual(['corner', 'end', 'end']);
  });

  it('cuts crossing lines at the crossing, and says where and at which angle', () => {
    // 3:4 slope through (150, 100): atan(4/3) = 53.13 degrees.
    const t = track([LEVEL, line('steep', [120, 60], [180, 140])]);
    expect(kinds(t)).toEqual(['end', 'end', 'end', 'end', 'junction']);
    expect(lengths(t)).toEqual([110, 90, 50, 50]);
    expect(t.crossings).toHaveLength(1);
    expect(t.crossings[0]?.at.x).toBeCloseTo(150, 9);
    expect(t.crossings[0]?.at.y).toBeCloseTo(100, 9);
    expect((t.crossings[0]!.angle * 180) / Math.PI).toBeCloseTo(53.1301, 3);
    expect(t.crossings[0]?.a).toEqual({ line: 0, way: 110 });
  });

  it('finds where a line crosses itself', () => {
    const loop = line('loop', [40, 100], [240, 100], [240, 160], [100, 160], [100, 40]);
    const t = track([loop]);
    expect(t.crossings.map((crossing) => crossing.at)).toEqual([{ x: 100, y: 100 }]);
    expect(kinds(t)).toEqual(['corner', 'corner', 'corner', 'end', 'end', 'junction']);
  });

  it('joins an end to a line up to 3 mm away, also where it went 3 mm too far', () => {
    for (const y of [97, 100, 103]) {
      const t = track([LEVEL, line('stem', [140, 20], [140, y])]);
      expect(kinds(t)).toEqual(['end', 'end', 'end', 'junction']);
      expect(t.nodes.find((node) => node.kind === 'junction')?.arms).toHaveLength(3);
    }
    expect(kinds(track([LEVEL, line('stem', [140, 20], [140, 96.9])]))).toEqual(['end', 'end', 'end', 'end']);
    expect(track([LEVEL, line('stem', [140, 20], [140, 104])]).nodes).toHaveLength(5);
  });

  it('makes a joint of two lines end to end and of a ring without corners', () => {
    expect(kinds(track([line('a', [40, 100], [140, 100]), line('b', [141, 101], [240, 101])]))).toEqual([
      'end',
      'end',
      'joint',
    ]);
    const ring = track([line('ring', [100, 100], [160, 100, 1], [100, 100, 1])]);
    expect(kinds(ring)).toEqual(['joint']);
    expect(lengths(ring)).toEqual([188.5]);
    expect(ring.edges[0]?.bends.map((bend) => Math.round(1 / bend.curvature))).toEqual([30, 30]);
    expect(ring.edges[1]?.bends.map((bend) => Math.round(1 / bend.curvature))).toEqual([-30, -30]);
  });

  it('orders the arms of a junction by their angle, clockwise from the right', () => {
    const t = track([LEVEL, line('steep', [140, 40], [140, 160])]);
    const junction = t.nodes.find((node) => node.kind === 'junction')!;
    const headings = junction.arms.map((arm) => [Math.round(arm.heading.x), Math.round(arm.heading.y)]);
    expect(headings).toEqual([
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ]);
  });

  it('reads marks as they are met in each direction', () => {
    const t = track([LEVEL], [mark('a', 'level', 50, 'CA'), mark('b', 'level', 120, 'ACA')]);
    expect(
      t.edges[0]?.marks.map(({ mark: m, from, to, word, along }) => [m.id, from, to, word, along]),
    ).toEqual([
      ['a', 50, 61, 'CA', true],
      ['b', 120, 136.5, 'ACA', true],
    ]);
    expect(
      t.edges[1]?.marks.map(({ mark: m, from, to, word, along }) => [m.id, from, to, word, along]),
    ).toEqual([
      ['b', 63.5, 80, 'ACA', false],
      ['a', 139, 150, 'AC', false],
    ]);
  });

  it('gives a line that lies on another no edges of its own; its marks stand on the one beneath', () => {
    const over = line('over', [200, 100], [100, 100]);
    const t = track([LEVEL, over], [mark('m', 'over', 20, 'CA')]);
    expect(t.lines[1]?.edges).toEqual([]);
    expect(lengths(t)).toEqual([60, 100, 40]);
    // 20 mm from x = 200 backwards: from x = 180 to 169, so read forwards from 69 mm behind x = 100.
    expect(t.edges[2]?.marks.map(({ from, to, word }) => [from, to, word])).toEqual([[69, 80, 'AC']]);
  });

  it('puts up with a line shorter than the snap, and with none', () => {
    expect(track([line('dot', [100, 100], [102, 100])]).edges).toEqual([]);
    expect(track([])).toMatchObject({ nodes: [], edges: [], crossings: [] });
  });
});
