import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** The name of the file inside a build that says from which sources it was made. */
const STAMP_FILE = '.stamp';

function filesIn(path: string): string[] {
  if (!existsSync(path)) return [];
  const entries = readdirSync(path, { withFileTypes: true });
  return entries.flatMap((entry) => {
    const below = join(path, entry.name);
    return entry.isDirectory() ? filesIn(below) : [below];
  });
}

/** A hash over names and contents of these folders and files of the project. Times don't matter. */
export function stampOf(root: string, folders: readonly string[], files: readonly string[]): string {
  const hash = createHash('sha256');
  const all = [
    ...folders.flatMap((folder) => filesIn(join(root, folder))),
    ...files.map((f) => join(root, f)),
  ];
  for (const path of all.sort()) {
    if (!existsSync(path)) continue;
    hash.update(`${relative(root, path).split(sep).join('/')}\0`);
    hash.update(readFileSync(path));
    hash.update('\0');
  }
  return hash.digest('hex');
}

export const stampPath = (folder: string): string => join(folder, STAMP_FILE);

/** The stamp of a finished build; undefined where there is none. */
export function stampIn(folder: string): string | undefined {
  const path = stampPath(folder);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
}
