import { describe, expect, it } from 'vitest';
import { sources } from './files.ts';

const MOST_LINES_IN_FILE = 300;
const MOST_LINES_IN_FUNCTION = 90;
/** The one exception: the step of the simulation, kept in one piece for its speed. */
const STEP = { file: 'shared/run/step.ts', most: 200 };

const files = sources('shared', 'server', 'client', 'tests');

interface FunctionSize {
  readonly name: string;
  readonly lines: number;
}

const HEAD =
  /^(\s*)(?:export )?(?:default )?(?:async )?(?:function\*? (\w+)|(?:const|let) (\w+)(?:: [^=]+)? = (?:async )?(?:\([^)]*\)|\w+)(?:: [^=]+)? =>|(?:private |protected |public |static |async |override |get |set )*(\w+)\([^;]*\)(?:: [^{;]+)? \{$)/;

/**
 * Functions by their indentation: the formatter puts a body's closing brace in the column of its head.
 * Test files are suites of small functions inside one, so they are measured by file only.
 */
function functionsOf(text: string): FunctionSize[] {
  const lines = text.split('\n');
  return lines.flatMap((line, i) => {
    const head = HEAD.exec(line);
    const name = head?.[2] ?? head?.[3] ?? head?.[4];
    if (!head || !name || ['if', 'for', 'while', 'switch', 'catch'].includes(name)) return [];
    const indent = head[1]!;
    if (!/[{(]$/.test(line)) return [];
    const end = lines.findIndex(
      (l, j) => j > i && l.startsWith(indent) && /^[})]/.test(l.slice(indent.length)),
    );
    return end < 0 ? [] : [{ name, lines: end - i + 1 }];
  });
}

describe('sizes', () => {
  it('no file is longer than a person reads at once', () => {
    const long = files.filter((f) => f.lines > MOST_LINES_IN_FILE).map((f) => `${f.path}: ${f.lines}`);
    expect(long).toEqual([]);
  });

  it('no function is longer than a page, but for the step of the simulation', () => {
    const long = files
      .filter((f) => !f.path.startsWith('tests/'))
      .flatMap((f) =>
        functionsOf(f.text)
          .filter((fn) => fn.lines > (f.path === STEP.file ? STEP.most : MOST_LINES_IN_FUNCTION))
          .map((fn) => `${f.path} ${fn.name}: ${fn.lines}`),
      );
    expect(long).toEqual([]);
  });

  it('finds the functions that it measures', () => {
    const text =
      'export function a() {\n  return 1;\n}\nconst b = (x: number): number => {\n  return x;\n};\n';
    expect(functionsOf(text)).toEqual([
      { name: 'a', lines: 3 },
      { name: 'b', lines: 3 },
    ]);
  });
});
