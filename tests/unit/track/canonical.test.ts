import { describe, expect, it } from 'vitest';
import type { Line, Mark } from '../../../shared/documents/design.ts';
import { canonicalDrawing } from '../../../shared/track/canonical.ts';
import { drawn, line, mark, NOTHING } from '../rules/setting.ts';

const form = (lines: Line[], marks: Mark[] = []) => canonicalDrawing(drawn(lines, marks), NOTHING);
const shape = (l: Line) =>
  [l.from, ...l.pieces.map((piece) => piece.to)].map((p) => `${p.x},${p.y}`).join(' ');
const shapes = (lines: Line[], marks: Mark[] = []) => form(lines, marks).lines.map(shape);

describe('canonicalDrawing', () => {
  it('runs a line from its smaller end, and turns its marks and bulges with it', () => {
    const back = line('back', [200, 100], [100, 100], [60, 100, 0.5]);
    const turned = form([back], [mark('m', 'back', 20, 'CAV')]);
    expect(turned.lines).toEqual([line('line-1', [60, 100], [100, 100, -0.5], [200, 100])]);
    // The arc: chord 40, bulge 0.5, radius 40 · 1.25 / 2 = 25, sweep 4 atan 0.5, length 46.36 mm.
    // From the other end the mark begins at 46.36 + 100 − 20 − 16.5.
    expect(turned.marks).toEqual([mark('m', 'line-1', 109.86, 'VAC')]);
  });

  it('joins lines end to end, straight on or at a corner, whatever their directions', () => {
    const a = line('a', [40, 100], [140, 100]);
    expect(shapes([a, line('b', [240, 100], [140, 100])])).toEqual(['40,100 240,100']);
    expect(shapes([a, line('b', [140, 100], [140, 160])])).toEqual(['40,100 140,100 140,160']);
  });

  it('leaves lines apart that differ in width, or that only come near', () => {
    const a = line('a', [40, 100], [140, 100]);
    expect(shapes([a, { ...line('b', [140, 100], [240, 100]), width: 6 }])).toHaveLength(2);
    expect(shapes([a, line('b', [140.01, 100], [240, 100])])).toHaveLength(2);
  });

  it('ends every line where three arms meet in a point', () => {
    const through = line('through', [40, 100], [140, 100], [240, 110]);
    const stem = line('stem', [140, 100], [140, 180]);
    const three = ['40,100 140,100', '140,100 140,180', '140,100 240,110'];
    expect(shapes([through, stem])).toEqual(three);
    expect(shapes([line('a', [240, 110], [140, 100], [140, 180]), line('b', [140, 100], [40, 100])])).toEqual(
      three,
    );
  });

  it('does not cut a line under a mark', () => {
    const through = line('through', [40, 100], [140, 100], [240, 100]);
    const stem = line('stem', [140, 100], [140, 180]);
    const { lines, marks } = form([through, stem], [mark('m', 'through', 95, 'CA')]);
    expect(lines.map(shape)).toEqual(['40,100 240,100', '140,100 140,180']);
    expect(marks).toEqual([mark('m', 'line-1', 95, 'CA')]);
  });

  it('joins pieces that go on in one straight or one circle, but not two circles', () => {
    expect(shapes([line('l', [40, 100], [100, 100], [170, 100], [240, 160])])).toEqual([
      '40,100 170,100 240,160',
    ]);
    const quarter = Math.SQRT2 - 1;
    const half = form([line('l', [100, 100], [130, 130, quarter], [100, 160, quarter])]).lines[0];
    expect(half?.pieces).toHaveLength(1);
    expect(half?.pieces[0]?.bulge).toBeCloseTo(1, 5);
    // Tangent, but of radius 30 and 40: the joint lies on one arc, the arcs don't.
    expect(
      form([line('l', [100, 100], [130, 130, quarter], [90, 170, quarter])]).lines[0]?.pieces,
    ).toHaveLength(2);
  });

  it('begins a ring at its smallest corner, whichever it was drawn from', () => {
    const a = line('a', [60, 40], [160, 60], [110, 140], [60, 40]);
    const b = line('b', [110, 140], [160, 60], [60, 40], [110, 140]);
    expect(form([a])).toEqual(form([b]));
    expect(shapes([a])).toEqual(['60,40 110,140 160,60 60,40']);
  });

  it('draws a ring once that was drawn twice from different corners, in one line or in two', () => {
    const once = line('a', [60, 40], [160, 60], [150, 150], [70, 140], [60, 40]);
    const again = line('b', [150, 150], [70, 140], [60, 40], [160, 60], [150, 150]);
    const halves = [line('c', [160, 60], [60, 40], [70, 140]), line('d', [160, 60], [150, 150], [70, 140])];
    const marks = [mark('m', 'b', 30, 'CA')];
    expect(form([once, again])).toEqual(form([once]));
    expect(form([once, ...halves])).toEqual(form([once]));
    expect(form([once, again], marks)).toEqual(form([again], marks));
  });

  it('draws a line once that was drawn twice, with the marks of both', () => {
    const a = line('a', [40, 100], [140, 100]);
    const b = line('b', [140, 100], [40, 100]);
    const { lines, marks } = form([a, b], [mark('m', 'b', 20, 'CA')]);
    expect(lines.map(shape)).toEqual(['40,100 140,100']);
    expect(marks).toEqual([mark('m', 'line-1', 69, 'AC')]);
  });

  it('keeps marks on given lines, and takes no name that a given line has', () => {
    const given = drawn([line('line-1', [40, 40], [140, 40])]);
    const drawing = drawn([line('a', [40, 100], [140, 100])], [mark('m', 'line-1', 50, 'CA')]);
    const { lines, marks } = canonicalDrawing(drawing, given);
    expect(lines.map((l) => l.id)).toEqual(['xline-1']);
    expect(marks).toEqual([mark('m', 'line-1', 50, 'CA')]);
  });

  it('neither turns nor joins a line over whose end a mark hangs', () => {
    const a = line('a', [140, 100], [40, 100]);
    const b = line('b', [40, 100], [40, 160]);
    const { lines, marks } = form([a, b], [mark('m', 'a', 95, 'CA')]);
    expect(lines.map(shape)).toEqual(['40,100 40,160', '140,100 40,100']);
    expect(marks).toEqual([mark('m', 'line-2', 95, 'CA')]);
  });
});
