import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isToken, newToken } from './tokens.ts';

const FILE = 'owner-key';

/**
 * The owner's secret from the data folder, made at the first start. Readable by its user alone where
 * the file system knows users.
 */
export function ownerKeyIn(folder: string): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, FILE);
  try {
    const kept = readFileSync(path, 'utf8').trim();
    if (isToken(kept)) return kept;
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
  }
  const key = newToken();
  writeFileSync(path, `${key}\n`, { mode: 0o600 });
  return key;
}
