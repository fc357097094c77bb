import { existsSync, readFileSync } from 'node:fs';

/**
 * Published data that is not part of the project lies in a folder beside the checkout. Where it is
 * absent, the tests that need it say so and are skipped.
 */
const FOLDER = new URL('../../shared/reference/', import.meta.url);

export const referenceIsHere = existsSync(new URL('checks.md', FOLDER));

export const skippedWithoutReference = referenceIsHere
  ? ''
  : ' (skipped: the folder ../shared/reference is absent)';

/** Reads one JSON file of the reference folder. Call only where `referenceIsHere`. */
export function reference<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as T;
}
