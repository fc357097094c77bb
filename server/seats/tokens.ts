import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const TOKEN = /^[A-Za-z0-9_-]{32,64}$/;

/** A secret of 192 random bits, safe in a cookie and in an address. */
export const newToken = (): string => randomBytes(24).toString('base64url');

export const isToken = (text: string | undefined): text is string => text !== undefined && TOKEN.test(text);

/** What the log keeps of a token. Tokens are random, so a plain hash cannot be guessed back. */
export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Compares two secrets in a time that does not tell how much of them agrees. */
export function sameSecret(a: string, b: string): boolean {
  return timingSafeEqual(Buffer.from(hashOf(a)), Buffer.from(hashOf(b)));
}
