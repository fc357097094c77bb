import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../server/print/page.ts';
import { line } from '../../../../server/print/shapes.ts';
import { onPaper } from '../../../../server/print/tiles.ts';
import { wording } from '../../../../shared/wording/wording.ts';
import { placed, textsOf } from './items.ts';

const words = wording('en').print;
const MARKER = '#123456';
const marker: Item = line({ x: 200, y: 150 }, { x: 210, y: 150 }, { color: MARKER, width: 5 });
const A3 = { w: 420, h: 297 };

const markerOn = (items: readonly Item[]) =>
  placed(items).find(({ item }) => item.kind === 'path' && item.stroke?.color === MARKER)!.points[0]!;

describe('a sheet on paper', () => {
  it('is one page of its own size where it fits, without cuts', () => {
    const [page, ...others] = onPaper([marker], A3, 'A3', words);
    expect(others).toEqual([]);
    expect([page!.w, page!.h]).toEqual([420, 297]);
    expect(markerOn(page!.items)).toEqual({ x: 200, y: 150 });
    expect(placed(page!.items)).toHaveLength(1);
  });

  it('lies in the middle of larger paper, with strokes where to cut', () => {
    const [page] = onPaper([marker], { w: 297, h: 210 }, 'A3', words);
    // (420 − 297) / 2 and (297 − 210) / 2.
    expect(markerOn(page!.items)).toEqual({ x: 261.5, y: 193.5 });
    expect(textsOf(page!.items)).toContain(words.measure);
  });

  it('is split over as few pages as do, each 10 mm over its neighbours', () => {
    // Lying A4 shows 297 − 28 by 210 − 28 mm, 10 of them twice: steps of 259 and 172 mm, so 2 × 2 pages.
    const pages = onPaper([marker], A3, 'A4', words);
    expect(pages.map(({ w, h }) => [w, h])).toEqual(new Array(4).fill([297, 210]));
    const at = pages.map((page) => markerOn(page.items));
    expect(at).toEqual([
      { x: 214, y: 164 },
      { x: 214 - 259, y: 164 },
      { x: 214, y: 164 - 172 },
      { x: 214 - 259, y: 164 - 172 },
    ]);
    expect(textsOf(pages[3]!.items)).toContain('Part 4 of 4: row 2, column 2');
  });

  it('carries the same crosses in the overlap of neighbours', () => {
    const crosses = onPaper([], A3, 'A4', words).map((page) =>
      placed(page.items)
        .filter(({ item }) => item.kind === 'path' && item.stroke?.color === '#B0B0B0')
        .map(({ points }) => points),
    );
    const moved = crosses[0]!.map((points) => points.map(({ x, y }) => ({ x: x - 259, y })));
    expect(crosses[1]).toEqual(moved);
    // The first overlap begins 259 mm along the sheet; its middle lies 5 mm further, behind a margin of 14.
    expect(crosses[0]!.some((points) => points.every(({ x }) => x === 259 + 5 + 14))).toBe(true);
  });

  it('takes the largest sheet that there is', () => {
    // 4,000 × 2,000 mm: 3,990 / 259 and 1,990 / 172, rounded up.
    expect(onPaper([], { w: 4000, h: 2000 }, 'A4', words)).toHaveLength(16 * 12);
  });
});
