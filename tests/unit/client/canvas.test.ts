import { describe, expect, it } from 'vitest';
import { LOUPE, loupePlace } from '../../../client/canvas/loupe.ts';
import { covers, placeBeside } from '../../../client/canvas/placement.ts';
import {
  type Framed,
  fitBeside,
  fitView,
  lookAt,
  lookBeside,
  lookCloser,
  lookPulled,
  pixelsInMm,
  toPaper,
  toScreen,
  viewOf,
} from '../../../client/canvas/view.ts';
import { trayRows } from '../../../client/editor/surface/tray-rows.ts';
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

describe('fitBeside', () => {
  it('keeps the strip at the top where the sheet is wide, at the right where it is high', () => {
    // Scale 2: 20 + 594 wide; 420 high leaves 80 above, so that the strip costs nothing.
    expect(fitBeside({ w: 297, h: 210 }, { width: 614, height: 520 }, 10, 60)).toEqual({
      scale: 2,
      left: 10,
      top: 60,
    });
    expect(fitBeside({ w: 210, h: 210 }, { width: 700, height: 440 }, 10, 60)).toEqual({
      scale: 2,
      left: 140,
      top: 10,
    });
  });
});

describe('a closer look', () => {
  const sheet = { w: 300, h: 200 };
  const box = { width: 640, height: 420 };
  const framed: Framed = { sheet, box, fitted: fitView(sheet, box, 10) };
  const whole = viewOf(null, framed);
  const near = (about: { px: number; py: number }, factor = 2) =>
    viewOf(lookCloser(whole, framed, factor, about), framed);

  it('leaves what lies under the pointer where it is', () => {
    const about = { px: 250, py: 160 };
    const view = near(about);
    expect(view.scale).toBe(4);
    const place = toPaper(whole, about);
    expect(toScreen(view, place).px).toBeCloseTo(about.px, 6);
    expect(toScreen(view, place).py).toBeCloseTo(about.py, 6);
  });

  it('ends at twelve pixels a millimetre and, made smaller, at the whole sheet', () => {
    expect(near({ px: 320, py: 210 }, 100).scale).toBe(12);
    expect(lookCloser(near({ px: 320, py: 210 }), framed, 0.1, { px: 0, py: 0 })).toBeNull();
  });

  it('is pushed no further than a third of the box beyond the paper', () => {
    const pushed = viewOf(lookBeside(near({ px: 320, py: 210 }), framed, 5000, -5000), framed);
    expect(pushed.left).toBeCloseTo(0.3 * box.width, 6);
    expect(pushed.top + sheet.h * pushed.scale).toBeCloseTo(box.height - 0.3 * box.height, 6);
  });

  it('two fingers take the two places under them along', () => {
    const before = [
      { px: 250, py: 200 },
      { px: 350, py: 200 },
    ];
    const now = [
      { px: 230, py: 230 },
      { px: 430, py: 230 },
    ];
    const view = viewOf(lookPulled(whole, framed, before, now), framed);
    for (const [i, from] of before.entries()) {
      const at = toScreen(view, toPaper(whole, from));
      expect(at.px).toBeCloseTo(now[i]!.px, 6);
      expect(at.py).toBeCloseTo(now[i]!.py, 6);
    }
  });

  it('is moved just so far that a place comes into view', () => {
    const view = near({ px: 0, py: 0 }, 3);
    const at = { x: 290, y: 190 };
    const shown = toScreen(viewOf(lookAt(view, framed, at, 60), framed), at);
    expect(shown.px).toBeCloseTo(box.width - 60, 6);
    expect(shown.py).toBeCloseTo(box.height - 60, 6);
    expect(lookAt(view, framed, { x: 60, y: 40 }, 60)).toMatchObject({ scale: view.scale });
  });
});

describe('loupePlace', () => {
  const box = { width: 700, height: 600 };

  it('stands above the finger where there is room, beside it near the top', () => {
    expect(loupePlace({ px: 350, py: 400 }, box)).toEqual({ px: 350, py: 400 - 126 });
    expect(loupePlace({ px: 350, py: 155 }, box)).toMatchObject({ py: 155 - 0.6 * 126 });
  });

  it('never covers what is under the finger, anywhere in the box, and stays in it', () => {
    for (let px = 0; px <= box.width; px += 10)
      for (let py = 0; py <= box.height; py += 10) {
        const at = loupePlace({ px, py }, box);
        // Its radius, and 40 pixels for the fingertip.
        expect(Math.hypot(at.px - px, at.py - py)).toBeGreaterThan(LOUPE / 2 + 40);
        expect(at.px - LOUPE / 2).toBeGreaterThanOrEqual(0);
        expect(at.px + LOUPE / 2).toBeLessThanOrEqual(box.width);
        expect(at.py - LOUPE / 2).toBeGreaterThanOrEqual(0);
        expect(at.py + LOUPE / 2).toBeLessThanOrEqual(box.height);
      }
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
