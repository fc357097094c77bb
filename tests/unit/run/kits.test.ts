import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import { actionOf, type Kit, PACES, reversed } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import { TRACE_RATE } from '../../../shared/documents/trace.ts';
import { idealRuns } from '../../../shared/run/ideal-runs.ts';
import { worldOf } from '../../../shared/run/world.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { KITS, lengthOf, wordFor } from '../../kits.ts';
import { Pen } from '../../sweeps/pen.ts';
import { eventsOf } from './worlds.ts';

/** Paper for any robot: it starts at (60, 200) facing right, and from (440, 200) facing left. */
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

const runsOver = (kit: Kit, drawing: Drawing, starts: readonly ('start' | 'finish')[] = ['start']) =>
  idealRuns(worldOf(layOut(SHEET, drawing), SHEET, kit), { starts, limit: 40 }).traces;
const only = (traces: readonly Trace[]): Trace => {
  expect(traces).toHaveLength(1);
  return traces[0]!;
};

describe.each(KITS)('ideal runs with the kit $id', (kit) => {
  const { robot, rules } = kit;
  const unit = new Array<number>(rules.bands.most).fill(robot.bandUnit);
  const pen = () => new Pen(rules.lineWidth.nominal);
  const pier = () => pen().to(50, 200).straight(400);
  const plain = (kind: Parameters<typeof wordFor>[1], wanted = {}) => wordFor(kit, kind, wanted);

  test.each(kit.chart.map((row) => row.word))('%s is read as it is met, from both sides', (word) => {
    const drawing = pier().mark(170, word, unit).drawing();
    const runs = runsOver(kit, drawing, ['start', 'finish']);
    const first = runs.map((run) => eventsOf(run, 'read')[0]);
    expect(first.map((event) => event && [event.word, event.along, event.mark])).toEqual([
      [word, true, 'mark0'],
      [reversed(word), false, 'mark0'],
    ]);
    expect(first.map((event) => event?.action)).toEqual([actionOf(kit, word), actionOf(kit, reversed(word))]);
    const acted = runs.map((run, i) => eventsOf(run, 'act')[0]!.t - first[i]!.t);
    for (const later of acted) expect(later).toBeCloseTo(robot.actsAfter, 2);
  });

  test('paces are those of the robot', () => {
    const drawing = pier()
      .mark(60, plain('pace-by', { steps: 1 }), unit)
      .drawing();
    const run = only(runsOver(kit, drawing));
    const change = eventsOf(run, 'pace')[0]!;
    expect([change.from, change.pace]).toEqual(['steady', 'brisk']);
    const speedAt = (t: number) => {
      const i = Math.round(t * TRACE_RATE);
      return (run.samples.x[i]! - run.samples.x[i - 10]!) * (TRACE_RATE / 10);
    };
    expect(speedAt(change.t - 0.1)).toBeCloseTo(robot.paces.steady, 0);
    expect(speedAt(change.t + 1)).toBeCloseTo(robot.paces.brisk, 0);
  });

  test.each(['left', 'straight', 'right'] as const)(
    'a mark chooses %s, as near as the rules allow',
    (way) => {
      const word = plain('choose', { way });
      const at = 200 - rules.actionReady[robot.startPace] - lengthOf(kit, word);
      const drawing = pen().to(250, 100, 90).straight(200).to(50, 200).straight(400).mark(at, word, unit);
      const junction = eventsOf(only(runsOver(kit, drawing.drawing())), 'junction')[0];
      expect(junction).toMatchObject({ took: way, by: 'mark' });
    },
  );

  test('an unmarked crossing is left to chance, or passed straight on where the robot does that', () => {
    const drawing = pen().to(250, 100, 90).straight(200).to(50, 200).straight(400).drawing();
    const runs = runsOver(kit, drawing);
    const ways = runs.map((run) => eventsOf(run, 'junction')[0]!.took);
    expect(ways).toEqual(robot.unmarkedJunction === 'any' ? ['left', 'straight', 'right'] : ['straight']);
    const chances = runs.reduce((sum, run) => sum + run.probability, 0);
    expect(chances).toBeCloseTo(1, 9);
  });

  test('turning back leads back to where the run began', () => {
    const run = only(runsOver(kit, pier().mark(170, plain('turn-back'), unit).drawing()));
    expect(eventsOf(run, 'turn-back')).toHaveLength(1);
    const end = run.events.at(-1)!;
    expect(Math.abs(end.x - 50)).toBeLessThan(5);
  });

  test('waiting and calling last as long as the chart says', () => {
    for (const kind of ['wait', 'signal'] as const) {
      const word = plain(kind);
      const run = only(runsOver(kit, pier().mark(170, word, unit).drawing()));
      const event = eventsOf(run, kind)[0]!;
      const action = actionOf(kit, word)!;
      expect(event.until - event.t).toBeCloseTo('time' in action ? action.time : 0, 2);
      expect(run.ending).toBe('finished');
    }
  });

  test('parking ends the run past the mark, by what reading and acting take', () => {
    const word = plain('park');
    const run = only(runsOver(kit, pier().mark(170, word, unit).drawing()));
    expect(run.ending).toBe('parked');
    const markEnd = 50 + 170 + lengthOf(kit, word);
    // The bar leads the axle; the word is over after 8 mm of black (the model's), then the action waits.
    const expected = markEnd + 8 - robot.barAhead + robot.actsAfter * robot.paces.steady;
    expect(Math.abs(run.events.at(-1)!.x - expected)).toBeLessThan(6);
  });

  test('goes round a corner that the rules call safe and a curve as tight as they allow', () => {
    const angle = (rules.corner.mayStopBelow * 180) / Math.PI + 3;
    const cornered = pen()
      .to(50, 200)
      .straight(150)
      .turn(180 - angle)
      .straight(120)
      .drawing();
    const curved = pen().to(50, 200).straight(150).arc(rules.curveRadius, 180).straight(120).drawing();
    for (const drawing of [cornered, curved]) {
      const run = only(runsOver(kit, drawing));
      const to = drawing.lines[0]!.pieces.at(-1)!.to;
      expect(run.ending).toBe('stopped');
      expect(eventsOf(run, 'junction')).toEqual([]);
      const end = run.events.at(-1)!;
      expect(Math.hypot(end.x - to.x, end.y - to.y)).toBeLessThan(robot.barAhead);
    }
  });

  test('a mark as near to a corner before it as the rules allow is read', () => {
    const word = plain('choose', { way: 'left' });
    const drawing = pen().to(50, 200).straight(100).turn(90).straight(150);
    const marked = drawing.mark(100 + rules.beforeMark, word, unit).drawing();
    expect(eventsOf(only(runsOver(kit, marked)), 'read').map((event) => event.word)).toEqual([word]);
  });
});

test('the kits give the four paces in order', () => {
  for (const { robot } of KITS) {
    const paces = PACES.map((pace) => robot.paces[pace]);
    expect(paces).toEqual(paces.toSorted((a, b) => a - b));
  }
});
