import { useEffect, useState } from 'react';
import type * as z from 'zod/mini';
import { DOCUMENT_SCHEMAS, type DocumentBodies, type DocumentKind } from '../../shared/documents/kinds.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import type { DocumentId } from '../../shared/room/state.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import type { Link } from '../link/connect.ts';
import { useLink, useLinkState } from './use-link.tsx';

export type Loaded<T> =
  | { readonly kind: 'none' }
  | { readonly kind: 'loading' }
  | { readonly kind: 'here'; readonly value: T }
  | { readonly kind: 'refused'; readonly refusal: WireRefusal };

export const hereOf = <T>(loaded: Loaded<T>): T | null => (loaded.kind === 'here' ? loaded.value : null);

/** Parsed documents by id: they never change, so equal ids give the same object to every component. */
const parsed = new Map<DocumentId, unknown>();

/** Fetches and reads one document. */
export async function loadDocument<K extends DocumentKind>(
  link: Link,
  kind: K,
  id: DocumentId,
): Promise<Loaded<DocumentBodies[K]>> {
  const known = parsed.get(id);
  if (known) return { kind: 'here', value: known as DocumentBodies[K] };
  const fetched = await link.fetchDocument(id);
  if (!fetched.ok) return { kind: 'refused', refusal: fetched.refusal };
  return takeUpDocument(kind, id, fetched.body);
}

/** Reads a document that came, and knows it from then on. */
export function takeUpDocument<K extends DocumentKind>(
  kind: K,
  id: DocumentId,
  body: unknown,
): Loaded<DocumentBodies[K]> {
  const schema = DOCUMENT_SCHEMAS[kind] as unknown as z.ZodMiniType<DocumentBodies[K], unknown>;
  const read = parseDocument(schema, body);
  if (!read.ok) {
    const problem = read.problems[0];
    const refusal = {
      code: 'bad-form',
      path: problem?.path.join('.') ?? '',
      problem: problem?.code ?? '',
    } as const;
    return { kind: 'refused', refusal };
  }
  parsed.set(id, read.value);
  return { kind: 'here', value: read.value };
}

/** A document for a component; null for "none yet". Tries again when the link comes back. */
export function useDocument<K extends DocumentKind>(
  kind: K,
  id: DocumentId | null,
): Loaded<DocumentBodies[K]> {
  const link = useLink();
  const live = useLinkState((state) => state.status.kind === 'live');
  const [loaded, setLoaded] = useState<{ id: DocumentId; result: Loaded<DocumentBodies[K]> } | null>(null);
  const here = id !== null && parsed.has(id);
  useEffect(() => {
    if (id === null || here || !live) return;
    let current = true;
    void loadDocument(link, kind, id).then((result) => current && setLoaded({ id, result }));
    return () => {
      current = false;
    };
  }, [link, kind, id, here, live]);
  if (id === null) return { kind: 'none' };
  if (here) return { kind: 'here', value: parsed.get(id) as DocumentBodies[K] };
  return loaded?.id === id ? loaded.result : { kind: 'loading' };
}
