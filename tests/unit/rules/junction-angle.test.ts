import { describe, expect, it } from 'vitest';
import { drawn, findings, line, mark, mended, of, PIER, withRules } from './setting.ts';

/** A branch of 80 mm from the pier's (150, 100) that leaves at `degrees` from ahead. */
const branch = (degrees: number) => {
  const angle = (degrees * Math.PI) / 180;
  const at = (mm: number) => Math.round(mm * 100) / 100;
  return line('branch', [150, 100], [at(150 + 80 * Math.cos(angle)), at(100 - 80 * Math.sin(angle))]);
};

describe('R-junction-angle', () => {
  it('R-junction-angle is silent for arms 75 degrees apart, on either side', () => {
    expect([75, 90, 105].flatMap((a) => of('R-junction-angle', drawn([PIER, branch(a)])))).toEqual([]);
  });

  it('R-junction-angle finds a branch 60 degrees from the way on, or from the way back', () => {
    for (const angle of [60, 120]) {
      const [finding, ...others] = of('R-junction-angle', drawn([PIER, branch(angle)]));
      expect(others).toEqual([]);
      expect(finding).toMatchObject({ unit: 'degrees', severity: 'untidy' });
      expect(finding?.allowed).toBeCloseTo(75, 9);
      expect(finding?.measured).toBeCloseTo(60, 1);
      expect(finding?.place).toEqual({ kind: 'point', at: { x: 150, y: 100 } });
    }
  });

  it('R-junction-angle: may stop under the angle at which a corner looks like a junction', () => {
    expect(of('R-junction-angle', drawn([PIER, branch(50.1)]))[0]?.severity).toBe('untidy');
    expect(of('R-junction-angle', drawn([PIER, branch(49.5)]))[0]?.severity).toBe('may-stop');
  });

  it('R-junction-angle counts a crossing once', () => {
    // Over (150, 100) with 3 across and 4 down: atan(4/3) = 53.13 degrees to the pier.
    const across = line('across', [120, 60], [180, 140]);
    expect(of('R-junction-angle', drawn([PIER, across]))).toMatchObject([{ measured: 53.13 }]);
  });

  it('R-junction-angle measures where the arms leave, also of a curve', () => {
    // A quarter circle of radius 40 that leaves the pier along it.
    const rail = line('rail', [150, 100], [190, 60, 1 - Math.SQRT2], [190, 30]);
    expect(of('R-junction-angle', drawn([PIER, rail]))).toMatchObject([
      { measured: 0, severity: 'may-stop' },
    ]);
  });

  it('R-junction-angle says nothing of given lines, but of a branch from one', () => {
    const both = drawn([PIER, branch(50)]);
    expect(of('R-junction-angle', drawn([]), { sheet: { given: both } })).toEqual([]);
    const given = drawn([{ ...PIER, id: 'given' }]);
    expect(of('R-junction-angle', drawn([branch(60)]), { sheet: { given } })).toHaveLength(1);
  });

  it('R-junction-angle goes by the kit', () => {
    const kit = withRules({ junction: { armsApart: Math.PI / 3, armLength: 25, snap: 3 } });
    expect(of('R-junction-angle', drawn([PIER, branch(60)]), { kit })).toEqual([]);
  });

  it('R-junction-angle is mended by moving the end of the branch along the line', () => {
    // The branch comes down from (190, 30.72); square it would end at x = 190. At 76 degrees:
    // 69.28 / tan 76° = 17.27 mm before that.
    const sideways = line('branch', [190, 30.72], [150, 100]);
    const [finding] = of('R-junction-angle', drawn([PIER, sideways]));
    const better = mended(finding);
    expect(better.lines[1]?.pieces[0]?.to.x).toBeCloseTo(172.73, 2);
    expect(better.lines[1]?.pieces[0]?.to.y).toBe(100);
    expect(better.lines[0]).toEqual(PIER);
    expect(findings(better).filter(({ rule }) => rule.startsWith('R-junction'))).toEqual([]);
  });

  it('R-junction-angle leaves no mark behind the end of a line that gets shorter', () => {
    // The branch begins on the pier; squared up it loses more than 3 mm there, and the mark stood at 1 mm.
    const onwards = line('branch', [150, 100], [190, 30.72]);
    const marked = drawn([PIER, onwards], [mark('m', 'branch', 1, 'CA')]);
    const designs = findings(marked).flatMap(({ remedy }) => remedy?.design ?? []);
    for (const { drawing } of designs) {
      for (const { at } of drawing.marks) expect(at).toBeGreaterThanOrEqual(0);
    }
  });
});
