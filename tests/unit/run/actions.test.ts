import { describe, expect, it } from 'vitest';
import { type Action, type Kit, PACES } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { actDue } from '../../../shared/run/actions.ts';
import { drive } from '../../../shared/run/drive.ts';
import { newRobot } from '../../../shared/run/robot.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import { EQUAL_BANDS, eventsOf, world } from './worlds.ts';

const marked = (...marks: readonly [at: number, word: string][]) => {
  const pen = new Pen().to(30, 105).straight(230);
  for (const [at, word] of marks) pen.mark(at, word, EQUAL_BANDS);
  return pen.drawing();
};
const run = (...marks: readonly [number, string][]) => drive(world(marked(...marks)), UNDISTURBED);
const withMeaning = (word: string, action: Action): Kit => ({ ...DEMO_KIT, chart: [{ word, action }] });

describe('reading a mark', () => {
  it('names word, mark, direction and action', () => {
    const [read] = eventsOf(run([60, 'CA']), 'read');
    expect(read).toMatchObject({ word: 'CA', mark: 'mark0', along: true, already: false });
    expect(read!.action).toEqual({ kind: 'pace-by', steps: 1 });
    // Understood after 8 mm of black behind two bands of 5.5 mm; the way begins 11 mm along the line.
    expect(read!.way).toBeGreaterThan(60 + 11 + 8 - 11);
    expect(read!.way).toBeLessThan(60 + 11 + 8 - 11 + 1);
  });

  it('acts 0.7 s after it was understood', () => {
    const trace = run([60, 'CA']);
    const [read] = eventsOf(trace, 'read');
    const [act] = eventsOf(trace, 'act');
    expect(act!.t - read!.t).toBeCloseTo(DEMO_KIT.robot.actsAfter, 9);
    expect(trace.events[act!.read]).toEqual(read);
  });

  it('from the other side reads the other word, against the line', () => {
    const trace = drive(world(marked([120, 'CA'])), { ...UNDISTURBED, start: 'finish' });
    expect(eventsOf(trace, 'read')[0]).toMatchObject({ word: 'AC', mark: 'mark0', along: false });
  });

  it('of a word without a meaning changes nothing', () => {
    const trace = run([60, 'CAV']);
    expect(eventsOf(trace, 'read')[0]).toMatchObject({ word: 'CAV', already: false });
    expect(eventsOf(trace, 'act')).toEqual([]);
  });
});

describe('pace', () => {
  it('goes up by steps and stays at the end of its range', () => {
    const trace = run([40, 'CA'], [90, 'CA'], [150, 'CA']);
    expect(eventsOf(trace, 'pace').map((event) => [event.from, event.pace])).toEqual([
      ['steady', 'brisk'],
      ['brisk', 'fast'],
    ]);
    expect(eventsOf(trace, 'read').map((event) => event.already)).toEqual([false, false, true]);
  });

  it('is already there when what waits before it has acted', () => {
    // At fast 60 mm lie between reading and acting: the second mark is read before the first acts.
    const kit: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, startPace: 'brisk' } };
    const trace = drive(world(marked([40, 'CA'], [78, 'CA']), {}, kit), UNDISTURBED);
    expect(eventsOf(trace, 'read').map((event) => event.already)).toEqual([false, true]);
  });

  it('goes to a level', () => {
    expect(eventsOf(run([60, 'CAC']), 'pace').map((event) => event.pace)).toEqual(['creep']);
  });

  it('begun at the very end of a pace for a time stays, whichever waits first', () => {
    const robot = newRobot({ choices: [], die: undefined, sheetMiddle: { x: 0, y: 0 }, pace: 3 });
    const back = { dueStep: 100, action: { kind: 'pace-to', pace: 'steady' } as const, reading: -1 };
    const slower = { dueStep: 100, action: { kind: 'pace-to', pace: 'creep' } as const, reading: 0 };
    const later = { dueStep: 200, action: { kind: 'park' } as const, reading: 1 };
    robot.queue.push(slower, back, later);
    robot.stepCount = 100;
    actDue(robot);
    expect(PACES[robot.pace]).toBe('creep');
    expect(robot.queue).toEqual([later]);
    expect(robot.dueStep).toBe(200);
  });

  it('for a time comes back to what it was', () => {
    const kit = withMeaning('CAV', { kind: 'pace-for', pace: 'fast', time: 1 });
    const changes = eventsOf(drive(world(marked([60, 'CAV']), {}, kit), UNDISTURBED), 'pace');
    expect(changes.map((event) => event.pace)).toEqual(['fast', 'steady']);
    expect(changes[1]!.t - changes[0]!.t).toBeCloseTo(1, 9);
  });
});

describe('waiting, calling, parking', () => {
  it('waits for 2 s and goes on', () => {
    const trace = run([60, 'VCV']);
    const [wait] = eventsOf(trace, 'wait');
    expect(wait!.until - wait!.t).toBeCloseTo(2, 9);
    const still = trace.samples.x.filter((x, i) => i > 0 && x === trace.samples.x[i - 1]).length;
    // At 50 samples a second, less the coasting.
    expect(still).toBeGreaterThan(75);
    expect(trace.ending).toBe('finished');
  });

  it('calls for 1 s without stopping', () => {
    const trace = run([60, 'CVC']);
    const [signal] = eventsOf(trace, 'signal');
    expect(signal!.until - signal!.t).toBeCloseTo(1, 9);
    expect(trace.events.at(-1)!.t).toBeCloseTo(run().events.at(-1)!.t, 2);
  });

  it('parks between 13 and 55 mm past the mark, further at a higher pace', () => {
    const past = (['creep', 'steady', 'fast'] as const).map((startPace) => {
      const kit: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, startPace } };
      const trace = drive(world(marked([60, 'VAV']), {}, kit), UNDISTURBED);
      expect(trace.ending).toBe('parked');
      return trace.events.at(-1)!.x - (30 + 60 + 16.5);
    });
    // Stated with the model's description, for robots that are each a little different.
    expect(Math.abs(past[0]! - 13)).toBeLessThan(2);
    expect(Math.abs(past[2]! - 55)).toBeLessThan(2);
    expect(past[1]).toBeGreaterThan(past[0]!);
  });
});

describe('turning back', () => {
  it('is a half turn over the same mark, read from the other side', () => {
    const trace = run([100, 'VC']);
    expect(eventsOf(trace, 'turn-back')).toHaveLength(1);
    expect(eventsOf(trace, 'read').map((event) => [event.word, event.along])).toEqual([
      ['VC', true],
      ['CV', false],
    ]);
    expect(trace.events.at(-1)!.x).toBeLessThan(35);
  });

  it('goes on adding to the way', () => {
    const { way } = run([100, 'VC']).samples;
    expect(way.every((value, i) => i === 0 || value >= way[i - 1]!)).toBe(true);
    const trace = run([100, 'VC']);
    const turn = eventsOf(trace, 'turn-back')[0]!;
    // Out from 41 to the turn, and back to the line's beginning at 30.
    expect(Math.abs(trace.events.at(-1)!.way - (turn.way + turn.way + 11))).toBeLessThan(2);
  });
});
