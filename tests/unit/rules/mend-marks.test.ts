import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { viewOf } from '../../../shared/rules/context.ts';
import { slidMark } from '../../../shared/rules/mend-marks.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { berth, drawn, line, mark, PIER, SHEET, withRobot } from './setting.ts';

/** Two bands are 11 mm long, and 25 mm of room are wanted; 0.02 mm are kept beyond that. */

const UP = line('up', [150, 100], [150, 10]);
type Marks = ReturnType<typeof mark>[];

interface Setting {
  readonly lines?: ReturnType<typeof line>[];
  readonly sheet?: Partial<Sheet>;
  readonly kit?: Kit;
  readonly starts?: readonly ('start' | 'finish')[];
}

/** Where the mark `m` may slide to, nearest first. */
function slides(marks: Marks, { lines = [PIER, UP], sheet, kit = DEMO_KIT, starts }: Setting = {}): number[] {
  const view = viewOf(ruleContext({ ...SHEET, ...sheet }, drawn(lines, marks), kit, starts));
  const laid = view.track.layout.marks.find(({ id }) => id === 'm')!;
  return slidMark(view, laid).map(({ marks: after }) => after.find(({ id }) => id === 'm')!.at);
}
const up = (at: number, word = 'CA') => mark('m', 'up', at, word);
const pier = (at: number, word = 'CA') => mark('m', 'pier', at, word);

describe('slidMark', () => {
  it('goes to the nearest place with room, and stays where it has room', () => {
    expect(slides([up(20)])).toEqual([25.02]);
    expect(slides([up(40)])).toEqual([40]);
    // Up to the loose end, 90 mm along.
    expect(slides([up(70)])).toEqual([90 - 25 - 11 - 0.02]);
  });

  it('takes the room of the pace for an action that has to be ready, on the side where it acts', () => {
    // Before the crossing 110 mm along: a choice wants 30 mm at pace steady, a pace 25.
    expect(slides([pier(90, 'AV')])).toEqual([110 - 30 - 11 - 0.02]);
    expect(slides([pier(90, 'CA')])).toEqual([110 - 25 - 11 - 0.02]);
    // Behind it a choice for those who go on meets no junction any more.
    expect(slides([pier(190, 'AV')])).toEqual([220 - 25 - 11 - 0.02]);
  });

  it('needs no more for a choice than is there behind a corner', () => {
    // The corner is 110 mm along, the junction 20 mm behind it: 30 mm to that are 10 before the corner, 25 the rule.
    const elbow = line('elbow', [40, 100], [150, 100], [150, 180]);
    const street = (behind: number) => line('street', [120, 100 + behind], [180, 100 + behind]);
    const on = (behind: number) => slides([mark('m', 'elbow', 92, 'AV')], { lines: [elbow, street(behind)] });
    expect(on(20)).toEqual([110 - 25 - 11 - 0.02]);
    expect(on(4)).toEqual([110 - 26 - 11 - 0.02]);
  });

  it('keeps away from neighbours, and finds nothing between two that stand too near', () => {
    // From 21 + 25 to 25 + 11 before the next one.
    const between = (at: number, next: number) =>
      slides([mark('a', 'pier', 10, 'CA'), pier(at), mark('b', 'pier', next, 'CA')], { lines: [PIER] });
    expect(between(50, 82)).toEqual([]);
    expect([between(40, 82.1), between(46.05, 82.1), between(60, 82.1)]).toEqual([[46.02], [46.05], [46.08]]);
  });

  it('keeps its room from the axle of those who start on its line alone', () => {
    // 40 mm along the pier.
    const sheet = { start: berth(80, 100) };
    expect(slides([up(20)], { sheet })).toEqual([25.02]);
    expect(slides([pier(60)], { sheet })).toEqual([65.02]);
    expect(slides([pier(60)], { sheet: { start: berth(80, 130) } })).toEqual([60]);
  });

  it('keeps off a curve on both sides, nearest first', () => {
    // A curve of radius 20, from 80 to 111.4 mm along. Nobody wants room before it on the way back.
    const bent = line('bent', [40, 60], [120, 60], [140, 80, Math.SQRT2 - 1], [140, 190]);
    const setting = { lines: [bent], sheet: { start: berth(40, 60) } };
    const before = 80 - 11 - 0.02;
    const behind = Math.round((80 + 10 * Math.PI + 25 + 0.02) * 100) / 100;
    expect(slides([mark('m', 'bent', 90, 'CA')], setting)).toEqual([before, behind]);
    expect(slides([mark('m', 'bent', 110, 'CA')], setting)).toEqual([behind, before]);
    const turning = { ...setting, kit: withRobot({ looseEnd: 'turn-back' }) };
    expect(slides([mark('m', 'bent', 90, 'CA')], turning)).toEqual([80 - 25 - 11 - 0.02, behind]);
  });

  it('finds nothing for a mark that stands on no edge of its line', () => {
    const beyond = mark('m', 'pier', 219, 'CA');
    expect(slides([beyond], { lines: [PIER] })).toEqual([]);
  });
});
