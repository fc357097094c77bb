import { describe, expect, it } from 'vitest';
import type { Drawing, Line } from '../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { viewOf } from '../../../shared/rules/context.ts';
import { cornerCutAcross } from '../../../shared/rules/mend-corner.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { drawn, line, mark, SHEET } from './setting.ts';

/** A right angle at (150, 100): 110 mm to the left, 80 mm down. */
const ELBOW = line('elbow', [40, 100], [150, 100], [150, 180]);
const LEFT = line('left', [40, 100], [150, 100]);
const DOWN = line('down', [150, 100], [150, 180]);
const straight = (x: number, y: number) => ({ to: { x, y }, bulge: 0 });

function cut(drawing: Drawing, leg = 20, given: readonly Line[] = []) {
  const view = viewOf(ruleContext({ ...SHEET, given: drawn([...given]) }, drawing, DEMO_KIT));
  const node = view.track.nodes.find(
    ({ kind, at }) => kind === 'corner' && Math.hypot(at.x - 150, at.y - 100) < 1,
  )!;
  return cornerCutAcross(view, node, leg);
}

describe('cornerCutAcross', () => {
  it('cuts a corner within a line, and keeps marks behind it where they lie on the paper', () => {
    const marks = [mark('a', 'elbow', 40, 'CA'), mark('b', 'elbow', 140, 'CA')];
    const [mend, ...others] = cut(drawn([ELBOW], marks));
    expect(others).toEqual([]);
    expect(mend!.lines).toEqual([
      { ...ELBOW, pieces: [straight(130, 100), straight(150, 120), straight(150, 180)] },
    ]);
    // 20 √2 mm instead of 40.
    expect(mend!.marks.map(({ at }) => at)).toEqual([
      40,
      Math.round((140 - 40 + 20 * Math.SQRT2) * 100) / 100,
    ]);
  });

  it('draws the line that leads to the corner on to the other, on whichever side that is', () => {
    expect(cut(drawn([LEFT, DOWN]))[0]!.lines).toEqual([
      { ...LEFT, pieces: [straight(130, 100), straight(150, 120)] },
      { ...DOWN, from: { x: 150, y: 120 } },
    ]);
    expect(cut(drawn([DOWN, LEFT]))[0]!.lines).toEqual([
      { ...DOWN, from: { x: 150, y: 120 } },
      { ...LEFT, pieces: [straight(130, 100), straight(150, 120)] },
    ]);
  });

  it('tells two lines that end at the corner from one that goes over it', () => {
    // The second has a vertex of its own before its last piece.
    const up = line('up', [230, 180], [150, 180], [150, 100]);
    const [mend] = cut(drawn([LEFT, up]));
    expect(mend!.lines.map(({ id, pieces }) => [id, pieces.length])).toEqual([
      ['left', 2],
      ['up', 2],
    ]);
    expect(mend!.lines[1]!.from).toEqual({ x: 230, y: 180 });
  });

  it('leaves a leg at least a millimetre', () => {
    const short = line('elbow', [40, 100], [150, 100], [150, 121]);
    expect([20, 20.01].map((leg) => cut(drawn([short]), leg).length)).toEqual([1, 0]);
    const first = line('elbow', [129, 100], [150, 100], [150, 180]);
    expect([20, 20.01].map((leg) => cut(drawn([first]), leg).length)).toEqual([1, 0]);
    // A vertex on the leg, 10 mm from the corner: the pieces that would be cut are shorter than the leg.
    const parted = line('elbow', [40, 100], [140, 100], [150, 100], [150, 180]);
    expect([8, 20].map((leg) => cut(drawn([parted]), leg).length)).toEqual([1, 0]);
  });

  it('cuts no leg with a junction or a mark on it', () => {
    const across = line('across', [135, 40], [135, 160]);
    expect([14, 20].map((leg) => cut(drawn([ELBOW, across]), leg).length)).toEqual([1, 0]);
    // The mark ends 10 mm before the corner, or begins 10 mm behind it.
    const marked = (at: number, leg: number) =>
      cut(drawn([ELBOW], [mark('m', 'elbow', at, 'CA')]), leg).length;
    expect([marked(89, 9), marked(89, 11), marked(120, 9), marked(120, 11)]).toEqual([1, 0, 1, 0]);
  });

  it('cuts nothing where two lines go on over the corner, as with one drawn twice whose last vertex was moved', () => {
    const twice = ['first', 'second'].map((id, i) =>
      line(id, [40, 100], [150, 100], [150, 180, 0.2], [230, 180 - 30 * i]),
    );
    // Of each only the straight to the corner is a leg: neither begins or ends there.
    expect(cut(drawn(twice))).toEqual([]);
  });

  it('cuts nothing where a leg is bent or given', () => {
    expect(cut(drawn([line('elbow', [40, 100], [150, 100], [150, 180, 0.2])]))).toEqual([]);
    expect(cut(drawn([DOWN]), 20, [LEFT])).toEqual([]);
  });
});
