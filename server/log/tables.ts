import type { DocumentKind } from './event-log.ts';

/** The tables as queries see them. Events, documents and answers are only ever inserted. */
export interface Tables {
  rooms: { id: string; word: string; opened_at: number };
  events: { room: string; seq: number; at: number; version: number; fact: string };
  documents: { room: string; id: string; kind: DocumentKind; body: string };
  answers: { room: string; seat: string; command: string; answer: string };
  seats: { token_hash: string; room: string; team: string };
  latest: { room: string; key: string; value: string };
}
