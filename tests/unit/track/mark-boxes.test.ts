import { describe, expect, it } from 'vitest';
import type { MarkBox } from '../../../shared/documents/sheet.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import type { LaidLine } from '../../../shared/track/layout.ts';
import { boxCorners, roomInBoxes, spansInBoxes } from '../../../shared/track/mark-boxes.ts';

/** Expected by hand: a line of 5 mm carries bands of 5.4, and two of them are 11 mm long. */

const box = (x: number, y: number, w: number, h: number): MarkBox => ({
  id: `b${x}-${y}`,
  name: { en: 'Marks' },
  at: { x, y },
  w,
  h,
});
const laid = (from: [number, number], ...to: [number, number][]): LaidLine => ({
  id: 'l',
  given: false,
  width: 5,
  path: pathOf({
    from: { x: from[0], y: from[1] },
    pieces: to.map(([x, y]) => ({ to: { x, y }, bulge: 0 })),
  }),
});
const PIER = laid([40, 100], [260, 100]);

describe('boxCorners', () => {
  it('goes clockwise from the top left, in hundredths', () => {
    expect(boxCorners(box(0.1, 10, 0.2, 5))).toEqual([
      { x: 0.1, y: 10 },
      { x: 0.3, y: 10 },
      { x: 0.3, y: 15 },
      { x: 0.1, y: 15 },
    ]);
  });
});

describe('roomInBoxes', () => {
  it('is the least distance to a side, and negative by how much is out', () => {
    // Bands from (100, 97.3) to (111, 102.7).
    const room = (...boxes: MarkBox[]) => roomInBoxes(boxes, PIER, 60, 71);
    expect(room(box(95, 90, 20, 20))).toBeCloseTo(4, 9);
    expect(room(box(95, 95, 20, 20))).toBeCloseTo(2.3, 9);
    expect(room(box(103, 90, 20, 20))).toBeCloseTo(-3, 9);
    expect(room(box(95, 99, 20, 20))).toBeCloseTo(-1.7, 9);
    expect(room(box(150, 90, 20, 20))).toBeCloseTo(-50, 9);
  });

  it('takes the best box, never two together', () => {
    const [left, right] = [box(80, 90, 26, 20), box(106, 90, 26, 20)];
    expect(roomInBoxes([left, right], PIER, 60, 71)).toBeCloseTo(-5, 9);
    expect(roomInBoxes([left, box(95, 90, 20, 20)], PIER, 60, 71)).toBeCloseTo(4, 9);
  });
});

describe('spansInBoxes', () => {
  const spans = (line: LaidLine, ...boxes: MarkBox[]) => spansInBoxes(boxes, line, 11);

  it('on a level line runs from side to side', () => {
    const [span, ...others] = spans(PIER, box(95.4, 90, 20, 20));
    expect(others).toEqual([]);
    expect(span!.from).toBeCloseTo(55.4, 1);
    expect(span!.to).toBeCloseTo(64.4, 1);
  });

  it('on a slanting line depends on both ways across', () => {
    // Along (0.6, 0.8) from (40, 40), 2.7 mm to the side are (2.16, 1.62).
    const [span, ...others] = spans(laid([40, 40], [100, 120]), box(70, 80, 40, 40));
    expect(others).toEqual([]);
    expect(span!.from).toBeCloseTo((30 + 2.16) / 0.6, 1);
    expect(span!.to).toBeCloseTo((80 - 1.62) / 0.8 - 11, 1);
  });

  it('finds the one place in a box that is just as large as the mark', () => {
    const [span, ...others] = spans(PIER, box(100.37, 97.3, 11, 5.4));
    expect(others).toEqual([]);
    expect(span!.from).toBeCloseTo(60.37, 6);
    expect(span!.to).toBeCloseTo(60.37, 6);
  });

  it('is cut at the ends of the line, and may be none', () => {
    expect(spans(laid([40, 100], [60, 100]), box(0, 0, 300, 200))).toEqual([{ from: 0, to: 9 }]);
    expect(spans(laid([40, 100], [50, 100]), box(0, 0, 300, 200))).toEqual([]);
    expect(spans(PIER, box(100, 101, 60, 40))).toEqual([]);
  });

  it('has one for each box on the way, and for each time that a line comes through', () => {
    expect(spans(PIER, box(100, 90, 30, 20), box(200, 90, 30, 20))).toHaveLength(2);
    const there = laid([40, 95], [260, 95], [260, 105], [40, 105]);
    expect(spans(there, box(100, 90, 30, 20))).toHaveLength(2);
  });
});
