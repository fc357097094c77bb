import { crc32 } from 'node:zlib';
import type { Tables } from './tables.ts';

/**
 * A sum beside every row. SQLite sees when the structure of its file is broken,
 * never when a digit in a row has turned into another one.
 */

/** The columns that a sum covers, in the order in which they are summed. Released ones never change. */
export const SUMMED = {
  rooms: ['id', 'word', 'opened_at'],
  events: ['room', 'seq', 'at', 'version', 'fact'],
  documents: ['room', 'id', 'kind', 'body'],
  answers: ['room', 'seat', 'command', 'answer'],
  seats: ['token_hash', 'room', 'team'],
  latest: ['room', 'key', 'value'],
  server_values: ['key', 'value'],
} as const satisfies { [T in keyof Tables]: readonly (keyof Tables[T])[] };

export type Row = Readonly<Record<string, unknown>>;

export const sumOf = (table: keyof Tables, row: Row): number =>
  crc32(JSON.stringify(SUMMED[table].map((column) => row[column])));

/** A row with its sum, as it is inserted. */
export const summed = <R extends Row>(table: keyof Tables, row: R): R & { sum: number } => ({
  ...row,
  sum: sumOf(table, row),
});

/** Whether a row is what was once written. Rows from before there were sums are believed. */
export const isWhole = (table: keyof Tables, row: Row): boolean =>
  row.sum === null || row.sum === sumOf(table, row);
