import { describe, expect, it } from 'vitest';
import type { Action, Kit } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { halfTurnTime, leaningOn, SEARCH_TIME, turnBy } from '../../../shared/odds/motion.ts';
import { Pen } from '../../sweeps/pen.ts';
import { BANDS, chainOn, endingsOf, fromStart, lighthouseAt, oddsOn, type Scene, SHEET } from './tracks.ts';

/**
 * Times of whole rides at 40 mm/s, by hand: the axle sets out at x = 40, motors lag by 0.04 s, speeds change by
 * 220 mm/s². A mark acts with the axle 25 mm behind it: 8 mm of black, 28 mm in 0.7 s, the bar 11 mm ahead.
 */
const SETTING_OUT = 0.04 + 40 / 440;
/** s more than at full speed, where a robot leaves a turn with 0.3 of it. */
const FROM_TURN = 28 ** 2 / (2 * 220 * 40);
const ACTS = 25;

/** The first way's time and what it leads to. */
function ride(scene: Scene) {
  const chain = chainOn(scene);
  const { first } = chain;
  if (first.to === 'endless') throw new Error('the ride ends');
  return { time: first.time, to: first.to, ending: chain.endings[first.index], forks: chain.forks };
}

const kitDoing = (action: Action): Kit => ({ ...DEMO_KIT, chart: [{ word: 'VCV', action }] });
/** Straight on, with a mark of three bands that ends at x = 147 and acts at x = 172. */
const marked = (action: Action, sheet: Sheet = lighthouseAt(300, 150)) => ({
  sheet,
  kit: kitDoing(action),
  drawing: fromStart().straight(300).mark(100.5, 'VCV', BANDS).drawing(),
});
/** Without anything on the way to the rim of the lighthouse at x = 288. */
const PLAIN = SETTING_OUT + 248 / 40;

describe('a ride', () => {
  it('at a pace for a time speeds up, keeps it, and slows down again', () => {
    const ramp = 40 / 220;
    // 1 s from 40 to 80 mm/s and on, then back to 40.
    const fast = 60 * ramp + 80 * (1 - ramp) + 60 * ramp;
    const { time } = ride(marked({ kind: 'pace-for', pace: 'fast', time: 1 }));
    expect(time).toBeCloseTo(SETTING_OUT + (248 - fast) / 40 + 1 + ramp, 3);
  });

  it('by a pace slower takes twice as long from there', () => {
    const ramp = 20 / 220;
    const slow = 288 - 172 - 30 * ramp;
    const { time } = ride(marked({ kind: 'pace-by', steps: -1 }));
    expect(time).toBeCloseTo(SETTING_OUT + (172 - 40) / 40 + ramp + slow / 20, 3);
  });

  it('stands still while it waits, and a signal or nothing costs no time', () => {
    expect(ride(marked({ kind: 'wait', time: 3 })).time).toBeCloseTo(PLAIN + 3 + 40 / 440, 3);
    expect(ride(marked({ kind: 'signal', time: 1 })).time).toBeCloseTo(PLAIN, 3);
    expect(ride(marked({ kind: 'nothing' })).time).toBeCloseTo(PLAIN, 3);
  });

  it('turns back on the spot where the mark acts, and stops at the end that it came from', () => {
    // Two bands that end at x = 147; the other way round they mean nothing.
    const drawing = fromStart().straight(300).mark(106, 'VC', BANDS).drawing();
    const { time, ending } = ride({ sheet: lighthouseAt(300, 150), drawing });
    // It has lost the line 2.05 mm short of the end, and rolls on for 1.6 mm before it searches.
    expect(ending).toMatchObject({ ending: 'stopped', arrived: false });
    expect(ending!.at.x).toBeCloseTo(30 + 2.05 - 1.6, 3);
    expect(ending!.at.y).toBeCloseTo(150, 6);
    const there = (172 - 40) / 40 + halfTurnTime(DEMO_KIT);
    expect(time).toBeCloseTo(SETTING_OUT + there + FROM_TURN + (172 - 32.05) / 40 + SEARCH_TIME, 3);
  });

  it.each([90, 100, 120])('turns on the spot at a corner of %f degrees', (turn) => {
    const angle = (turn * Math.PI) / 180;
    const pen = fromStart().straight(120).turn(turn).straight(100);
    const { past, ahead, time: turning } = turnBy(angle, DEMO_KIT, 40);
    const { time } = ride({ sheet: lighthouseAt(pen.at.x, pen.at.y), drawing: pen.drawing() });
    const left = 100 - 12 - Math.max(ahead, 0);
    expect(time).toBeCloseTo(SETTING_OUT + (150 - 40 + past) / 40 + turning + FROM_TURN + left / 40, 2);
  });

  it('follows a corner of 66 degrees at 40 mm/s, and turns at it at 80', () => {
    const pen = () => fromStart().straight(170).turn(66).straight(100);
    const { at } = pen();
    const sheet = lighthouseAt(at.x, at.y);
    const followed = ride({ sheet, drawing: pen().drawing() });
    expect(followed.time).toBeCloseTo(SETTING_OUT + (160 + 88) / 40, 2);
    const kit: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, startPace: 'fast' } };
    const turned = ride({ sheet, drawing: pen().drawing(), kit });
    // From rest to 80 mm/s takes 80 / 440 s more; the turn itself 0.3 s and more.
    expect(turned.time).toBeGreaterThan(0.04 + 80 / 440 + (160 + 88) / 80 + 0.3);
  });
});

