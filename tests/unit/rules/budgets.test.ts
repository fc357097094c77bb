import { describe, expect, it } from 'vitest';
import { berth, drawn, line, mark, mended, of, PIER } from './setting.ts';

describe('R-ink-budget', () => {
  const branch = line('branch', [150, 100], [150, 40]);

  it('R-ink-budget is silent at exactly what is allowed, and where nothing is said', () => {
    expect(of('R-ink-budget', drawn([PIER, branch]), { limits: { ink: 280 } })).toEqual([]);
    expect(of('R-ink-budget', drawn([PIER, branch]))).toEqual([]);
  });

  it('R-ink-budget finds 280 mm where 279.9 are allowed, on the longest line', () => {
    // The branch parts the pier into 110 and 110 mm, and is shorter than either.
    const [finding, ...others] = of('R-ink-budget', drawn([PIER, branch]), { limits: { ink: 279.9 } });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ measured: 280, allowed: 279.9, unit: 'mm', severity: 'stops' });
    expect(finding?.place).toMatchObject({ kind: 'stretch', line: 'pier' });
  });

  it('R-ink-budget counts given lines and what is drawn twice as nothing', () => {
    const given = drawn([{ ...PIER, id: 'given' }]);
    const limits = { ink: 60 };
    expect(of('R-ink-budget', drawn([branch]), { sheet: { given }, limits })).toEqual([]);
    expect(of('R-ink-budget', drawn([branch, { ...branch, id: 'again' }]), { limits })).toEqual([]);
  });

  it('R-ink-budget: no mended drawing takes more line than is left', () => {
    const gap = [line('a', [40, 100], [150, 100]), line('b', [158, 100], [260, 100])];
    const sheet = { finish: berth(260, 100) };
    const [enough] = of('R-loose-end', drawn(gap), { sheet, limits: { ink: 220 } });
    expect(mended(enough).lines).toHaveLength(2);
    const [short] = of('R-loose-end', drawn(gap), { sheet, limits: { ink: 219 } });
    expect(short?.remedy).toEqual({ code: 'close-gap' });
  });
});

describe('R-mark-budget', () => {
  const marks = [mark('one', 'pier', 60, 'CA'), mark('two', 'pier', 120, 'AC')];

  it('R-mark-budget is silent at exactly what is allowed, and where nothing is said', () => {
    expect(of('R-mark-budget', drawn([PIER], marks), { limits: { marks: 2 } })).toEqual([]);
    expect(of('R-mark-budget', drawn([PIER], marks))).toEqual([]);
  });

  it('R-mark-budget finds two marks where one is allowed, at the last', () => {
    expect(of('R-mark-budget', drawn([PIER], marks), { limits: { marks: 1 } })).toMatchObject([
      { measured: 2, allowed: 1, unit: 'count', severity: 'stops', place: { kind: 'mark', mark: 'two' } },
    ]);
  });

  it('R-mark-budget counts given marks as nothing', () => {
    const given = { lines: [{ ...PIER, id: 'given' }], marks: [mark('g', 'given', 60, 'CA')] };
    const own = drawn([], [mark('own', 'given', 120, 'AC')]);
    expect(of('R-mark-budget', own, { sheet: { given }, limits: { marks: 1 } })).toEqual([]);
    expect(of('R-mark-budget', own, { sheet: { given }, limits: { marks: 0 } })).toHaveLength(1);
  });
});
