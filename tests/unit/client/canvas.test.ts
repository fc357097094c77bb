import { describe, expect, it } from 'vitest';
import { covers, placeBeside } from '../../../client/canvas/placement.ts';
import { fitView, pixelsInMm, toPaper, toScreen } from '../../../client/canvas/view.ts';
import { trayRows } from '../../../client/tablet/build/tray-rows.ts';
import { changed, timeOf } from '../../../client/tablet/trying/clock.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';

describe('view', () => {
  const view = fitView({ w: 297, h: 210 }, { width: 614, height: 800 }, 10);

  it('fits the whole sheet with its pad, in the middle', () => {
    expect(view).toEqual({ scale: 2, left: 10, top: 190 });
  });

  it('to the screen and back is the same place', () => {
    const at = { x: 12.5, y: 199 };
    expect(toScreen(view, at)).toEqual({ px: 35, py: 588 });
    expect(toPaper(view, toScreen(view, at))).toEqual(at);
    expect(pixelsInMm(view, 24)).toBe(12);
  });
});

describe('placeBeside', () => {
  const within = { width: 800, height: 600 };
  const size = { width: 200, height: 100 };

  it('stands above its place where nothing is in the way', () => {
    const place = placeBeside({ about: { px: 400, py: 300 }, size, within, clear: [], gap: 20 });
    expect(place).toMatchObject({ left: 300, top: 180 });
  });

  it('covers no ink where there is room for that', () => {
    const ink = Array.from({ length: 80 }, (_, i) => ({ px: i * 10, py: 240 }));
    const place = placeBeside({ about: { px: 400, py: 300 }, size, within, clear: ink, gap: 20 });
    expect(ink.filter((point) => covers(place, point, 0))).toEqual([]);
  });

  it('stays within the box beside a place in its corner', () => {
    const place = placeBeside({ about: { px: 5, py: 5 }, size, within, clear: [], gap: 20 });
    expect(place.left).toBeGreaterThanOrEqual(8);
    expect(place.top).toBeGreaterThanOrEqual(8);
    expect(covers(place, { px: 5, py: 5 }, 0)).toBe(false);
  });
});

describe('trayRows', () => {
  it('shows both readings of a one-way mark in one row, and each mark once', () => {
    const rows = trayRows(DEMO_KIT);
    // Twelve words of the demo chart: three one-way pairs and six palindromes.
    expect(rows).toHaveLength(9);
    expect(rows[0]).toMatchObject({ word: 'CA', back: { kind: 'pace-by', steps: -1 } });
    expect(rows.filter((row) => row.back === null).map((row) => row.word)).toEqual([
      'ACA',
      'AVA',
      'CAC',
      'VCV',
      'CVC',
      'VAV',
    ]);
  });
});

describe('replay clock', () => {
  const clock = { playing: true, speed: 2, at: 1, since: 10_000 } as const;

  it('runs with its speed and stops at the end', () => {
    expect(timeOf(clock, 11_500, 30)).toBe(4);
    expect(timeOf(clock, 99_000, 30)).toBe(30);
  });

  it('goes on from where it stood when its speed changes', () => {
    const faster = changed(clock, { speed: 4 }, 11_000, 30);
    expect(timeOf(faster, 11_000, 30)).toBe(3);
    expect(timeOf(faster, 12_000, 30)).toBe(7);
  });

  it('stands still while paused', () => {
    const paused = changed(clock, { playing: false }, 11_000, 30);
    expect(timeOf(paused, 50_000, 30)).toBe(3);
  });
});
