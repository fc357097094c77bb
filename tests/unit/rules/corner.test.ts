import { describe, expect, it } from 'vitest';
import { pathOf } from '../../../shared/geometry/path.ts';
import { drawn, findings, line, mark, mended, of } from './setting.ts';

/** 110 mm to the right, then 80 mm back at an inner angle. */
const bent = (degrees: number) => {
  const angle = (degrees * Math.PI) / 180;
  return line('bent', [40, 100], [150, 100], [150 - 80 * Math.cos(angle), 100 - 80 * Math.sin(angle)]);
};

describe('R-corner', () => {
  it('R-corner is silent at 90 degrees and wider', () => {
    expect([90, 91, 120, 170].flatMap((angle) => of('R-corner', drawn([bent(angle)])))).toEqual([]);
  });

  it('R-corner is silent at a right angle that was rounded to the file form', () => {
    // Both legs turned by 30 degrees: ends at multiples of 0.01 mm, angle 89.997 degrees.
    const turned = line('turned', [40, 100], [90, 128.87], [65, 172.17]);
    expect(of('R-corner', drawn([turned]))).toEqual([]);
  });

  it('R-corner finds 89 degrees as untidy and 42 as a stop that may be', () => {
    expect(of('R-corner', drawn([bent(89)]))).toMatchObject([
      { measured: 89, allowed: 90, unit: 'degrees', severity: 'untidy', place: { at: { x: 150, y: 100 } } },
    ]);
    expect(of('R-corner', drawn([bent(42)]))).toMatchObject([
      { measured: 42, allowed: 90, unit: 'degrees', severity: 'may-stop' },
    ]);
    expect(of('R-corner', drawn([bent(50)]))[0]?.severity).toBe('untidy');
    expect(of('R-corner', drawn([bent(49)]))[0]?.severity).toBe('may-stop');
  });

  it('R-corner sees a corner between two lines, also where they miss each other by 2 mm', () => {
    const lines = [line('a', [40, 100], [150, 100]), line('b', [150, 102], [70, 150])];
    // atan2(48, 80) = 30.96 degrees
    expect(of('R-corner', drawn(lines))).toMatchObject([{ measured: 30.96 }]);
  });

  it('R-corner mends by two corners of 90 degrees and half the old angle', () => {
    const drawing = drawn([bent(60)], [mark('m', 'bent', 130, 'CA')]);
    // Legs lose 0.6 · 15 / sin 30 = 18 mm each, so the new corners stand 18 mm apart.
    const mend = mended(of('R-corner', drawn([bent(60)]))[0]);
    expect(mend.lines[0]?.pieces[0]?.to).toEqual({ x: 132, y: 100 });
    expect(mend.lines[0]?.pieces[1]?.to).toEqual({ x: 141, y: 84.41 });
    expect(of('R-corner', mend)).toEqual([]);
    // A mark within the cut legs is not moved: no mended design.
    const near = { ...drawing, marks: [mark('m', 'bent', 113, 'CA')] };
    expect(of('R-corner', near)[0]?.remedy).toEqual({ code: 'blunt-corner' });
  });

  it('R-corner keeps marks behind the cut at their places', () => {
    const long = line('long', [40, 100], [150, 100], [70, 30], [70, 170]);
    const marked = drawn([long], [mark('m', 'long', 170, 'CA')]);
    const mend = mended(findings(marked).find((f) => f.rule === 'R-corner' && f.place.at.x === 150));
    const saved = pathOf(long).length - pathOf(mend.lines[0]!).length;
    expect(saved).toBeGreaterThan(10);
    expect(mend.marks[0]?.at).toBeCloseTo(170 - saved, 1);
  });

  it('R-corner mends a corner of two lines by drawing one on to the other', () => {
    const lines = [line('a', [40, 100], [150, 100]), line('b', [150, 100], [70, 30])];
    const mend = mended(of('R-corner', drawn(lines))[0]);
    expect(mend.lines.map((l) => l.id)).toEqual(['a', 'b']);
    expect(mend.lines[0]?.pieces.at(-1)?.to).toEqual(mend.lines[1]?.from);
    expect(findings(mend)).toEqual([]);
  });

  it('R-corner says nothing of a corner of given lines', () => {
    const sheet = { given: drawn([{ ...bent(42), id: 'given' }]) };
    expect(of('R-corner', drawn([]), { sheet })).toEqual([]);
  });
});
