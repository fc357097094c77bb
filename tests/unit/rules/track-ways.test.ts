import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { type LineSpot, type Together, togetherOn } from '../../../shared/rules/track-ways.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { drawn, line, SHEET } from './setting.ts';

/** Places that hang together over 40 mm of one line, or over a node with 100 mm between them. */
const RULE: Together = { reach: 40, partedAt: () => 100, furthest: 150 };

type Spot = readonly [id: string, way: number];

function together(lines: readonly ReturnType<typeof line>[], rule: Together = RULE) {
  const track = buildTrack(layOut({ ...SHEET, w: 600 }, drawn([...lines])), DEMO_KIT);
  const is = togetherOn(track, rule);
  const spot = ([id, way]: Spot): LineSpot => ({
    line: track.lines.findIndex((one) => one.line.id === id),
    way,
  });
  return (a: Spot, b: Spot) => is(spot(a), spot(b));
}

const PIER = line('pier', [40, 100], [260, 100]);
/** It crosses the pier 110 mm along it, 60 mm along itself. */
const ACROSS = line('across', [150, 40], [150, 160]);

describe('places of one line', () => {
  it('hang together over little way', () => {
    const is = together([PIER]);
    expect([is(['pier', 60], ['pier', 100]), is(['pier', 100], ['pier', 60])]).toEqual([true, true]);
    expect(is(['pier', 60], ['pier', 100.1])).toBe(false);
  });

  it('on one stretch of it hang together over nothing else, however near a junction is', () => {
    const is = together([PIER, ACROSS]);
    expect(is(['pier', 60], ['pier', 105])).toBe(false);
    expect(is(['pier', 115], ['pier', 160])).toBe(false);
  });
});

describe('places of two lines that cross', () => {
  it.each([
    [-1, -1],
    [-1, 1],
    [1, -1],
    [1, 1],
  ])('hang together over both ways to the junction (sides %i and %i)', (one, other) => {
    const is = together([PIER, ACROSS]);
    const at = (x: number, y: number) => is(['pier', 110 + one * x], ['across', 60 + other * y]);
    expect([at(50, 50), at(90, 10), at(50, 50.1), at(90, 10.1)]).toEqual([true, true, false, false]);
    expect(is(['across', 60 + other * 50], ['pier', 110 + one * 50])).toBe(true);
  });

  it('part as their angle has it', () => {
    // 60 degrees on one side, 120 on the other; the slant crosses the pier 110 mm along it, 69.28 along itself.
    const slant = line('slant', [115.36, 40], [184.64, 160]);
    const rule: Together = { ...RULE, partedAt: (angle) => (60 * angle) / (Math.PI / 3) };
    const is = together([PIER, slant], rule);
    const at = (x: number, y: number) => is(['pier', 110 + x], ['slant', 69.28 + y]);
    expect([at(-30, -29), at(-30, -31), at(30, 29), at(30, 31)]).toEqual([true, false, true, false]);
    expect([at(-60, 59), at(-60, 61), at(60, -59), at(60, -61)]).toEqual([true, false, true, false]);
  });

  it('part as the kind of the node has it', () => {
    const elbow = line('elbow', [40, 100], [150, 100], [150, 180]);
    const rule: Together = { ...RULE, partedAt: (_, node) => (node === 'corner' ? 70 : 100) };
    const corner = together([elbow], rule);
    expect([corner(['elbow', 75], ['elbow', 145]), corner(['elbow', 75], ['elbow', 145.1])]).toEqual([
      true,
      false,
    ]);
    const crossing = together([PIER, ACROSS], rule);
    expect(crossing(['pier', 60], ['across', 110])).toBe(true);
  });

  it('never hang together where no line leads from one to the other', () => {
    const is = together([PIER, line('beside', [40, 110], [260, 110])]);
    expect(is(['pier', 60], ['beside', 60])).toBe(false);
  });
});

describe('places beyond several junctions', () => {
  /** Lines across a street at these distances from its beginning, 60 mm to either side. */
  const street = (...ways: number[]) => [
    line('street', [40, 100], [540, 100]),
    ...ways.map((way, i) => line(`v${i + 1}`, [40 + way, 40], [40 + way, 160])),
  ];

  it('hang together over the way between them, too', () => {
    const is = together(street(100, 130));
    const up = (one: number, other: number) => is(['v1', 60 - one], ['v2', 60 - other]);
    expect([up(35, 35), up(35, 35.1), up(5, 55)]).toEqual([true, false, true]);
    expect([is(['v1', 95], ['v2', 25]), is(['v1', 95.1], ['v2', 25])]).toEqual([true, false]);
    const three = together(street(100, 130, 150));
    expect([three(['v1', 35], ['v3', 35]), three(['v1', 35], ['v3', 34.9])]).toEqual([true, false]);
  });

  it('are looked for over two junctions from either side, and no more', () => {
    const is = together(street(100, 110, 120, 130, 140, 150));
    expect(is(['v1', 50], ['v5', 50])).toBe(true);
    expect(is(['v1', 50], ['v6', 50])).toBe(false);
  });

  it('hang together by the shortest of several ways', () => {
    // Beside the street of 30 mm a loop of 90 leads from one junction to the other.
    const loop = line('loop', [140, 100], [140, 70], [170, 70], [170, 100]);
    const [pier, v1, v2] = street(100, 130) as [typeof PIER, typeof PIER, typeof PIER];
    for (const lines of [
      [pier, v1, v2, loop],
      [loop, pier, v1, v2],
    ]) {
      const is = together(lines);
      expect([is(['v1', 95], ['v2', 95]), is(['v1', 95.1], ['v2', 95])]).toEqual([true, false]);
    }
  });

  it('are told alike, whatever was asked before', () => {
    const lines = street(100, 160, 220);
    const known = together(lines);
    const spots: Spot[] = ['street', 'v1', 'v2', 'v3'].flatMap((id) =>
      [20, 70, 130, 190].flatMap((way): Spot[] => (id === 'street' || way < 120 ? [[id, way]] : [])),
    );
    for (const a of spots) {
      const answers = spots.map((b) => known(a, b));
      expect(answers).toEqual(spots.map((b) => together(lines)(a, b)));
    }
  });
});
