import type { IncomingMessage } from 'node:http';

/** A page of another site must not speak with this browser's cookies. Programs send no Origin. */
export function isSameSite({ headers }: Pick<IncomingMessage, 'headers'>): boolean {
  const { origin, host } = headers;
  if (origin === undefined) return true;
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}