describe('an action that becomes due', () => {
  /** With the axle so far before a corner of 90 degrees at x = 150. */
  const turningBefore = (room: number) => {
    const pen = fromStart()
      .straight(120)
      .mark(120 - room - ACTS - 11, 'VC', BANDS);
    return ride({ sheet: SHEET, drawing: pen.turn(90).straight(100).drawing() });
  };
  const BACK = FROM_TURN + SEARCH_TIME;

  it('turns the robot back before the bar is over a corner, or else behind that', () => {
    // The bar is over it from 11 + 2.5 mm on.
    const before = turningBefore(15);
    expect(before.ending!.at.x).toBeCloseTo(30.45, 3);
    const half = halfTurnTime(DEMO_KIT);
    expect(before.time).toBeCloseTo(SETTING_OUT + (135 - 40) / 40 + half + (135 - 32.05) / 40 + BACK, 3);
    // It goes on to the corner, turns there, turns back at once, and turns at the corner again, at 12 mm/s.
    const behind = turningBefore(12);
    const turns = turnBy(Math.PI / 2, DEMO_KIT, 40).time + half + turnBy(Math.PI / 2, DEMO_KIT, 12).time;
    expect(behind.time).toBeCloseTo(SETTING_OUT + 110 / 40 + turns + (150 - 32.05) / 40 + BACK, 2);
  });

  it('chooses a way up to the very junction', () => {
    const chosen = (room: number) => {
      const pen = new Pen().to(160, 90, 90).straight(120);
      const drawing = pen
        .to(30, 150)
        .straight(330)
        .mark(130 - room - ACTS - 11, 'AV', BANDS)
        .drawing();
      return chainOn({ sheet: SHEET, drawing }).forks.length;
    };
    expect([chosen(12), chosen(1), chosen(-1)]).toEqual([0, 0, 1]);
  });

  it('changes the pace on a curve, where a robot gains less way than it goes', () => {
    // The curve begins 100 mm along the line; the axle slows down when its own middle to the bar is on it.
    const pen = fromStart().straight(100).mark(79, 'CA', BANDS).arc(60, 90).straight(80);
    const { time } = ride({ sheet: lighthouseAt(pen.at.x, pen.at.y), drawing: pen.drawing() });
    const { share } = leaningOn(1 / 60, DEMO_KIT);
    const curve = 30 * Math.PI;
    const onto = 100 - 5.5;
    // Read 8 mm behind the mark, at 87 mm; the action is due 0.7 s later, on the curve.
    const slow = 0.7 - (onto - 87) / 40;
    const ramp = 20 / 220;
    const fast = (curve - (40 * slow + 50 * ramp) * share) / (60 * share);
    const rest = (80 - 12 + 5.5) / 60;
    expect(time).toBeCloseTo(SETTING_OUT + (onto - 10) / 40 + slow + ramp + fast + rest, 3);
  });
});

describe('a loose end', () => {
  it('is come nearer the faster the robot: on tiptoe it stops short of a berth that it rolls into at steady', () => {
    // The line ends 1 mm inside the berth; the axle stands 2.05 mm before that when the line is lost.
    const ends = (startPace: 'creep' | 'steady') => {
      const kit: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, startPace } };
      return oddsOn({ sheet: lighthouseAt(200, 150), kit, drawing: fromStart().straight(159).drawing() })
        .finish;
    };
    expect([ends('steady'), ends('creep')]).toEqual([1, 0]);
  });
});

