import { describe, expect, it } from 'vitest';
import { Trace } from '../../../shared/documents/trace.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { drive } from '../../../shared/run/drive.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import { EQUAL_BANDS, eventsOf, kindsOf, SHEET, world } from './worlds.ts';

const straight = (word?: string, at = 60) => {
  const pen = new Pen().to(30, 105).straight(230);
  return (word ? pen.mark(at, word, EQUAL_BANDS) : pen).drawing();
};
/** Along a straight the bar starts here: 11 mm ahead of the axle. */
const BAR = SHEET.start.at.x + DEMO_KIT.robot.barAhead;

describe('drive', () => {
  it('from berth to berth finishes half a second after arriving', () => {
    const trace = drive(world(straight()), UNDISTURBED);
    expect(kindsOf(trace)).toEqual(['finish', 'end']);
    const [finish, end] = trace.events;
    expect(trace.ending).toBe('finished');
    // The rim of the lighthouse's berth, within one step of 0.08 mm.
    expect(finish!.x).toBeGreaterThanOrEqual(245);
    expect(finish!.x).toBeLessThan(245.1);
    expect(end!.t - finish!.t).toBeCloseTo(0.5, 9);
    expect(trace.finish).toBeLessThan(0);
  });

  it('from the other end is a run to the start berth', () => {
    const trace = drive(world(straight()), { ...UNDISTURBED, start: 'finish' });
    expect(trace.ending).toBe('finished');
    expect(eventsOf(trace, 'finish')[0]!.x).toBeCloseTo(45, 0);
  });

  it('drives on through a berth that robots only set out from', () => {
    const finish = { ...SHEET.finish!, at: { x: 150, y: 105 }, startOnly: true };
    const through = drive(world(straight(), { finish }), UNDISTURBED);
    expect(through.ending).toBe('stopped');
    expect(eventsOf(through, 'end')[0]!.x).toBeCloseTo(260, -1);
    expect(through.finish).toBeUndefined();
    const start = { ...SHEET.start, startOnly: true };
    const back = drive(world(straight(), { start }), { ...UNDISTURBED, start: 'finish' });
    expect(back.ending).toBe('stopped');
  });

  it('refuses to start from a finish berth that is not there', () => {
    const noFinish = { ...SHEET };
    delete noFinish.finish;
    const berthless = { ...world(straight()), sheet: noFinish };
    const run = () => drive(berthless, { ...UNDISTURBED, start: 'finish' });
    expect(run).toThrow(RangeError);
  });

  it('measures the way under the middle sensor, from its first place on the line', () => {
    const trace = drive(world(straight()), UNDISTURBED);
    const finish = eventsOf(trace, 'finish')[0]!;
    expect(finish.way).toBeCloseTo(finish.x + DEMO_KIT.robot.barAhead - BAR, 3);
  });

  it('stops at a loose end, near it', () => {
    const trace = drive(world(new Pen().to(30, 105).straight(130).drawing()), UNDISTURBED);
    expect(trace.ending).toBe('stopped');
    expect(kindsOf(trace)).toEqual(['loose-end', 'end']);
    // From 2 mm before to 1.5 mm past the end, by the model's description.
    const { x } = trace.events.at(-1)!;
    expect(x).toBeGreaterThan(157.5);
    expect(x).toBeLessThan(162);
  });

  it('turns back at a loose end where the kit says so', () => {
    const kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, looseEnd: 'turn-back' as const } };
    const trace = drive(world(new Pen().to(30, 105).straight(130).drawing(), {}, kit), {
      ...UNDISTURBED,
      limit: 12,
    });
    expect(trace.ending).toBe('time-up');
    expect(kindsOf(trace).slice(0, 3)).toEqual(['loose-end', 'turn-back', 'loose-end']);
  });

  it('never starts where no ink is within reach', () => {
    const trace = drive(world(new Pen().to(30, 20).straight(130).drawing()), UNDISTURBED);
    expect(trace.ending).toBe('never-started');
  });

  it('drives off the paper along a line that leaves it', () => {
    const pen = new Pen().to(30, 105).straight(130).turn(-90).straight(104.9);
    const trace = drive(world(pen.drawing()), UNDISTURBED);
    expect(trace.ending).toBe('off-paper');
    expect(kindsOf(trace)).toEqual(['corner', 'off-paper', 'end']);
    expect(trace.edge).toBeLessThan(-17);
  });

  it('ends at the time limit', () => {
    const trace = drive(world(straight()), { ...UNDISTURBED, limit: 2 });
    expect(trace.ending).toBe('time-up');
    expect(trace.events.at(-1)!.t).toBe(2);
    expect(trace.samples.x).toHaveLength(101);
  });

  it('counts a shared berth as reached only after having left it by 30 mm', () => {
    const loop = new Pen().to(60, 40).straight(160).arc(30, 180).straight(160).arc(30, 180).drawing();
    const berth = { name: { en: 'pier' }, at: { x: 100, y: 40 }, heading: 0, r: 15 };
    const trace = drive(world(loop, { start: berth, finish: berth }), UNDISTURBED);
    expect(trace.ending).toBe('finished');
    // Once round is 320 + 60π; the axle arrives a radius short of it.
    expect(eventsOf(trace, 'finish')[0]!.way).toBeCloseTo(320 + 60 * Math.PI - 15, 0);
  });

  it('notes gates in the order and at the place of crossing', () => {
    const gates = [200, 100].map((x) => ({
      id: `at${x}`,
      name: { en: 'gate' },
      a: { x, y: 90 },
      b: { x, y: 120 },
    }));
    const crossed = eventsOf(drive(world(straight(), { gates }), UNDISTURBED), 'gate');
    expect(crossed.map((event) => event.gate)).toEqual(['at100', 'at200']);
    expect(crossed[0]!.x).toBeCloseTo(100, 0);
  });

  it('keeps the least distance of the outline to an area', () => {
    // A square whose upper edge lies 30 mm below the line; the robot is 28 mm wide.
    const polygon = [
      { x: 120, y: 135 },
      { x: 160, y: 135 },
      { x: 160, y: 170 },
      { x: 120, y: 170 },
    ];
    const keepOut = [{ id: 'nest', name: { en: 'nest' }, polygon }];
    const trace = drive(world(straight(), { keepOut }), UNDISTURBED);
    expect(trace.keepOut.nest).toBeCloseTo(16, 1);
  });

  it('gives a document that its schema accepts', () => {
    const trace = drive(world(straight('CA')), UNDISTURBED);
    const parsed = parseDocument(Trace, JSON.parse(JSON.stringify(writeDocument(Trace, trace))));
    expect(parsed.ok).toBe(true);
  });
});
