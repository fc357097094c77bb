import { describe, expect, it } from 'vitest';
import { drawn, mended, of, PIER } from './setting.ts';

const wide = (width: number) => drawn([{ ...PIER, width }]);

describe('R-line-width', () => {
  it('R-line-width is silent from 4 to 7 mm, both included', () => {
    expect([4, 5, 7].flatMap((width) => of('R-line-width', wide(width)))).toEqual([]);
  });

  it('R-line-width finds 3.99 and 7.01 mm', () => {
    expect(of('R-line-width', wide(3.99))).toMatchObject([
      { variant: 'thin', measured: 3.99, allowed: 4, unit: 'mm', severity: 'untidy' },
    ]);
    expect(of('R-line-width', wide(7.01))).toMatchObject([
      { variant: 'thick', measured: 7.01, allowed: 7, unit: 'mm', severity: 'may-stop' },
    ]);
  });

  it('R-line-width mends to the nominal width, and stands on the middle of the line', () => {
    const [finding] = of('R-line-width', wide(9));
    expect(finding?.place).toEqual({
      kind: 'stretch',
      line: 'pier',
      from: 0,
      to: 220,
      at: { x: 150, y: 100 },
    });
    expect(mended(finding).lines[0]?.width).toBe(5);
  });

  it('R-line-width says nothing of given lines', () => {
    const sheet = { given: drawn([{ ...PIER, id: 'given', width: 9 }]) };
    expect(of('R-line-width', drawn([]), { sheet })).toEqual([]);
  });
});
