import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { oddsOf } from '../../../shared/odds/odds.ts';
import { idealRuns } from '../../../shared/run/ideal-runs.ts';
import { SAME_LIGHT, worldOf } from '../../../shared/run/world.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { KITS, lengthOf, wordFor } from '../../kits.ts';
import { Pen } from '../../sweeps/pen.ts';

const SHEET: Sheet = {
  w: 500,
  h: 400,
  start: { name: { en: 'boathouse' }, at: { x: 60, y: 200 }, heading: 0, r: 15 },
  finish: { name: { en: 'lighthouse' }, at: { x: 440, y: 200 }, heading: Math.PI, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};
const LIMIT = 60;
/** mm between where the chain and the run say that a robot stands in the end. */
const NEAR = 8;

describe.each(KITS.flatMap((kit) => (['any', 'straight'] as const).map((way) => ({ kit, way }))))(
  'odds with the kit $kit.id, unmarked junctions $way',
  ({ kit: plain, way }) => {
    const kit = { ...plain, robot: { ...plain.robot, unmarkedJunction: way } };
    const unit = new Array<number>(kit.rules.bands.most).fill(kit.robot.bandUnit);
    const crossing = () =>
      new Pen(kit.rules.lineWidth.nominal).to(250, 100, 90).straight(200).to(50, 200).straight(400);
    const solved = (drawing: Drawing) => {
      const layout = layOut(SHEET, drawing);
      const world = worldOf(layout, SHEET, kit);
      const { traces } = idealRuns(world, { starts: ['start'], limit: LIMIT });
      const question = { start: 'start', limit: LIMIT, ambient: SAME_LIGHT, runs: traces } as const;
      return { traces, odds: oddsOf(world, buildTrack(layout, kit), question)! };
    };

    test('each ideal run ends where the odds say, as likely as they say', () => {
      const { traces, odds } = solved(crossing().drawing());
      expect(odds.endings.map((ending) => ending.probability)).toEqual(
        traces.map((trace) => expect.closeTo(trace.probability, 12)),
      );
      for (const trace of traces) {
        const end = trace.events.at(-1)!;
        const there = odds.endings.filter(({ at }) => Math.hypot(at.x - end.x, at.y - end.y) < NEAR);
        expect(there).toHaveLength(1);
      }
      expect(odds.finish).toBeCloseTo(way === 'any' ? 1 / 3 : 1, 12);
    });

    test('a mark that decides leaves nothing open', () => {
      const word = wordFor(kit, 'choose', { way: 'straight' });
      const at = 200 - kit.rules.actionReady.steady - lengthOf(kit, word);
      const { odds } = solved(crossing().mark(at, word, unit).drawing());
      expect(odds).toMatchObject({ open: [] });
      expect(odds.finish).toBeCloseTo(1, 12);
    });
  },
);
