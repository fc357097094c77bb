import papaparse from 'papaparse';

export type Cell = string | number | boolean | null;

/**
 * What spreadsheets take for the beginning of a formula: = + - @, tab, carriage return, line feed, and the
 * full-width forms of the first four (OWASP, "CSV Injection"). An apostrophe in front keeps it a text.
 */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

const plain = (cell: Cell): string | number =>
  typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : (cell ?? '');

/** Rows as CSV (RFC 4180), UTF-8 with a byte order mark, which spreadsheets need to see that it is. */
export const csv = (rows: readonly (readonly Cell[])[]): string =>
  `\uFEFF${papaparse.unparse(
    rows.map((row) => row.map(plain)),
    { newline: '\r\n', escapeFormulae: FORMULA },
  )}\r\n`;
