import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import {
  comesNear,
  edgeUnder,
  firstWay,
  followedAt,
  isIn,
  placeOn,
  type Road,
  roadMap,
} from '../../../shared/odds/roads.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { twin } from '../../../shared/track/track.ts';
import { Pen } from '../../sweeps/pen.ts';
import { BANDS, fromStart, RING, SHEET } from './tracks.ts';

/** The road that leaves a place along a line, or against it. */
function roadFrom(drawing: Drawing, at: PaperPoint, against = false) {
  const track = buildTrack(layOut(SHEET, drawing), DEMO_KIT);
  const map = roadMap(track, SHEET, DEMO_KIT);
  const edge = track.edges.find(
    ({ from, along }) =>
      along !== against && Math.hypot(track.nodes[from]!.at.x - at.x, track.nodes[from]!.at.y - at.y) < 1,
  )!;
  return { track, map, edge: edge.index, road: map.from(edge.index) };
}

/** 101 mm to the right, then 80 mm down. */
const elbow = (turn = 90) => fromStart().straight(101).turn(turn).straight(80);
const BEGIN = { x: 30, y: 150 };
const CORNER = { x: 131, y: 150 };

describe('a road', () => {
  it('ends at a corner, and before a loose end where the robot stops over white', () => {
    expect(roadFrom(elbow().drawing(), BEGIN).road).toMatchObject({ end: 'corner', length: 101, reach: 101 });
    // 2.5 mm of round end, 0.45 mm faint, 6 mm gone on, with the bar 11 mm ahead: the axle is 2.05 mm short.
    const back = roadFrom(elbow().drawing(), CORNER, true).road;
    expect(back).toMatchObject({ end: 'end', length: 101 });
    expect(back.reach).toBeCloseTo(101 - 2.05, 9);
  });

  it('ends at a junction', () => {
    const crossed = fromStart().straight(200).to(150, 100, 90).straight(100).drawing();
    const { road, track } = roadFrom(crossed, BEGIN);
    expect(road).toMatchObject({ end: 'junction', length: 120, reach: 120 });
    expect(track.nodes[road.node]!.at).toEqual({ x: 150, y: 150 });
  });

  it('goes on over a wide bend, with the marks and curves of all its parts', () => {
    const drawing = elbow(40).arc(50, 60).straight(40).mark(120, 'CA', BANDS).drawing();
    const { road } = roadFrom(drawing, BEGIN);
    const arc = (50 * Math.PI) / 3;
    expect(road.end).toBe('end');
    expect(road.length).toBeCloseTo(101 + 80 + arc + 40, 6);
    expect(road.parts.map(({ from }) => from)).toEqual([0, expect.closeTo(101, 6)]);
    expect(road.marks).toMatchObject([
      { word: 'CA', from: expect.closeTo(120, 6), to: expect.closeTo(131, 6) },
    ]);
    const curves = road.bends.filter(({ share }) => share < 1);
    expect(curves).toMatchObject([{ from: expect.closeTo(181, 6), to: expect.closeTo(181 + arc, 6) }]);
  });

  it('goes round where it comes to itself', () => {
    const ring = new Pen().to(140, 150, -90).arc(60, 180).arc(60, 180).drawing();
    const { road } = roadFrom(ring, { x: 140, y: 150 });
    expect(road.end).toBe('round');
    expect(road.length).toBeCloseTo(120 * Math.PI, 6);
    expect(road.reach).toBe(road.length);
  });

  it('is put together once', () => {
    const { map, edge, road } = roadFrom(elbow().drawing(), BEGIN);
    expect(map.from(edge)).toBe(road);
    expect(map.from(twin(edge))).not.toBe(road);
  });
});

describe('followedAt', () => {
  it('is 70 degrees for the demo robot at steady and 62 at fast, as 11 mm from bar to axle have it', () => {
    const degrees = (speed: number, kit = DEMO_KIT) => (followedAt(speed, kit) * 180) / Math.PI;
    expect([0, 40, 80].map((speed) => degrees(speed))).toEqual([78, 70, 62].map((d) => expect.closeTo(d, 9)));
    const { barAhead } = SECOND_KIT.robot;
    expect(degrees(barAhead, SECOND_KIT)).toBeCloseTo(78 - 2.2, 9);
  });
});

