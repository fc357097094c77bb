import { describe, expect, it } from 'vitest';
import { describeDrawing } from '../../../shared/description/describe.ts';
import type { Drawing, Line, Mark } from '../../../shared/documents/design.ts';
import { degrees } from '../../../shared/geometry/exact-math.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { SHEET } from '../client/editor-setting.ts';

type At = readonly [number, number];
type To = readonly [number, number, number?];

const line = (id: string, from: At, ...to: readonly To[]): Line => ({
  id,
  width: 5,
  from: { x: from[0], y: from[1] },
  pieces: to.map(([x, y, bulge = 0]) => ({ to: { x, y }, bulge })),
});
/** Two bands of 6 mm, the first beginning `at` along the line. */
const mark = (on: string, at: number): Mark => ({
  id: `m${on}${at}`,
  line: on,
  at,
  bands: [
    { ink: 'C', length: 6, gap: 0 },
    { ink: 'A', length: 6, gap: 0 },
  ],
});
const told = (lines: readonly Line[], marks: readonly Mark[] = []) => {
  const drawing: Drawing = { lines: [...lines], marks: [...marks] };
  return describeDrawing(layOut(SHEET, drawing), SHEET, DEMO_KIT);
};

// The start berth of this sheet is at (40, 160), the finish at (250, 60), each reached within 20 mm.
describe('describeDrawing', () => {
  it('tells nothing of an empty sheet', () => {
    expect(told([])).toEqual([]);
  });

  it('tells a line from berth to berth with its mark and its corner, in the order of the way', () => {
    const [one] = told([line('l1', [40, 160], [250, 160], [250, 60])], [mark('l1', 94)]);
    expect(one).toMatchObject({
      number: 1,
      length: 310,
      from: { kind: 'berth', which: 'start' },
      to: { kind: 'berth', which: 'finish' },
    });
    // The mark's middle is 94 + 6 mm along. From +x to −y is a quarter to the left: y points down.
    expect(one!.steps).toMatchObject([
      { kind: 'mark', way: 100, word: 'CA' },
      { kind: 'corner', way: 210 },
    ]);
    expect(degrees((one!.steps[1] as { turn: number }).turn)).toBeCloseTo(-90, 6);
  });

  it('tells a line that was drawn towards the start from the start, with its marks and turns reversed', () => {
    const [one] = told([line('l1', [250, 60], [250, 160], [40, 160])], [mark('l1', 94)]);
    expect(one).toMatchObject({
      from: { kind: 'berth', which: 'start' },
      to: { kind: 'berth', which: 'finish' },
    });
    expect(one!.steps).toMatchObject([
      { kind: 'corner', way: 210 },
      { kind: 'mark', way: 210, word: 'AC' },
    ]);
    expect(degrees((one!.steps[0] as { turn: number }).turn)).toBeCloseTo(-90, 6);
  });

  it('tells arcs to the same side as one curve, with the radius of a circle', () => {
    // Two quarter circles of radius 30 round (100, 130), from its lowest to its highest point by its right.
    const quarter = -Math.tan(Math.PI / 8);
    const [one] = told([
      line('l1', [40, 160], [100, 160], [130, 130, quarter], [100, 100, quarter], [60, 100]),
    ]);
    expect(one!.steps).toHaveLength(1);
    const [curve] = one!.steps;
    expect(curve).toMatchObject({ kind: 'curve', way: 60 });
    const { turn, radius, length } = curve as { turn: number; radius: number; length: number };
    expect(degrees(turn)).toBeCloseTo(-180, 6);
    expect(radius).toBeCloseTo(30, 6);
    expect(length).toBeCloseTo(30 * Math.PI, 6);
    expect(one!.to).toEqual({ kind: 'paper', at: { x: 60, y: 100 } });
  });

  it('tells a branch after the line that it leaves, and where on each they meet', () => {
    const lines = told([line('l1', [150, 60], [150, 160]), line('l2', [40, 160], [240, 160])]);
    expect(lines.map(({ number, from, to }) => ({ number, from, to }))).toEqual([
      { number: 1, from: { kind: 'berth', which: 'start' }, to: { kind: 'paper', at: { x: 240, y: 160 } } },
      { number: 2, from: { kind: 'paper', at: { x: 150, y: 60 } }, to: { kind: 'line', number: 1 } },
    ]);
    expect(lines[0]!.steps).toMatchObject([{ kind: 'junction', way: 110, numbers: [2] }]);
    expect(lines[1]!.steps).toEqual([]);
  });

  it('tells a crossing on both lines', () => {
    const lines = told([line('l1', [40, 160], [240, 160]), line('l2', [140, 60], [140, 200])]);
    expect(lines[0]!.steps).toMatchObject([{ kind: 'junction', way: 100, numbers: [2] }]);
    expect(lines[1]!.steps).toMatchObject([{ kind: 'junction', way: 100, numbers: [1] }]);
  });
});
