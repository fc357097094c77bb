import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { csv } from '../../../server/http/csv.ts';

/** Read by another library than the one that writes. */
const read = (text: string): string[][] => parse(text, { bom: true });

describe('csv', () => {
  it('keeps commas, quotes, line ends and letters of all languages', () => {
    const row = ['a,b', 'say "hi"', 'two\r\nlines', 'Ñandú', '漢字', ' spaces ', ''];
    expect(read(csv([row, row]))).toEqual([row, row]);
  });

  it('writes numbers and yes and no plainly, in UTF-8 with a byte order mark', () => {
    expect(csv([[1, -2.5, true, false, null]])).toBe('\uFEFF1,-2.5,yes,no,\r\n');
  });

  // The first characters that spreadsheets take for a formula: OWASP, "CSV Injection".
  it.each([
    ['=1+1'],
    ['+1'],
    ['-1'],
    ['@SUM(A1)'],
    ['\t=1'],
    ['\r=1'],
    ['\n=1'],
    ['＝1'],
    ['＋1'],
    ['－1'],
    ['＠A'],
  ])('keeps %j a text', (text) => {
    expect(read(csv([[text]]))).toEqual([[`'${text}`]]);
  });
});
