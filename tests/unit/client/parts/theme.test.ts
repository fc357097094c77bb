import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const sheet = (path: string) => readFileSync(new URL(`../../../../client/${path}`, import.meta.url), 'utf8');
const tokensOf =
  (css: string) =>
  (name: string): string => {
    const found = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(css)?.[1];
    if (found === undefined) throw new Error(`the theme has no colour --${name}`);
    return found;
  };
const light = tokensOf(sheet('parts/theme.css'));
/** The first block is the ground's; what follows is paper again. */
const dark = tokensOf(sheet('board/dark.css'));

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(color: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const s = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [less, more] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (more! + 0.05) / (less! + 0.05);
}

describe('contrast of the theme', () => {
  it('black on white is 21:1, as WCAG says', () => {
    expect((luminance('#ffffff') + 0.05) / (luminance('#000000') + 0.05)).toBeCloseTo(21, 10);
  });

  // WCAG 2.2, 1.4.3: text needs 4.5:1.
  const pairs = [
    ['ink', 'paper'],
    ['ink', 'table'],
    ['quiet', 'paper'],
    ['quiet', 'table'],
    ['accent', 'paper'],
    ['sheet', 'accent'],
    ['met', 'paper'],
    ['met-on-table', 'table'],
    ['caution', 'paper'],
    ['caution', 'sheet'],
    ['stops', 'paper'],
    ['stops', 'stops-wash'],
    ['paper', 'ink'],
  ] as const;
  it.each(pairs)('%s on %s is text that can be read', (text, ground) => {
    expect(contrast(light(text), light(ground))).toBeGreaterThanOrEqual(4.5);
  });

  it('the dark ground is #14161A', () => expect(dark('paper')).toBe('#14161a'));

  const roles = ['ink', 'quiet', 'accent', 'met', 'caution', 'stops'] as const;
  const grounds = ['paper', 'sheet', 'table'] as const;
  it.each(roles.flatMap((role) => grounds.map((ground) => [role, ground] as const)))(
    '%s on the dark %s is text that can be read',
    (role, ground) => {
      expect(contrast(dark(role), dark(ground))).toBeGreaterThanOrEqual(4.5);
    },
  );

  // From 8 m in a bright room: WCAG's enhanced contrast.
  it.each(['ink', 'quiet-board'] as const)('%s on the dark ground reaches 7:1', (role) => {
    expect(contrast(dark(role), dark('paper'))).toBeGreaterThanOrEqual(7);
  });
});
