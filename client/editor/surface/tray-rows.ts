import { type Action, actionOf, type Kit, reversed } from '../../../shared/documents/kit.ts';

/** One row of the tray: a word, and what it means from the other side if that differs. */
export interface TrayRow {
  readonly word: string;
  readonly action: Action;
  readonly back: Action | null;
}

/** The kit's chart, one row a mark: the two readings of a one-way mark share a row. */
export function trayRows(kit: Kit): TrayRow[] {
  const rows: TrayRow[] = [];
  for (const { word, action } of kit.chart) {
    const other = reversed(word);
    if (rows.some((row) => row.word === other)) continue;
    const back = other === word ? null : (actionOf(kit, other) ?? null);
    rows.push({ word, action, back });
  }
  return rows;
}
