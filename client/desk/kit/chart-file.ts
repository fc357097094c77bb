import Papa from 'papaparse';
import * as z from 'zod/mini';
import { type Action, ChartRow } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { chartOf, type MarkRow, marksOf } from '../../../shared/kit/marks.ts';
import { lasting, MEANINGS, meaningKey, meaningOf, timeOf } from './meanings.ts';

/** Charts as files of their own: CSV for spreadsheets, one row a mark, and JSON. */

/** Why a file gives no chart; `row` is its line, from 1. */
export type ChartTrouble =
  | { readonly code: 'no-chart' }
  | { readonly code: 'too-long'; readonly most: number }
  | { readonly code: 'no-word'; readonly row: number; readonly cell: string }
  | { readonly code: 'no-meaning'; readonly row: number; readonly cell: string };

export type ReadChart =
  | { readonly ok: true; readonly chart: readonly ChartRow[] }
  | { readonly ok: false; readonly trouble: ChartTrouble };

const MOST_WORDS = 200;
const HEAD = ['mark', 'meaning', 'from the other side'] as const;
const no = (trouble: ChartTrouble): ReadChart => ({ ok: false, trouble });

const written = (action: Action): string => {
  const time = timeOf(action);
  return time === null ? meaningKey(action) : `${meaningKey(action)} ${time}`;
};

/** RFC 4180, with a byte order mark, which spreadsheets need to see that it is UTF-8. */
export function chartAsCsv(chart: readonly ChartRow[]): string {
  const rows = marksOf(chart).map(({ word, action, back }) => [
    word,
    written(action),
    back === null ? '' : written(back),
  ]);
  return `\uFEFF${Papa.unparse([[...HEAD], ...rows], { newline: '\r\n', escapeFormulae: true })}\r\n`;
}

/**
 * A chart of marks, meanings and meanings from the other side. Meanings are those of the document or what
 * `nameOf` calls them, in any case, with a time behind them where one lasts. A head is passed over.
 */
export function chartFromCsv(text: string, nameOf: (action: Action) => string): ReadChart {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: 'greedy' });
  const marks: MarkRow[] = [];
  for (const [i, cells] of data.entries()) {
    const [first = '', second = '', third = ''] = cells.map((cell) => cell.trim());
    if (i === 0 && first.toLowerCase() === HEAD[0]) continue;
    const word = first.toUpperCase();
    if (!/^[A-Z]{1,8}$/.test(word)) return no({ code: 'no-word', row: i + 1, cell: first });
    const action = read(second, nameOf);
    const back = third === '' ? null : read(third, nameOf);
    if (action === undefined) return no({ code: 'no-meaning', row: i + 1, cell: second });
    if (back === undefined) return no({ code: 'no-meaning', row: i + 1, cell: third });
    marks.push({ word, action, back });
  }
  if (marks.length === 0) return no({ code: 'no-chart' });
  const chart = chartOf(marks);
  return chart.length > MOST_WORDS ? no({ code: 'too-long', most: MOST_WORDS }) : { ok: true, chart };
}

/** `wait 0.5` or `wait 0,5 s`: a meaning, and how long it lasts. */
const TIMED = /^(.*?)\s+(\d{1,4}(?:[.,]\d{1,2})?)(?: ?s)?$/;
const MOST_SECONDS = 3600;

function read(cell: string, nameOf: (action: Action) => string): Action | undefined {
  const plain = named(cell, nameOf);
  if (plain) return plain;
  const [, name, time] = TIMED.exec(cell) ?? [];
  const action = name === undefined ? undefined : named(name, nameOf);
  if (!action || time === undefined || timeOf(action) === null) return undefined;
  const seconds = Number(time.replace(',', '.'));
  return seconds <= MOST_SECONDS ? lasting(action, seconds) : undefined;
}

const named = (cell: string, nameOf: (action: Action) => string): Action | undefined =>
  meaningOf(cell.toLowerCase()) ??
  MEANINGS.find((action) => nameOf(action).toLowerCase() === cell.toLowerCase());

const CHART_FILE = { format: 'harbour-lines-chart', version: 1 } as const;
const ChartFile = z.strictObject({
  format: z.literal(CHART_FILE.format),
  version: z.literal(CHART_FILE.version),
  chart: z.array(ChartRow).check(z.minLength(1), z.maxLength(MOST_WORDS)),
});

export const chartAsJson = (chart: readonly ChartRow[]): string =>
  `${JSON.stringify(writeDocument(ChartFile, { ...CHART_FILE, chart: [...chart] }), null, 2)}\n`;

export function chartFromJson(text: string): ReadChart {
  try {
    const read = parseDocument(ChartFile, JSON.parse(text));
    return read.ok ? { ok: true, chart: read.value.chart } : no({ code: 'no-chart' });
  } catch {
    return no({ code: 'no-chart' });
  }
}
