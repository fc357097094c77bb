import { describe, expect, it } from 'vitest';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { drive } from '../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { Pen } from '../sweeps/pen.ts';

// Source: the table in the model's description, made with a separate, older program: turn back as a
// two-way mark never ends, 14 turns in 40 s; as a one-way mark 40 of 40 go on.

const sheet: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'start' }, at: { x: 30, y: 105 }, heading: 0, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

const turnsOf = (trace: Trace): number => trace.events.filter((event) => event.kind === 'turn-back').length;

function drives(kit: Kit, word: string, robots: number): Trace[] {
  const lengths = [...word].map(() => 5.5);
  const drawing = new Pen().to(30, 105).straight(230).mark(100, word, lengths).drawing();
  const world = worldOf(layOut(sheet, drawing), sheet, kit);
  return Array.from({ length: robots }, (_, i) =>
    drive(world, { ...UNDISTURBED, seed: i + 1, disturbance: 1, limit: 40 }),
  );
}

describe('turn back', () => {
  it('as a one-way mark turns a robot once, and it goes on to the other end', () => {
    const traces = drives(DEMO_KIT, 'VC', 40);
    expect(traces.map(turnsOf)).toEqual(traces.map(() => 1));
    expect(traces.map((trace) => trace.ending)).toEqual(traces.map(() => 'stopped'));
    for (const trace of traces) expect(trace.events.at(-1)!.x).toBeLessThan(40);
  });

  it('as a two-way mark turns a robot again and again', () => {
    const kit: Kit = { ...DEMO_KIT, chart: [{ word: 'CVC', action: { kind: 'turn-back' } }] };
    for (const trace of drives(kit, 'CVC', 10)) {
      expect(trace.ending).toBe('time-up');
      expect(turnsOf(trace)).toBeGreaterThanOrEqual(12);
      expect(turnsOf(trace)).toBeLessThanOrEqual(16);
    }
  });
});
