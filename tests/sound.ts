import fc from 'fast-check';
import type { Drawing } from '../shared/documents/design.ts';
import type { Kit } from '../shared/documents/kit.ts';
import type { Sheet } from '../shared/documents/sheet.ts';
import { KITS } from './kits.ts';
import { Pen } from './sweeps/pen.ts';

/** Designs within every drawing rule of their kit, for what holds of runs that nothing tips over. */

export const SOUND_SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 30, y: 88 }, heading: 0, r: 10 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

/** A line with a corner, an arc and a mark, crossed by another. */
const drawingFor = (kit: Kit, widest: number): fc.Arbitrary<Drawing> =>
  fc
    .record({
      first: fc.integer({ min: 70, max: 80 }),
      word: fc.constantFrom(...kit.chart.map((row) => row.word)),
      side: fc.constantFrom(-1, 1),
      corner: fc.integer({ min: 65, max: widest }),
      radius: fc.integer({ min: kit.rules.curveRadius, max: kit.rules.curveRadius + 8 }),
      crossed: fc.boolean(),
    })
    .map(({ first, word, side, corner, radius, crossed }): Drawing => {
      const pen = new Pen(kit.rules.lineWidth.nominal).to(30, 88).straight(first + 60);
      pen.mark(35, word, new Array<number>(word.length).fill(kit.robot.bandUnit));
      pen
        .turn(side * (180 - corner))
        .straight(30)
        .arc(radius, -side * 80)
        .straight(25);
      if (crossed) pen.to(30 + first + 25, 40, 90).straight(110);
      return pen.drawing();
    });

/** A kit and a drawing in its widths and inks, with a corner of 65 degrees up to the widest. */
export const soundWith = (widest: number): fc.Arbitrary<readonly [Kit, Drawing]> =>
  fc.constantFrom(...KITS).chain((kit) => drawingFor(kit, widest).map((drawing) => [kit, drawing] as const));
