import { expect, test } from 'vitest';
import { inkOf } from '../../../shared/track/ink-length.ts';

test('inkOf is the same bits in any order of drawing', () => {
  const lengths = [0.1, 0.2, 0.3, 70.7, 33.3];
  const lines = lengths.map((length, i) => ({
    id: `l${i}`,
    width: 5,
    from: { x: 0, y: i },
    pieces: [{ to: { x: length, y: i }, bulge: 0 }],
  }));
  const sums = [lines, lines.toReversed(), [...lines.slice(2), ...lines.slice(0, 2)]].map((some) =>
    inkOf({ lines: some, marks: [] }),
  );
  expect(new Set(sums).size).toBe(1);
  expect(sums[0]).toBeCloseTo(104.6, 9);
});
