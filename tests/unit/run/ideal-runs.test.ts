import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { drive } from '../../../shared/run/drive.ts';
import { idealRuns } from '../../../shared/run/ideal-runs.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import { EQUAL_BANDS, eventsOf, world } from './worlds.ts';

const LIMIT = 30;
const fromStart = { starts: ['start'] as const, limit: LIMIT };

/** A line that is crossed at x = 160, with what is to be put on its first stretch. */
function crossed(word?: string) {
  const pen = new Pen().to(160, 30, 90).straight(150).to(30, 105).straight(230);
  return (word ? pen.mark(50, word, EQUAL_BANDS) : pen).drawing();
}

const endedAt = (x: number, y: number) => (trace: { samples: { x: number[]; y: number[] } }) =>
  Math.abs(trace.samples.x.at(-1)! - x) < 25 && Math.abs(trace.samples.y.at(-1)! - y) < 25;

describe('idealRuns', () => {
  it('is one run where nothing is left open', () => {
    const { traces, tooMany } = idealRuns(world(new Pen().to(30, 105).straight(230).drawing()), fromStart);
    expect(traces).toHaveLength(1);
    expect(traces[0]!.probability).toBe(1);
    expect(tooMany).toBe(false);
  });

  it('forks at an open crossing, arms from the left, a third each', () => {
    const { traces } = idealRuns(world(crossed()), fromStart);
    const took = traces.map((trace) => eventsOf(trace, 'junction')[0]!.took);
    expect(took).toEqual(['left', 'straight', 'right']);
    for (const trace of traces) expect(trace.probability).toBeCloseTo(1 / 3, 12);
    // Left of a robot that goes right on the sheet is up.
    expect(endedAt(160, 30)(traces[0]!)).toBe(true);
    expect(endedAt(160, 180)(traces[2]!)).toBe(true);
  });

  it('has one set of runs a start', () => {
    const { traces } = idealRuns(world(crossed()), { starts: ['start', 'finish'], limit: LIMIT });
    expect(traces.map((trace) => trace.start)).toEqual([
      ...['start', 'start', 'start'],
      ...['finish', 'finish', 'finish'],
    ]);
    expect(endedAt(160, 180)(traces[3]!)).toBe(true);
  });

  it('goes through several junctions in order of the arms', () => {
    const pen = new Pen().to(110, 60, 90).straight(90).to(190, 60, 90).straight(90);
    const { traces, tooMany } = idealRuns(world(pen.to(30, 105).straight(230).drawing()), fromStart);
    const ways = traces.map((trace) =>
      eventsOf(trace, 'junction')
        .map((event) => event.took[0])
        .join(''),
    );
    expect(ways).toEqual(['l', 'sl', 'ss', 'sr', 'r']);
    expect(traces.reduce((sum, trace) => sum + trace.probability, 0)).toBeCloseTo(1, 12);
    expect(tooMany).toBe(false);
  });

  it('gives up beyond 16 runs', () => {
    // A ladder: every rung may be taken, and none of its ends stops a robot.
    const pen = new Pen().to(20, 60).straight(257).to(20, 150).straight(257);
    for (const x of [80, 120, 160, 200, 240]) pen.to(x, 60, 90).straight(90);
    const start = { ...{ name: { en: 'boathouse' } }, at: { x: 22, y: 60 }, heading: 0, r: 5 };
    const { traces, tooMany, firstOpen } = idealRuns(world(pen.drawing(), { start }), fromStart);
    expect(traces).toHaveLength(16);
    expect(tooMany).toBe(true);
    expect(firstOpen).toMatchObject({ by: 'chance', arms: ['straight', 'right'] });
    expect(Math.abs(firstOpen!.x - 80)).toBeLessThan(3);
  });
});

describe('a junction', () => {
  it.each([
    ['AV', 'left'],
    ['VA', 'right'],
    ['ACA', 'straight'],
  ])('after %s is left %s', (word, way) => {
    const { traces } = idealRuns(world(crossed(word)), fromStart);
    expect(traces).toHaveLength(1);
    expect(eventsOf(traces[0]!, 'junction')[0]).toMatchObject({ took: way, by: 'mark' });
  });

  it('goes straight on where the kit says so', () => {
    const kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, unmarkedJunction: 'straight' as const } };
    const { traces } = idealRuns(world(crossed(), {}, kit), fromStart);
    expect(traces).toHaveLength(1);
    expect(eventsOf(traces[0]!, 'junction')[0]).toMatchObject({ took: 'straight', by: 'straight' });
  });

  it('uses up a choice of an arm that is not there', () => {
    // A branch to the right only, then a crossing.
    const pen = new Pen().to(110, 105, 90).straight(60).to(190, 60, 90).straight(90);
    const drawing = pen.to(30, 105).straight(230).mark(30, 'AV', EQUAL_BANDS).drawing();
    const { traces } = idealRuns(world(drawing), fromStart);
    const junctions = eventsOf(traces[0]!, 'junction');
    expect(junctions.map((event) => event.by)).toEqual(['chance', 'chance']);
    expect(junctions[0]!.arms).toEqual(['straight', 'right']);
  });

  it('takes the later of two choices', () => {
    const pen = new Pen().to(190, 30, 90).straight(150).to(30, 105).straight(230);
    const drawing = pen.mark(30, 'AV', EQUAL_BANDS).mark(75, 'VA', EQUAL_BANDS).drawing();
    const { traces } = idealRuns(world(drawing), fromStart);
    expect(eventsOf(traces[0]!, 'junction').map((event) => event.took)).toEqual(['right']);
  });

  it('lets each robot roll its own die', () => {
    const w = world(crossed());
    const took = Array.from(
      { length: 60 },
      (_, i) =>
        eventsOf(drive(w, { ...UNDISTURBED, seed: i + 1, disturbance: 1, limit: 6 }), 'junction')[0]!.took,
    );
    // 60 rolls of a fair die with three sides: each side 20, deviation 3.7; four deviations.
    for (const way of ['left', 'straight', 'right']) {
      const count = took.filter((one) => one === way).length;
      expect(count).toBeGreaterThan(5);
      expect(count).toBeLessThan(35);
    }
  });

  it('follows settled choices with any seed', () => {
    const options = { ...UNDISTURBED, disturbance: 1, limit: 6, choices: [2] };
    for (const seed of [1, 2, 3, 4]) {
      const trace = drive(world(crossed()), { ...options, seed });
      expect(eventsOf(trace, 'junction')[0]!.took).toBe('right');
    }
  });
});
