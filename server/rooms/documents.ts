import { createHash } from 'node:crypto';
import type * as z from 'zod/mini';
import { Answers } from '../../shared/documents/answers.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { ClosingCheck } from '../../shared/documents/closing-check.ts';
import { Design } from '../../shared/documents/design.ts';
import type { DocumentKind } from '../../shared/documents/kinds.ts';
import { Kit } from '../../shared/documents/kit.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import type { StoredDocument } from '../log/event-log.ts';

/** JSON with the keys of every object in order of their code units, so that equal values are equal text. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((v) => canonicalJson(v ?? null)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value)
      .filter(([, v]) => v !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonicalJson(v)}`).join(',')}}`;
  }
  return JSON.stringify(value);
}

/** A document ready to be kept: its id is the SHA-256 of its canonical JSON. */
export function storedDocument(kind: DocumentKind, fileForm: unknown): StoredDocument {
  const body = canonicalJson(fileForm);
  return { id: createHash('sha256').update(body).digest('hex'), kind, body };
}

const stored =
  <T>(kind: DocumentKind, schema: z.ZodMiniType<T, unknown>) =>
  (value: T): StoredDocument =>
    storedDocument(kind, writeDocument(schema, value));

export const storedAnswers = stored<Answers>('answers', Answers);
export const storedDesign = stored<Design>('design', Design);
export const storedClosingCheck = stored<ClosingCheck>('closing-check', ClosingCheck);
export const storedKit = stored<Kit>('kit', Kit);
export const storedChallenge = stored<Challenge>('challenge', Challenge);

/** What a challenge's file says to those who have to solve it: not the maker's design, nor the teacher's note. */
export function withoutTeachersPart(challenge: unknown): unknown {
  if (typeof challenge !== 'object' || challenge === null) return challenge;
  const { model: _, note: __, ...rest } = challenge as Record<string, unknown>;
  return rest;
}

/**
 * What a board sets beside the runs that it makes: those that were judged, and the goals. All else would tell in
 * which weather they were, which of a single team nobody else knows.
 */
export function withoutWeather(verdict: unknown): unknown {
  if (typeof verdict !== 'object' || verdict === null) return verdict;
  const { steadiness: _, odds: __, ...rest } = verdict as Record<string, unknown>;
  return { ...rest, findings: [], points: [] };
}
