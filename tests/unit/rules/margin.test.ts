import { describe, expect, it } from 'vitest';
import { drawn, line, of } from './setting.ts';

describe('R-margin', () => {
  it('R-margin is silent at exactly 20 mm from every edge', () => {
    const round = line('round', [20, 20], [280, 20], [280, 180], [20, 180]);
    expect(of('R-margin', drawn([round]))).toEqual([]);
  });

  it('R-margin finds 19.5 mm at the right edge', () => {
    const near = line('near', [40, 100], [280.5, 100]);
    expect(of('R-margin', drawn([near]))).toMatchObject([
      { measured: 19.5, allowed: 20, unit: 'mm', severity: 'untidy', place: { at: { x: 280.5, y: 100 } } },
    ]);
  });

  it('R-margin measures a line over the edge as negative', () => {
    const over = line('over', [40, 100], [150, -5]);
    expect(of('R-margin', drawn([over]))).toMatchObject([{ measured: -5, severity: 'may-stop' }]);
  });

  it('R-margin finds where an arc bulges towards the edge', () => {
    // A half circle of radius 40 over (110, 50)-(190, 50): its top lies at y = 10.
    const arch = line('arch', [110, 50], [190, 50, 1]);
    const [finding] = of('R-margin', drawn([arch]));
    expect(finding).toMatchObject({ measured: 10 });
    expect(finding?.place.at.x).toBeCloseTo(150, 6);
    expect(finding?.place.at.y).toBeCloseTo(10, 6);
  });

  it('R-margin gives each edge of the paper its own finding, with its own id', () => {
    const corner = line('corner', [40, 100], [290, 190]);
    const found = of('R-margin', drawn([corner]));
    expect(found.map((f) => f.measured)).toEqual([10, 10]);
    expect(new Set(found.map((f) => f.id)).size).toBe(2);
  });
});
