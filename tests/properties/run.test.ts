import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Kit, Way } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import type { RunEvent } from '../../shared/documents/trace.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { drive } from '../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { KITS } from '../kits.ts';
import { Pen } from '../sweeps/pen.ts';
import '../seed.ts';

const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 30, y: 88 }, heading: 0, r: 10 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

/** A line with a corner, an arc and a mark, crossed by another: everything within the drawing rules. */
const drawingFor = (kit: Kit) =>
  fc
    .record({
      first: fc.integer({ min: 70, max: 80 }),
      word: fc.constantFrom(...kit.chart.map((row) => row.word)),
      side: fc.constantFrom(-1, 1),
      corner: fc.integer({ min: 65, max: 115 }),
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

/** A kit and a drawing in its widths and inks. */
const drawn = fc
  .constantFrom(...KITS)
  .chain((kit) => drawingFor(kit).map((drawing): readonly [Kit, Drawing] => [kit, drawing]));

const LIMIT = 15;
const world = (kit: Kit, drawing: Drawing, sheet = SHEET) => worldOf(layOut(sheet, drawing), sheet, kit);

const over = (p: PaperPoint): PaperPoint => ({ x: p.x, y: SHEET.h - p.y });
const mirrored = (drawing: Drawing): Drawing => ({
  ...drawing,
  lines: drawing.lines.map((line) => ({
    ...line,
    from: over(line.from),
    pieces: line.pieces.map((piece) => ({ to: over(piece.to), bulge: -piece.bulge })),
  })),
});
const OTHER_SIDE: Readonly<Record<Way, Way>> = { left: 'right', straight: 'straight', right: 'left' };
const leftIsRight = (kit: Kit): Kit => ({
  ...kit,
  chart: kit.chart.map((row) =>
    row.action.kind === 'choose'
      ? { ...row, action: { kind: 'choose', way: OTHER_SIDE[row.action.way] } }
      : row,
  ),
});

/** What happened, with sides as in the unmirrored run. */
const story = (events: readonly RunEvent[], swap: boolean) =>
  events.map((event) => {
    const side = 'took' in event ? (swap ? OTHER_SIDE[event.took] : event.took) : '';
    return [event.kind, side, event.kind === 'read' ? event.word : '', Math.round(event.t * 20)].join(' ');
  });

describe('a run', () => {
  it('is the same bits for the same options, and others for another seed', () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 1e6 }), ([kit, drawing], seed) => {
        const w = world(kit, drawing);
        const options = { ...UNDISTURBED, limit: LIMIT, seed, disturbance: 1 };
        const trace = drive(w, options);
        expect(drive(world(kit, drawing), options)).toEqual(trace);
        expect(drive(w, { ...options, seed: seed + 1 }).hash).not.toBe(trace.hash);
      }),
      { numRuns: 25 },
    );
  });

  it('without disturbance is the ideal run, whatever the seed', () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 1e6 }), ([kit, drawing], seed) => {
        const w = world(kit, drawing);
        const choices = [0, 0, 0, 0];
        const ideal = drive(w, { ...UNDISTURBED, limit: LIMIT, choices });
        const still = drive(w, { ...UNDISTURBED, limit: LIMIT, choices, seed, disturbance: 0 });
        expect(still).toEqual({ ...ideal, seed });
      }),
      { numRuns: 25 },
    );
  });

  it('on a mirrored sheet is the mirrored ideal run, left and right swapped', () => {
    fc.assert(
      fc.property(drawn, ([kit, drawing]) => {
        const sheet = { ...SHEET, start: { ...SHEET.start, at: over(SHEET.start.at) } };
        const options = { ...UNDISTURBED, limit: LIMIT };
        const plain = drive(world(kit, drawing), { ...options, choices: [0, 0, 0] });
        // The first arm from the left is the last one in the mirror.
        const arms = plain.events.flatMap((e) =>
          e.kind === 'junction' && e.by === 'chance' ? [e.arms] : [],
        );
        const choices = arms.map((list) => list.length - 1);
        const mirror = drive(world(leftIsRight(kit), mirrored(drawing), sheet), { ...options, choices });
        expect(story(mirror.events, true)).toEqual(story(plain.events, false));
        mirror.samples.y.forEach((y, i) => {
          expect(Math.abs(SHEET.h - y - plain.samples.y[i]!)).toBeLessThan(0.1);
        });
      }),
      { numRuns: 25 },
    );
  });
});
