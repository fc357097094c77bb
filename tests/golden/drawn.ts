import type { Drawing } from '../../shared/documents/design.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { normal, rolled, type Sfc32, sfc32 } from '../../shared/run/random.ts';
import { Pen } from '../sweeps/pen.ts';

/**
 * Drawings made from a seed, like those of children: one line of straights, corners and curves, lines
 * across it or off it, and marks of the chart on it. Made anew in every engine from integers and exact
 * functions alone, so that equal runs also say that the drawings were equal.
 */
export const DRAWN_SHEET: Sheet = {
  w: 420,
  h: 297,
  start: { name: { en: 'boathouse' }, at: { x: 45, y: 150 }, heading: 0, r: 15 },
  finish: { name: { en: 'lighthouse' }, at: { x: 370, y: 150 }, heading: Math.PI, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

const MARGIN = 20;
const BAND = 5.5;

const inside = ({ x, y }: { x: number; y: number }): boolean =>
  x > MARGIN && y > MARGIN && x < DRAWN_SHEET.w - MARGIN && y < DRAWN_SHEET.h - MARGIN;

const between = (die: Sfc32, least: number, most: number): number => least + rolled(die, most - least + 1);

/** A leg of 40 to 120 mm after a turn, or a curve; left out where it would leave the paper. */
function leg(pen: Pen, die: Sfc32): void {
  const side = rolled(die, 2) === 0 ? 1 : -1;
  const turn = side * between(die, 20, 130);
  const length = between(die, 40, 120);
  if (rolled(die, 3) === 0) {
    const radius = between(die, 14, 45);
    if (inside(pen.ahead(2 * radius + 10)) && inside(pen.ahead(radius))) pen.arc(radius, turn);
    return;
  }
  const { heading } = pen;
  for (const angle of [turn, -turn, 180 - turn]) {
    pen.heading = heading + angle;
    if (!inside(pen.ahead(length))) continue;
    pen.straight(length);
    return;
  }
  pen.heading = heading;
}

/** The drawing of a seed. */
export function drawn(seed: number): Drawing {
  const die = sfc32(seed);
  const pen = new Pen().to(DRAWN_SHEET.start.at.x, DRAWN_SHEET.start.at.y).straight(between(die, 75, 110));
  // Smooth noise beside whole numbers: no corner sits on a round angle.
  pen.turn(normal(die));
  for (let legs = between(die, 2, 6); legs > 0; legs--) leg(pen, die);
  const words = DEMO_KIT.chart.map((row) => row.word);
  for (let count = between(die, 0, 2), at = 28; count > 0; count--, at += between(die, 45, 80)) {
    const word = words[rolled(die, words.length)]!;
    pen.mark(
      at,
      word,
      [...word].map(() => BAND),
    );
  }
  for (let others = between(die, 0, 2); others > 0; others--) {
    pen.to(between(die, 60, 360), between(die, 40, 250), between(die, 0, 359));
    pen.straight(between(die, 60, 150));
    leg(pen, die);
  }
  return pen.drawing();
}
