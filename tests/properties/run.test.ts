import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Kit, Way } from '../../shared/documents/kit.ts';
import type { RunEvent } from '../../shared/documents/trace.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { drive } from '../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { SOUND_SHEET, soundWith } from '../sound.ts';
import '../seed.ts';

const LIMIT = 15;
const sound = soundWith(115);
const world = (kit: Kit, drawing: Drawing, sheet = SOUND_SHEET) =>
  worldOf(layOut(sheet, drawing), sheet, kit);

const over = (p: PaperPoint): PaperPoint => ({ x: p.x, y: SOUND_SHEET.h - p.y });
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
      fc.property(sound, fc.integer({ min: 1, max: 1e6 }), ([kit, drawing], seed) => {
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
      fc.property(sound, fc.integer({ min: 1, max: 1e6 }), ([kit, drawing], seed) => {
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
      fc.property(sound, ([kit, drawing]) => {
        const sheet = { ...SOUND_SHEET, start: { ...SOUND_SHEET.start, at: over(SOUND_SHEET.start.at) } };
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
          expect(Math.abs(SOUND_SHEET.h - y - plain.samples.y[i]!)).toBeLessThan(0.1);
        });
      }),
      { numRuns: 25 },
    );
  });
});
