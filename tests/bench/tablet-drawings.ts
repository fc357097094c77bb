import type { Design, Line, Mark } from '../../shared/documents/design.ts';

const mark = (id: string, line: string, at: number, ...inks: string[]): Mark => ({
  id,
  line,
  at,
  bands: inks.map((ink) => ({ ink, length: 5.5, gap: 0 })),
});

/**
 * Forty lines and twenty marks on A4: a road from the start berth and short streets in rows beside it, every
 * second one with a mark. Ends of streets stand apart, so that they are no gaps to be closed.
 */
export function fullSheet(): Design {
  const road: Line = {
    id: 'l1',
    width: 5,
    from: { x: 50, y: 160 },
    pieces: [
      { to: { x: 230, y: 160 }, bulge: 0 },
      { to: { x: 250, y: 140 }, bulge: -0.41421 },
      { to: { x: 250, y: 120 }, bulge: 0 },
    ],
  };
  const streets = Array.from({ length: 39 }, (_, i): Line => {
    const [column, row] = [i % 13, Math.floor(i / 13)];
    const [x, y] = [22 + column * 17, 22 + row * 42 + (column % 2) * 3];
    return {
      id: `l${i + 2}`,
      width: 5,
      from: { x, y },
      pieces: [{ to: { x, y: y + 16 }, bulge: i % 6 === 3 ? 0.1 : 0 }],
    };
  });
  const marks = streets
    .filter((_, i) => i % 2 === 0)
    .slice(0, 19)
    .map((line, i) => mark(`m${i + 2}`, line.id, 2.5, 'C', 'A'));
  return {
    version: 1,
    drawing: { lines: [road, ...streets], marks: [mark('m1', 'l1', 60, 'C', 'A'), ...marks] },
  };
}

/** So many pieces on A4: a road of five, and streets of ten pieces each in a row above it. */
export function sheetOfPieces(pieces: number): Design {
  const road: Line = {
    id: 'l1',
    width: 5,
    from: { x: 50, y: 190 },
    pieces: [1, 2, 3, 4, 5].map((i) => ({ to: { x: 50 + 30 * i, y: 190 }, bulge: 0 })),
  };
  const lines = [road];
  for (let left = pieces - 5, i = 0; left > 0; left -= 10, i++) {
    const [x, y] = [12 + (i % 16) * 17, 12 + Math.floor(i / 16) * 40];
    lines.push({
      id: `l${i + 2}`,
      width: 5,
      from: { x, y },
      pieces: Array.from({ length: Math.min(10, left) }, (_, k) => ({
        to: { x, y: y + 2.4 * (k + 1) },
        bulge: 0,
      })),
    });
  }
  return { version: 1, drawing: { lines, marks: [mark('m1', 'l1', 60, 'C', 'A')] } };
}
