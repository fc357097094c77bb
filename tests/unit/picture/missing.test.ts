import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { Finding } from '../../../shared/documents/verdict.ts';
import { missingOf } from '../../../shared/picture/missing.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { FULL_SHEET, STRAIGHT } from './picture-setting.ts';

/** Expected shapes are worked out by hand. */

const found = (change: Partial<Finding>): Finding => ({
  id: 'f',
  rule: 'R-corner',
  severity: 'may-stop',
  place: { kind: 'point', at: { x: 100, y: 100 } },
  unit: 'mm',
  ...change,
});
const layout = (drawing: Drawing) => layOut(FULL_SHEET, drawing);
const line = (from: [number, number], ...to: [number, number, number?][]): Drawing => ({
  lines: [
    {
      id: 'l1',
      width: 5,
      from: { x: from[0], y: from[1] },
      pieces: to.map(([x, y, bulge = 0]) => ({ to: { x, y }, bulge })),
    },
  ],
  marks: [],
});

describe('missingOf', () => {
  it('a sharp corner: from one arm as far open as allowed, to the side of the other', () => {
    // Comes from the left, goes back up and to the left at 45°.
    const corner = layout(line([0, 100], [100, 100], [50, 50]));
    const missing = missingOf(found({ measured: 45, allowed: 90, unit: 'degrees' }), corner);
    expect(missing).toMatchObject({ kind: 'wedge', at: { x: 100, y: 100 } });
    if (missing?.kind !== 'wedge') throw new Error('no wedge');
    // Kept is the arm back towards (0, 100); from it, the one towards (50, 50) lies clockwise on the sheet.
    expect(missing.arm.x).toBeCloseTo(-1, 9);
    expect(missing.arm.y).toBeCloseTo(0, 9);
    expect(missing.sweep).toBeCloseTo(Math.PI / 2, 9);
  });

  it('a tight curve: the allowed circle touches it from inside', () => {
    // Half a circle of radius 10 from (90, 100) over (100, 90) to (110, 100).
    const curve = layout(line([90, 100], [110, 100, 1]));
    const at = { x: 100, y: 90 };
    const tight = found({ rule: 'R-curve-radius', place: { kind: 'point', at }, measured: 10, allowed: 15 });
    const missing = missingOf(tight, curve);
    expect(missing).toMatchObject({ kind: 'circle', radius: 15 });
    if (missing?.kind !== 'circle') throw new Error('no circle');
    expect(missing.at.x).toBeCloseTo(100, 9);
    expect(missing.at.y).toBeCloseTo(105, 9);
  });

  it('too little line before a mark: as much as asked for, on over the end of the line', () => {
    const missing = missingOf(
      found({
        rule: 'R-before-mark',
        place: { kind: 'mark', at: { x: 95, y: 150 }, mark: 'm1' },
        measured: 40,
        allowed: 50,
      }),
      layout(STRAIGHT),
    );
    expect(missing).toEqual({
      kind: 'stretch',
      pieces: [
        { from: { x: 40, y: 150 }, to: { x: 50, y: 150 }, bulge: 0 },
        { from: { x: 50, y: 150 }, to: { x: 90, y: 150 }, bulge: 0 },
      ],
    });
  });

  it('too little line after a mark: on the side on which there is so much, up to the corner', () => {
    const bent = line([0, 100], [100, 100], [100, 180]);
    const mark = { id: 'm1', line: 'l1', at: 70, bands: [{ ink: 'C', length: 10, gap: 0 }] };
    const missing = missingOf(
      found({
        rule: 'R-after-mark',
        place: { kind: 'mark', at: { x: 75, y: 100 }, mark: 'm1' },
        measured: 20,
        allowed: 30,
      }),
      layout({ ...bent, marks: [mark] }),
    );
    expect(missing).toEqual({
      kind: 'stretch',
      pieces: [
        { from: { x: 80, y: 100 }, to: { x: 100, y: 100 }, bulge: 0 },
        { from: { x: 100, y: 100 }, to: { x: 100, y: 110 }, bulge: 0 },
      ],
    });
  });

  it('lines too close: a circle as wide as they should be apart', () => {
    const near = found({ rule: 'R-clearance', measured: 10, allowed: 15 });
    expect(missingOf(near, layout(STRAIGHT))).toEqual({
      kind: 'circle',
      at: { x: 100, y: 100 },
      radius: 7.5,
    });
  });

  it('nothing where a count or no number tells', () => {
    expect(
      missingOf(found({ rule: 'R-mark-budget', allowed: 3, unit: 'count' }), layout(STRAIGHT)),
    ).toBeUndefined();
    expect(missingOf(found({ rule: 'R-margin' }), layout(STRAIGHT))).toBeUndefined();
  });
});
