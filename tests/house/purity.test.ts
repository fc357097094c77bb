import { describe, expect, it } from 'vitest';
import { importsOf, sources } from './files.ts';

const shared = sources('shared');
const everything = sources('shared', 'server', 'client', 'tests');

/**
 * What ECMAScript leaves to the implementation: functions and powers that it calls approximated, Math
 * under another name (where this search would not find them), text by locale or Unicode version, text
 * of a stack, digits in another radix but of whole numbers, and what garbage, threads and WebAssembly
 * bring. Also exact sums and halves, which not every engine has yet. Sorting is stable by ES2019.
 */
const INEXACT = new RegExp(
  [
    /\bMath\.(sin|cos|tan|asin|acos|atan|atan2|sinh|cosh|tanh|asinh|acosh|atanh)\b/,
    /\bMath\.(exp|expm1|log|log2|log10|log1p|pow|hypot|cbrt|sumPrecise|f16round)\b/,
    /\*\*(?!\/)|\bMath\s*(\[|[;,)\]}]|$)|\bMath\?\.|\b(Float16Array|getFloat16)\b/,
    /\b(localeCompare|toLocale\w*|Intl)\b|\.normalize\(|\\p\{|\.stack\b/,
    /\b(WeakRef|FinalizationRegistry|Atomics|SharedArrayBuffer|WebAssembly|eval)\b|new Function\b/,
  ]
    .map((pattern) => pattern.source)
    .join('|'),
);
/** Digits in another radix are exact for whole numbers only. */
const RADIX = /\.toString\([^)]/;
const WHOLE_IN_RADIX = ['shared/run/state-hash.ts'];
/** Colours are compared with thresholds far from any last bit, by a library that uses these. */
const MAY_BE_INEXACT = ['shared/kit/colour.ts'];
/** Sentences decide nothing: how a language writes numbers and lists is the runtime's business. */
const SPEAKS = 'shared/wording/numbers.ts';

/** Packages that only compare, add and multiply, or never touch a number that decides. */
const EXACT_PACKAGES = ['zod/mini', 'flatbush'];

/** Clocks, chance, and the world outside. */
const IMPURE =
  /\b(Date\.now|new Date\(|performance\.|Math\.random|crypto\.|process\.|setTimeout|setInterval|fetch\(|localStorage|document\.(create|get|query|body)|window\.)/;

const LEFTOVERS =
  /\b(TODO|FIXME|XXX|HACK)\b|\.only\(|: any\b|\bas any\b|<any>|@ts-(ignore|nocheck|expect-error)|biome-ignore/;

/** Ways to make text into elements or code: what a person wrote is shown as text only. */
const TEXT_AS_CODE =
  /dangerouslySetInnerHTML|\b(innerHTML|outerHTML|insertAdjacentHTML|createContextualFragment|DOMParser|srcdoc)\b|document\.write|\beval\(|new Function\b/;

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

  it('the pages never make elements or code out of text', () => {
    expect(found(sources('client'), TEXT_AS_CODE)).toEqual([]);
  });

  it('shared uses no operation that differs between JavaScript engines', () => {
    const files = shared.filter((f) => ![...MAY_BE_INEXACT, SPEAKS].includes(f.path));
    expect(found(files, INEXACT)).toEqual([]);
    const inRadix = shared.filter((f) => !WHOLE_IN_RADIX.includes(f.path));
    expect(found(inRadix, RADIX)).toEqual([]);
  });

  it.each([
    'Math.sinh(x)',
    'x ** y',
    'const { sin } = Math;',
    'Math["sin"](x)',
    'const m = Math',
    'a.localeCompare(b)',
    'new Intl.Collator()',
    'Math.hypot(x, y)',
  ])('the search finds %s', (code) => expect(code).toMatch(INEXACT));

  it.each(['Math.sqrt(x)', 'Math.imul(a, b)', 'Math.fround(x)', 'const x = 2 * Math.PI;', 'Math.max(...xs)'])(
    'the search lets %s pass',
    (code) => expect(code).not.toMatch(INEXACT),
  );

  it('only the colour check imports packages that may use such operations', () => {
    const allowed = new Map([
      ['culori', MAY_BE_INEXACT],
      ['culori/fn', MAY_BE_INEXACT],
    ]);
    const packages = shared.flatMap(importsOf).filter((i) => !i.to.startsWith('shared/'));
    const strangers = packages.filter(
      ({ from, to }) => !EXACT_PACKAGES.includes(to) && !allowed.get(to)?.includes(from),
    );
    expect(strangers).toEqual([]);
  });

  it('tolerances stand in one table', () => {
    const tables = ['shared/geometry/tolerances.ts', 'shared/geometry/exact-math.ts'];
    const files = shared.filter((f) => !tables.includes(f.path));
    expect(found(files, /\b\d[\d.]*e-\d|\b0\.000[01]/)).toEqual([]);
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
