import { describe, expect, it } from 'vitest';
import { berth, drawn, line, of, PIER } from './setting.ts';

/** A line 220 mm to the right, `off` below the middle of the start berth. */
const low = (off: number) => line('low', [40, 100 + off], [260, 100 + off]);

describe('R-start-on-line', () => {
  it('R-start-on-line is silent up to 8 mm beside the middle of the bar', () => {
    expect([0, 5, 8].flatMap((off) => of('R-start-on-line', drawn([low(off)])))).toEqual([]);
  });

  it('R-start-on-line finds a line 9 mm beside, two pitches of 4 mm being allowed', () => {
    expect(of('R-start-on-line', drawn([low(9)]))).toMatchObject([
      {
        variant: 'no-line',
        measured: 9,
        allowed: 8,
        unit: 'mm',
        severity: 'stops',
        place: { at: { x: 51, y: 100 } },
      },
    ]);
  });

  it('R-start-on-line finds a line that begins 4 mm ahead of the bar: its round end reaches 2.5', () => {
    // The bar is 11 mm ahead of the axle, at x = 51.
    expect(of('R-start-on-line', drawn([line('far', [53.5, 100], [200, 100])]))).toEqual([]);
    expect(of('R-start-on-line', drawn([line('far', [55, 100], [200, 100])]))).toMatchObject([
      { variant: 'no-line', measured: 4, allowed: 2.5 },
    ]);
  });

  it('R-start-on-line finds a line across the heading', () => {
    // Through the bar's middle, 60 degrees from ahead; 45 is silent.
    const through = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      const [dx, dy] = [60 * Math.cos(angle), 60 * Math.sin(angle)];
      return line('through', [51 - dx, 100 - dy], [51 + dx, 100 + dy]);
    };
    expect(of('R-start-on-line', drawn([through(44.9)]))).toEqual([]);
    expect(of('R-start-on-line', drawn([through(60)]))).toMatchObject([
      { variant: 'across', measured: 60, allowed: 45, unit: 'degrees', severity: 'may-stop' },
    ]);
  });

  it('R-start-on-line looks at every berth from which robots start', () => {
    const sheet = { finish: berth(260, 130, Math.PI) };
    expect(of('R-start-on-line', drawn([PIER]), { sheet })).toEqual([]);
    expect(of('R-start-on-line', drawn([PIER]), { sheet, starts: ['start', 'finish'] })).toMatchObject([
      { measured: 30, allowed: 8 },
    ]);
  });

  it('R-start-on-line is silent while nothing is drawn', () => {
    expect(of('R-start-on-line', drawn([]))).toEqual([]);
  });
});