describe('places on a road', () => {
  it('lie on its parts in either direction, and at its ends beyond them', () => {
    const { track, road } = roadFrom(elbow(40).drawing(), BEGIN);
    const on = (way: number, of: Road = road) => placeOn(track, of, way);
    const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
    expect([on(-5), on(0), on(60), on(101)]).toEqual([
      near(30, 150),
      near(30, 150),
      near(90, 150),
      near(131, 150),
    ]);
    const [c, s] = [Math.cos((40 * Math.PI) / 180), Math.sin((40 * Math.PI) / 180)];
    expect([on(111), on(181), on(190)]).toEqual([
      near(131 + 10 * c, 150 + 10 * s),
      near(131 + 80 * c, 150 + 80 * s),
      near(131 + 80 * c, 150 + 80 * s),
    ]);
    const end = { x: 131 + 80 * c, y: 150 + 80 * s };
    const back = roadFrom(elbow(40).drawing(), end, true);
    expect(placeOn(back.track, back.road, 70)).toEqual(near(131 + 10 * c, 150 + 10 * s));
    expect(placeOn(back.track, back.road, 100)).toEqual(near(131 - 20, 150));
  });

  it('belong to the edge under them, with the way along it', () => {
    const { track, road } = roadFrom(elbow(40).drawing(), BEGIN);
    const [one, two] = road.parts.map(({ edge }) => edge);
    expect(edgeUnder(track, road, -3)).toEqual({ edge: one, way: 0 });
    expect(edgeUnder(track, road, 40)).toEqual({ edge: one, way: 40 });
    expect(edgeUnder(track, road, 111)).toEqual({ edge: two, way: expect.closeTo(10, 6) });
    expect(edgeUnder(track, road, 300)).toEqual({ edge: two, way: expect.closeTo(80, 6) });
  });
});

describe('firstWay', () => {
  const first = (from: number, inside: (p: PaperPoint) => boolean) => {
    const { track, road } = roadFrom(elbow().drawing(), BEGIN);
    return firstWay(track, road, from, inside);
  };
  const beyond = (x: number) => (p: PaperPoint) => p.x >= x;
  // Looks are 2 mm apart and halved 12 times.
  const FINE = 2 / 2 ** 12;

  it.each([31, 63.4, 129.9, 130.5, 131])('finds where x = %f is passed', (x) => {
    expect(Math.abs(first(0, beyond(x))! - (x - 30))).toBeLessThanOrEqual(FINE);
    expect(Math.abs(first(0.7, beyond(x))! - Math.max(0.7, x - 30))).toBeLessThanOrEqual(FINE);
  });

  it('is where it looks from where it holds already, and nowhere where it never does', () => {
    expect(first(50, beyond(40))).toBe(50);
    expect(first(0, beyond(131.5))).toBeUndefined();
    expect(first(60, (p) => p.x < 80)).toBeUndefined();
  });

  it('is the first of two', () => {
    const way = first(0, ({ x }) => (x > 50 && x < 60) || x > 100)!;
    expect(Math.abs(way - 20)).toBeLessThanOrEqual(FINE);
  });
});

describe('a berth', () => {
  const berth = { name: { en: 'berth' }, at: { x: 100, y: 100 }, heading: 0, r: 12 };

  it('holds what is in its circle or on its rim, or so much further out', () => {
    expect([112, 112.1].map((x) => isIn(berth)({ x, y: 100 }))).toEqual([true, false]);
    expect([88, 87.9].map((y) => isIn(berth)({ x: 100, y }))).toEqual([true, false]);
    expect([142, 142.1].map((x) => isIn(berth, 30)({ x, y: 100 }))).toEqual([true, false]);
  });

  it('is come near by a road any part of which is near', () => {
    const { track, map, road } = roadFrom(RING.drawing, BEGIN);
    // The stem is 110 mm long; the ring, another road, passes (200, 90).
    expect(comesNear(track, road, { x: 90, y: 160 }, 10)).toBe(true);
    expect(comesNear(track, road, { x: 90, y: 160 }, 9.9)).toBe(false);
    expect(comesNear(track, road, { x: 200, y: 90 }, 10)).toBe(false);
    const roads = track.edges.map(({ index }) => map.from(index));
    expect(roads.some((one) => comesNear(track, one, { x: 200, y: 85 }, 5.1))).toBe(true);
    expect(roads.some((one) => comesNear(track, one, { x: 200, y: 85 }, 4.9))).toBe(false);
  });
});
