import { describe, expect, it } from 'vitest';
import { csv } from '../../../server/http/results.ts';

/** A reader of RFC 4180, written for this test. */
function read(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/y;
  const body = text.replace(/^\uFEFF/, '');
  while (cell.lastIndex < body.length) {
    const match = cell.exec(body);
    if (!match) throw new Error(`no cell at ${cell.lastIndex}`);
    rows.at(-1)!.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('csv', () => {
  it('keeps commas, quotes, line ends and letters of all languages', () => {
    const row = ['a,b', 'say "hi"', 'two\r\nlines', 'Ñandú', '漢字', ''];
    expect(read(csv([row]))).toEqual([row]);
  });

  it('writes numbers and yes and no plainly', () => {
    expect(csv([[1, -2.5, true, false, null]])).toBe('\uFEFF1,-2.5,yes,no,\r\n');
  });

  // The first characters that spreadsheets take for a formula: OWASP, "CSV Injection".
  it.each([['=1+1'], ['+1'], ['-1'], ['@SUM(A1)'], ['\t=1'], ['\r=1'], ['\n=1']])(
    'keeps %j a text',
    (text) => {
      expect(read(csv([[text]]))).toEqual([[`'${text}`]]);
    },
  );
});
