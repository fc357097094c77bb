import { describe, expect, it } from 'vitest';
import { importsOf, sources } from './files.ts';

const shared = sources('shared');
const everything = sources('shared', 'server', 'client', 'tests');

/** Operations whose last bits ECMAScript leaves to the implementation. */
const INEXACT =
  /\bMath\.(sin|cos|tan|asin|acos|atan|atan2|sinh|cosh|tanh|asinh|acosh|atanh|exp|expm1|log|log2|log10|log1p|pow|hypot|cbrt)\b|\*\*/;
/** Colours are compared with thresholds far from any last bit, by a library that uses these. */
const MAY_BE_INEXACT = ['shared/kit/colour.ts'];

/** Clocks, chance, and the world outside. */
const IMPURE =
  /\b(Date\.now|new Date\(|performance\.|Math\.random|crypto\.|process\.|setTimeout|setInterval|fetch\(|localStorage|document\.(create|get|query|body)|window\.)/;

const LEFTOVERS =
  /\b(TODO|FIXME|XXX|HACK)\b|\.only\(|: any\b|\bas any\b|<any>|@ts-(ignore|nocheck|expect-error)|biome-ignore/;

const found = (files: typeof shared, pattern: RegExp, where: 'code' | 'text' = 'code') =>
  files.flatMap((f) =>
    f[where]
      .split('\n')
      .filter((line) => pattern.test(line))
      .map((line) => `${f.path}: ${line.trim()}`),
  );

describe('purity', () => {
  it('shared has no clock, no chance and no world', () => {
    expect(found(shared, IMPURE)).toEqual([]);
  });

  it('shared uses no operation that differs between JavaScript engines', () => {
    const files = shared.filter((f) => !MAY_BE_INEXACT.includes(f.path));
    expect(found(files, INEXACT)).toEqual([]);
  });

  it('shared imports no Node module', () => {
    const node = shared.flatMap(importsOf).filter((i) => i.to.startsWith('node:'));
    expect(node).toEqual([]);
  });

  it('only main and the commands read the environment', () => {
    const readers = found(sources('server'), /process\.env/).map((line) => line.split(':')[0]!);
    const strangers = readers.filter(
      (path) => path !== 'server/main.ts' && !path.startsWith('server/commands/'),
    );
    expect(strangers).toEqual([]);
  });

  it('nothing is left over', () => {
    const files = everything.filter((f) => f.path !== 'tests/house/purity.test.ts');
    expect(found(files, LEFTOVERS, 'text')).toEqual([]);
  });
});