describe('a robot that has arrived', () => {
  // It comes over the rim at x = 188, 12 mm before (200, 150), and drives on for half a second: 20 mm.
  const ARRIVAL = SETTING_OUT + 148 / 40;
  const parks = (at: number) => {
    const drawing = fromStart()
      .straight(300)
      .mark(at - ACTS - 16.5 - 30, 'VCV', BANDS)
      .drawing();
    return oddsOn({ sheet: lighthouseAt(200, 150), kit: kitDoing({ kind: 'park' }), drawing });
  };

  it('may still park within that time, and has arrived when it did', () => {
    const odds = parks(207);
    expect(endingsOf(odds)).toEqual(['parked 1.0000']);
    expect(odds.endings[0]!.at.x).toBeCloseTo(207, 3);
    expect(odds.finish).toBe(1);
    expect(odds.inTime.meanTime).toBeCloseTo(ARRIVAL, 3);
  });

  it('has finished after it, in its berth', () => {
    const odds = parks(209);
    expect(endingsOf(odds)).toEqual(['finished 1.0000']);
    expect(odds.endings[0]!.at).toEqual({ x: 200, y: 150 });
    expect(odds.inTime.meanTime).toBeCloseTo(ARRIVAL, 3);
  });

  it('that parks before has not', () => {
    expect(parks(187)).toMatchObject({ finish: 0, endings: [{ ending: 'parked', probability: 1 }] });
  });

  it('may still drive off the paper, and finishes where its line ends in the berth', () => {
    const off = (x: number) =>
      oddsOn({ sheet: lighthouseAt(x, 150), drawing: fromStart().straight(400).drawing() });
    expect(endingsOf(off(414))).toEqual(['off-paper 1.0000']);
    expect(off(414).finish).toBe(1);
    expect(endingsOf(off(410))).toEqual(['finished 1.0000']);
    const short = oddsOn({ sheet: lighthouseAt(200, 150), drawing: fromStart().straight(165).drawing() });
    expect(endingsOf(short)).toEqual(['finished 1.0000']);
  });
});

describe('junctions and marks on the way', () => {
  const crossings = (apart: number, kit = DEMO_KIT) => {
    const pen = new Pen()
      .to(160, 70, 90)
      .straight(160)
      .to(160 + apart, 70, 90)
      .straight(160);
    return chainOn({ sheet: lighthouseAt(330, 150), drawing: pen.to(30, 150).straight(330).drawing(), kit });
  };

  it('a crossing within 16 mm of the last, as the bar sees them, goes unnoticed', () => {
    // From 24.5 mm on: the bar is 11 mm ahead, and sees the line 2.5 mm before its middle.
    const straightOn = (apart: number) =>
      crossings(apart).forks[0]!.branches.find(({ way }) => way === 'straight')!.leads.to;
    expect([straightOn(24), straightOn(25)]).toEqual(['ending', 'fork']);
  });

  it('a fork has its ways from left to right, and the heading of those who come to it', () => {
    const [fork] = crossings(60).forks;
    expect(fork!.branches.map(({ way }) => way)).toEqual(['left', 'straight', 'right']);
    expect(fork!.at).toEqual({ x: 160, y: 150 });
    expect([fork!.heading.x, fork!.heading.y]).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9)]);
  });

  it('a word wants 10 mm of black also behind a corner that is just followed', () => {
    const second = (room: number) => {
      const pen = fromStart().straight(120).mark(104, 'CA', BANDS).turn(66).straight(100);
      const { at } = pen;
      // The first mark ends 5 mm before the corner, too near to be read.
      const drawing = pen.mark(120 + room, 'VCV', BANDS).drawing();
      return endingsOf(oddsOn({ sheet: lighthouseAt(at.x, at.y), kit: kitDoing({ kind: 'park' }), drawing }));
    };
    expect(second(4.5)).toEqual(['finished 1.0000']);
    expect(second(5.5)).toEqual(['parked 1.0000']);
  });

  it('a choice is forgotten at a corner that looks like a junction', () => {
    // 42 degrees inside: the far leg lies under the outer sensors.
    const chosen = (turn: number) => {
      const pen = fromStart().straight(110).turn(turn).straight(100);
      const { at } = pen;
      const drawing = pen.drawing();
      const marks = fromStart().mark(40, 'AV', BANDS).marks;
      const across = new Pen().to(at.x - 60, at.y).straight(120).lines[0]!;
      const lines = [...drawing.lines, { ...across, id: 'across' }];
      return chainOn({ sheet: SHEET, drawing: { lines, marks } }).forks.length;
    };
    expect(chosen(90)).toBe(0);
    expect(chosen(138)).toBeGreaterThan(0);
  });
});
