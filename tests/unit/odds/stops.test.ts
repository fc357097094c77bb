import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { leaningOn } from '../../../shared/odds/motion.ts';
import { Pen } from '../../sweeps/pen.ts';
import { BANDS, endingsOf, fromStart, lighthouseAt, oddsOn, SHEET } from './tracks.ts';

const TURNING: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, looseEnd: 'turn-back' } };
/** Getting up to 40 mm/s by 220 mm/s², and the lag of the motors, s. */
const SETTING_OUT = 0.04 + 40 / 440;

describe('the edge of the paper', () => {
  it.each([
    ['right', 0, { x: 420, y: 150 }],
    ['left', 180, { x: 0, y: 150 }],
    ['bottom', 90, { x: 200, y: 297 }],
    ['top', -90, { x: 200, y: 0 }],
  ] as const)('on the %s a run ends where its axle leaves', (_, heading, edge) => {
    const start = { ...SHEET.start, at: { x: 200, y: 150 }, heading: (heading * Math.PI) / 180 };
    const drawing = new Pen().to(200, 150, heading).straight(400).drawing();
    const odds = oddsOn({ sheet: { ...SHEET, start }, drawing });
    expect(endingsOf(odds)).toEqual(['off-paper 1.0000']);
    expect(odds.endings[0]!.at.x).toBeCloseTo(edge.x, 1);
    expect(odds.endings[0]!.at.y).toBeCloseTo(edge.y, 1);
  });
});

describe('a berth for start and finish', () => {
  /** From the berth so far to the right, and 150 mm to the left. */
  const backAndForth = (right: number) => {
    const berth = { ...SHEET.start, at: { x: 200, y: 150 } };
    const drawing = new Pen()
      .to(50, 150)
      .straight(150 + right)
      .drawing();
    return oddsOn({ sheet: { ...SHEET, start: berth, finish: berth }, drawing, kit: TURNING });
  };

  it('is left by 30 mm beyond its rim of 12: who has not been so far has not arrived', () => {
    // 60 mm out and 48 back to the rim, with a half turn between: some 4 s. 35 mm out are not enough:
    // the robot comes by, goes 150 mm on, and arrives when it comes back: 358 mm and two half turns.
    expect(backAndForth(60).inTime.meanTime).toBeLessThan(108 / 40 + 3);
    expect(backAndForth(35).inTime.meanTime).toBeGreaterThan(358 / 40);
    expect([backAndForth(60).finish, backAndForth(35).finish]).toEqual([1, 1]);
  });
});

describe('a curve', () => {
  it('takes the time of its length at the share of the pace that the axle has on it', () => {
    const drawing = fromStart().straight(100).arc(30, 90).straight(100).drawing();
    const odds = oddsOn({ sheet: lighthouseAt(160, 270), drawing });
    // From 40: 90 mm, a quarter of a circle, and 78 mm to the rim of 12 mm about (160, 270).
    const { share } = leaningOn(1 / 30, DEMO_KIT);
    const time = SETTING_OUT + (90 + 78) / 40 + (15 * Math.PI) / (40 * share);
    expect(odds.inTime.meanTime).toBeCloseTo(time, 3);
  });
});

describe('turning back', () => {
  /** It acts with the axle 25 mm behind the mark: 8 mm of black, 28 mm in 0.7 s, the bar 11 mm ahead. */
  const actingBefore = (room: number) => {
    const pen = new Pen().to(160, 90, 90).straight(120);
    const drawing = pen
      .to(30, 150)
      .straight(330)
      .mark(160 - 30 - room - 25 - 11, 'VC', BANDS)
      .drawing();
    return oddsOn({ sheet: lighthouseAt(330, 150), drawing });
  };

  it('waits while the bar is on a junction, which then comes first', () => {
    // The bar is on it from 11 + 2.5 mm before the crossing on.
    expect(actingBefore(15).open).toEqual([]);
    expect(endingsOf(actingBefore(15))).toEqual(['stopped 1.0000']);
    expect(actingBefore(12).open.length).toBeGreaterThan(0);
  });
});
