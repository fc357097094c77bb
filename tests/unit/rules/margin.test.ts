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

describe('R-margin on each side', () => {
  it('R-margin finds an arc that faces the edge there, at its foremost point', () => {
    // Half circles that bulge to the left of travel: radius 20 at x = 35 and 265, radius 40 at y = 50 and 150.
    const facing = {
      left: line('left', [35, 120], [35, 80, 1]),
      right: line('right', [265, 80], [265, 120, 1]),
      bottom: line('bottom', [190, 150], [110, 150, 1]),
      top: line('top', [110, 50], [190, 50, 1]),
    };
    const found = Object.values(facing).map((one) => of('R-margin', drawn([one])));
    expect(found.map((findings) => findings.map(({ measured }) => measured))).toEqual([
      [15],
      [15],
      [10],
      [10],
    ]);
    const places = found.map(([finding]) => [finding!.place.at.x, finding!.place.at.y].map(Math.round));
    expect(places).toEqual([
      [15, 100],
      [285, 100],
      [150, 190],
      [150, 10],
    ]);
  });

  it('R-margin finds the nearest of several places, wherever on the line it is', () => {
    const stops = [
      [288, 60],
      [200, 100],
      [285, 140],
      [200, 170],
    ] as [number, number][];
    const nearest = { measured: 12, place: { at: { x: 288, y: 60 } } };
    expect(of('R-margin', drawn([line('a', [200, 40], ...stops)]))).toMatchObject([nearest]);
    expect(
      of('R-margin', drawn([line('a', stops[3]!, stops[2]!, stops[1]!, stops[0]!, [200, 40])])),
    ).toMatchObject([nearest]);
  });

  it('R-margin: on the very edge a line is untidy, and a given one is nobody’s fault', () => {
    expect(of('R-margin', drawn([line('edge', [40, 100], [300, 100])]))).toMatchObject([
      { measured: 0, severity: 'untidy' },
    ]);
    const given = drawn([line('given', [40, 100], [295, 100])]);
    expect(of('R-margin', drawn([line('own', [40, 60], [200, 60])]), { sheet: { given } })).toEqual([]);
  });
});
