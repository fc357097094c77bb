import { describe, expect, it } from 'vitest';
import { bands, drawn, findings, mark, mended, of, PIER } from './setting.ts';

const long = (...lengths: number[]) =>
  drawn(
    [PIER],
    [
      mark(
        'm',
        'pier',
        60,
        lengths.map((length, i) => ({ ink: i % 2 === 0 ? 'C' : 'A', length, gap: 0 })),
      ),
    ],
  );

describe('R-band-length', () => {
  it('R-band-length is silent from 5 to 6 mm, both included', () => {
    expect(of('R-band-length', long(5, 6))).toEqual([]);
  });

  it('R-band-length calls 4.5 and 6.5 mm untidy', () => {
    expect(of('R-band-length', long(4.5, 5))).toMatchObject([
      { variant: 'short', measured: 4.5, allowed: 5, unit: 'mm', severity: 'untidy' },
    ]);
    expect(of('R-band-length', long(6, 6.5))).toMatchObject([
      { variant: 'long', measured: 6.5, allowed: 6, severity: 'untidy' },
    ]);
  });

  it('R-band-length: under 4 or over 7 mm the mark may be misread', () => {
    expect(of('R-band-length', long(4, 4))[0]?.severity).toBe('untidy');
    expect(of('R-band-length', long(3.9, 4))).toMatchObject([
      { measured: 3.9, allowed: 4, severity: 'may-stop' },
    ]);
    expect(of('R-band-length', long(7.1, 7))).toMatchObject([
      { measured: 7.1, allowed: 7, severity: 'may-stop' },
    ]);
  });

  it('R-band-length mends to even bands of 5.5 mm about the same middle', () => {
    const mend = mended(of('R-band-length', long(3, 3))[0]);
    // Middle at 63; two bands of 5.5 reach from 57.5 to 68.5.
    expect(mend.marks[0]).toEqual({ id: 'm', line: 'pier', at: 57.5, bands: bands('CA') });
    expect(findings(mend)).toEqual([]);
  });
});
