import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceFile {
  /** From the top of the project, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly lines: number;
  /** Text without comments, for looking for words in code. */
  readonly code: string;
}

const CODE = /\.tsx?$/;

function walk(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return walk(path);
    return CODE.test(name) ? [path] : [];
  });
}

/** Strips comments; strings that hold `//` or a star-slash are rare enough in this project to be named. */
const withoutComments = (text: string) =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"`])\/\/[^\n]*/g, '$1');

/** Every TypeScript file below the given top-level folders. */
export function sources(...folders: string[]): SourceFile[] {
  return folders.flatMap((folder) =>
    walk(join(ROOT, folder)).map((absolute) => {
      const text = readFileSync(absolute, 'utf8');
      return {
        path: relative(ROOT, absolute).split(sep).join('/'),
        text,
        lines: text.split('\n').length - 1,
        code: withoutComments(text),
      };
    }),
  );
}

export interface Import {
  readonly from: string;
  /** A project path (`shared/track/layout.ts`) or a package's name. */
  readonly to: string;
}

const IMPORT =
  /(?:^|\n)\s*(?:import|export)\s(?:[^'"`;]*?\sfrom\s)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]/g;

/** All imports of a file, type imports included. */
export function importsOf(file: SourceFile): Import[] {
  return [...file.code.matchAll(IMPORT)].map((match) => {
    const target = (match[1] ?? match[2])!;
    return { from: file.path, to: target.startsWith('.') ? resolve(file.path, target) : target };
  });
}

function resolve(from: string, target: string): string {
  const steps = from.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.') steps.push(step);
  }
  return steps.join('/');
}
