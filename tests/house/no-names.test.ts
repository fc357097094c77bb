import { expect, it } from 'vitest';
import { sources } from './files.ts';

/** The attributes of each input, and of each text area, up to its end. */
const FIELD = /<(input|textarea)\b((?:[^<>]|=>|<[^/])*?)\/?>/g;
/** Fields that take a choice, a number, a day or a file, and fields that are only read. */
const NO_TEXT =
  /type="(checkbox|radio|range|number|date|time|file|color|hidden)"|type=\{[^}]*\}|\breadOnly\b/;

/** Files in which a person can type any text. */
const typedIn = (code: string): boolean =>
  [...code.matchAll(FIELD)].some(([, tag, attributes]) => tag === 'textarea' || !NO_TEXT.test(attributes!));

it('typedIn finds fields for any text and no others', () => {
  expect(typedIn('<input value={a} onChange={(e) => b(e.target.value)} />')).toBe(true);
  expect(typedIn('<input type="text" />')).toBe(true);
  expect(typedIn('<textarea rows={3} />')).toBe(true);
  expect(typedIn('<input\n type="number"\n onChange={(e) => b(e)} />')).toBe(false);
  expect(typedIn('<input readOnly value={a} />')).toBe(false);
});

// A name that nobody types need not be erased.
it('beside every field for any text stands that no names are wanted', () => {
  const files = sources('client').filter(({ path, code }) => path.endsWith('.tsx') && typedIn(code));
  expect(files.map(({ path }) => path)).toContain('client/tablet/screens/join.tsx');
  expect(files.filter(({ code }) => !/<NoNames|\bnoNames\b/.test(code)).map(({ path }) => path)).toEqual([]);
});
