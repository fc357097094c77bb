import type { DocumentKind } from '../../shared/documents/kinds.ts';

/**
 * The tables as queries see them. Events, documents and answers are only ever inserted. `sum` is that
 * of the other columns; null in rows from before there were sums.
 */
export interface Tables {
  rooms: { id: string; word: string; opened_at: number; sum: number | null };
  events: { room: string; seq: number; at: number; version: number; fact: string; sum: number | null };
  documents: { room: string; id: string; kind: DocumentKind; body: string; sum: number | null };
  answers: { room: string; seat: string; command: string; answer: string; sum: number | null };
  seats: { token_hash: string; room: string; team: string; sum: number | null };
  server_values: { key: string; value: string; sum: number | null };
  latest: { room: string; key: string; value: string; sum: number | null };
}
