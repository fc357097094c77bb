import type { Drawing, Line } from '../../shared/documents/design.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { checkDrawing, ruleContext } from '../../shared/rules/rules.ts';
import { type Figure, median, timesOf } from './figure.ts';

const WIDTH = 420;
/** A row of lines has so many pieces of so many mm; rows lie so far apart that all rules are content. */
const PIECES_A_ROW = 25;
const PIECE = 14;
const ROW = 16;

const SIZES = [10, 30, 100, 250, 500];
const ROUNDS = 9;

/** Rows of gently bent lines, at the same density whatever their number. */
function sheetOf(pieces: number): { sheet: Sheet; drawing: Drawing } {
  const lines: Line[] = [];
  for (let rest = pieces, row = 0; rest > 0; rest -= PIECES_A_ROW, row++) {
    const y = 30 + row * ROW;
    const count = Math.min(rest, PIECES_A_ROW);
    const bends = Array.from({ length: count }, (_, i) => ({
      to: { x: 35 + (i + 1) * PIECE, y: y + (i % 2) },
      bulge: i % 3 === 0 ? 0.02 : 0,
    }));
    lines.push({ id: `row${row}`, width: 5, from: { x: 35, y }, pieces: bends });
  }
  const sheet: Sheet = {
    w: WIDTH,
    h: 60 + lines.length * ROW,
    start: { name: { en: 'boathouse' }, at: { x: 45, y: 30 }, heading: 0, r: 15 },
    gates: [],
    areas: [],
    keepOut: [],
    given: { lines: [], marks: [] },
  };
  return { sheet, drawing: { lines, marks: [] } };
}

/** Exponent of n that n log n shows between the least and the greatest size. */
const N_LOG_N = growth(SIZES[0]!, SIZES.at(-1)!, (n) => n * Math.log(n));

function growth(from: number, to: number, cost: (n: number) => number): number {
  return Math.log(cost(to) / cost(from)) / Math.log(to / from);
}

/** All rules on sheets of 10 to 500 pieces, and how the time grows. */
export function rulesFigures(): Figure[] {
  const times = new Map<number, number[]>(SIZES.map((size) => [size, []]));
  for (let round = 0; round < ROUNDS; round++) {
    for (const size of SIZES) {
      const { sheet, drawing } = sheetOf(size);
      times.get(size)!.push(...timesOf(3, () => checkDrawing(ruleContext(sheet, drawing, DEMO_KIT))));
    }
  }
  const timeOf = (size: number): number => median(times.get(size)!);
  return [
    ...SIZES.map(
      (size): Figure => ({
        name: `rules-${size}-pieces`,
        value: timeOf(size),
        unit: 'ms',
        ...(size === 500 ? { target: { at: 'most', value: 10 } } : {}),
      }),
    ),
    {
      name: 'rules-growth-10-to-500',
      value: growth(10, 500, timeOf),
      unit: 'exponent',
      target: { at: 'most', value: Math.round(100 * N_LOG_N) / 100 },
    },
  ];
}
