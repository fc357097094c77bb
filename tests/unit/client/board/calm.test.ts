import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calmWait } from '../../../../client/board/calm.ts';

describe('calmWait', () => {
  it('lets the first change through at once, and any other 400 ms after the one before', () => {
    expect(calmWait(Number.NEGATIVE_INFINITY, 0)).toBe(0);
    expect(calmWait(1000, 1100)).toBe(300);
    expect(calmWait(1000, 1400)).toBe(0);
    expect(calmWait(1000, 9000)).toBe(0);
  });

  // WCAG 2.2, 2.3.1: at most three flashes in any one second; a flash is a pair of opposing changes.
  it('lets at most three changes, one flash and a half, through in any second of a held key', () => {
    const shown: number[] = [];
    for (let now = 0; now < 10_000; now += 10)
      if (calmWait(shown.at(-1) ?? Number.NEGATIVE_INFINITY, now) === 0) shown.push(now);
    for (const from of shown)
      expect(shown.filter((at) => at >= from && at < from + 1000).length).toBeLessThanOrEqual(3);
  });
});

describe('styles of the board', () => {
  const folders = ['board', 'canvas', 'parts'];
  const sheets = folders.flatMap((folder) => {
    const at = new URL(`../../../../client/${folder}/`, import.meta.url);
    const names = readdirSync(at).filter((name) => name.endsWith('.css'));
    return names.map((name) => ({ name, css: readFileSync(new URL(name, at), 'utf8') }));
  });

  it('have nothing that blinks: no animation comes back', () => {
    expect(sheets.length).toBeGreaterThan(20);
    const blinking = sheets.filter(({ css }) => /infinite|iteration-count|alternate/.test(css));
    expect(blinking.map(({ name }) => name)).toEqual([]);
  });
});
