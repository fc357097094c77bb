import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { Pen } from '../../sweeps/pen.ts';
import {
  BANDS,
  chainOn,
  endingsOf,
  FORK,
  fromStart,
  lighthouseAt,
  oddsOn,
  RING,
  SHEET,
  STREET,
} from './tracks.ts';

const kitWith = (change: Partial<Kit['robot']>): Kit => ({
  ...DEMO_KIT,
  robot: { ...DEMO_KIT.robot, ...change },
});

describe('the track as a chain', () => {
  it('a fork that nothing decides halves the chance', () => {
    const odds = oddsOn(FORK);
    expect(endingsOf(odds)).toEqual(['finished 0.5000', 'stopped 0.5000']);
    expect(odds).toMatchObject({ finish: 0.5, endless: 0, basis: 'track', start: 'start' });
  });

  it('a crossing leaves a third each, and two of them a ninth', () => {
    expect(endingsOf(oddsOn(STREET))).toEqual([
      'stopped 0.3333',
      'stopped 0.3333',
      'stopped 0.1111',
      'finished 0.1111',
      'stopped 0.1111',
    ]);
  });

  it('a ring may be gone round again and again: two thirds find the way on', () => {
    // From the left side a = 1/2 · 1 + 1/2 · b reaches the lighthouse, with b the chance when coming back to
    // the stem: b = 1/2 · 0 + 1/2 · a. So a = 2/3, b = 1/3.
    const odds = oddsOn(RING);
    expect(odds.finish).toBeCloseTo(2 / 3, 12);
    expect(odds.endless).toBe(0);
    const back = odds.open.filter((junction) => Math.abs(junction.at.x - 140) < 1 && junction.met < 1);
    expect(back).toHaveLength(2);
    for (const junction of back) {
      // Half go up and half down; half of those pass the way on.
      expect(junction.met).toBeCloseTo(1 / 4, 12);
      expect(junction.arms.find((arm) => arm.way === 'straight')?.finish).toBeCloseTo(2 / 3, 12);
      expect(junction.arms.find((arm) => arm.way !== 'straight')?.finish).toBe(0);
    }
  });

  it('tells of each open junction how likely it is met and what each way is worth', () => {
    const { open } = oddsOn(STREET);
    expect(open.map(({ at, met }) => [Math.round(at.x), met])).toEqual([
      [160, 1],
      [250, expect.closeTo(1 / 3, 12)],
    ]);
    expect(open[0]!.heading.x).toBeCloseTo(1, 9);
    expect(open[0]!.arms.map(({ way, chance, finish }) => [way, chance, finish])).toEqual([
      ['left', 1 / 3, 0],
      ['straight', 1 / 3, expect.closeTo(1 / 3, 12)],
      ['right', 1 / 3, 0],
    ]);
  });

  it.each([
    ['AV', 1],
    ['VA', 0],
    // No way straight on: the choice is used up, and chance decides.
    ['ACA', 0.5],
    ['CV', 0.5],
  ])('the mark %s before the fork makes the chance %f', (word, chance) => {
    const pen = new Pen();
    pen.lines.push(...FORK.drawing.lines);
    const drawing = { lines: pen.lines, marks: fromStart().mark(50, word, BANDS).marks };
    expect(oddsOn({ ...FORK, drawing }).finish).toBeCloseTo(chance, 12);
  });

  it('a choice that comes too late is used at the next junction', () => {
    // 0.7 s after 8 mm of black are 36 mm at steady; the crossing at 160 comes 25 mm after the mark.
    const pen = new Pen().to(160, 90, 90).straight(120).to(260, 90, 90).straight(120);
    const at = 160 - 30 - 11 - 12;
    const drawing = pen.to(30, 150).straight(330).mark(at, 'AV', BANDS).drawing();
    const odds = oddsOn({ sheet: lighthouseAt(260, 95), drawing });
    expect(odds.open).toHaveLength(1);
    expect(odds.open[0]!.at.x).toBeCloseTo(160, 6);
    expect(odds.finish).toBeCloseTo(1 / 3, 12);
  });

  it('the later of two choices counts', () => {
    const pen = new Pen().to(250, 30, 90).straight(120).to(250, 150, 90).straight(120);
    const drawing = pen.to(30, 150).straight(220).mark(40, 'VA', BANDS).mark(100, 'AV', BANDS).drawing();
    expect(oddsOn({ sheet: lighthouseAt(250, 40), drawing }).finish).toBe(1);
  });

  it('a kit that goes straight on leaves a crossing to nobody, a fork still to chance', () => {
    const kit = kitWith({ unmarkedJunction: 'straight' });
    expect(oddsOn({ ...STREET, kit }).finish).toBe(1);
    expect(oddsOn({ ...FORK, kit }).finish).toBe(0.5);
  });

  it('no line under the bar: never started', () => {
    const odds = oddsOn({
      sheet: lighthouseAt(200, 40),
      drawing: new Pen().to(30, 40).straight(200).drawing(),
    });
    expect(endingsOf(odds)).toEqual(['never-started 1.0000']);
    expect(odds.endings[0]!.at).toEqual({ x: 40, y: 150 });
  });

  it('a line that leads over the edge ends there', () => {
    const odds = oddsOn({ sheet: SHEET, drawing: fromStart().straight(450).drawing() });
    expect(endingsOf(odds)).toEqual(['off-paper 1.0000']);
    expect(odds.endings[0]!.at.x).toBeCloseTo(420, 1);
  });

  it('parks 0.7 s after the mark was understood', () => {
    const drawing = fromStart().straight(300).mark(100, 'VAV', BANDS).drawing();
    const odds = oddsOn({ sheet: SHEET, drawing });
    expect(endingsOf(odds)).toEqual(['parked 1.0000']);
    // The mark ends at 146.5; 8 mm of black under the bar, 11 mm ahead of the axle; then 28 mm at 40 mm/s.
    expect(odds.endings[0]!.at.x).toBeCloseTo(146.5 + 8 - 11 + 28, 3);
  });

  it('takes the time of a straight line: lag, start and way at 40 mm/s', () => {
    const odds = oddsOn({ sheet: lighthouseAt(300, 150), drawing: fromStart().straight(290).drawing() });
    // From 40 to the rim at 288. Getting up to speed at 220 mm/s² costs 40 / 440 s, the motors 0.04 s.
    expect(odds.inTime.meanTime).toBeCloseTo(0.04 + 40 / 440 + 248 / 40, 3);
  });

  it('is faster after a mark for the pace, from where it acts', () => {
    const drawing = fromStart().straight(290).mark(50, 'CA', BANDS).drawing();
    const odds = oddsOn({ sheet: lighthouseAt(300, 150), drawing });
    // The mark ends at 91; it acts with the axle at 91 + 8 − 11 + 28 = 116. From 40 to 60 mm/s by 220 mm/s².
    const slow = 0.04 + 40 / 440 + (116 - 40) / 40;
    const ramp = 20 / 220;
    const fast = (288 - 116 - 50 * ramp) / 60;
    expect(odds.inTime.meanTime).toBeCloseTo(slow + ramp + fast, 3);
  });

  it('waits for as long as the mark says', () => {
    const plain = fromStart().straight(290);
    const waiting = fromStart().straight(290).mark(50, 'VCV', BANDS).drawing();
    const sheet = lighthouseAt(300, 150);
    const without = oddsOn({ sheet, drawing: plain.drawing() }).inTime.meanTime!;
    // 2 s, and getting up to speed once more.
    expect(oddsOn({ sheet, drawing: waiting }).inTime.meanTime).toBeCloseTo(without + 2 + 40 / 440, 3);
  });
});

describe('endless loops', () => {
  it('a ring without a way out is found, not timed out', () => {
    const start = { ...SHEET.start, at: { x: 140, y: 150 }, heading: -Math.PI / 2 };
    const drawing = new Pen().to(140, 150, -90).arc(60, 180).arc(60, 180).drawing();
    const odds = oddsOn({ sheet: { ...SHEET, start }, drawing });
    expect(odds).toMatchObject({ endless: 1, finish: 0, endings: [], open: [] });
  });

  it('turning back at both ends of a line never ends', () => {
    const kit = kitWith({ looseEnd: 'turn-back' });
    const odds = oddsOn({ sheet: SHEET, drawing: fromStart().straight(200).drawing(), kit });
    expect(odds.endless).toBe(1);
  });

  it('turn back as a two-way mark never ends, as the model’s description found', () => {
    // A palindrome turns the robot again when it comes back; here from both sides of one mark.
    const kit: Kit = {
      ...kitWith({ looseEnd: 'turn-back' }),
      chart: [{ word: 'VCV', action: { kind: 'turn-back' } }],
    };
    const drawing = fromStart().straight(300).mark(100, 'VCV', BANDS).drawing();
    expect(oddsOn({ sheet: lighthouseAt(320, 150), drawing, kit }).endless).toBe(1);
  });

  it('a fork into a ring without a way out is endless for half of the robots', () => {
    // Left: to the lighthouse. Right: a loop that comes back to its own beginning, straight on for ever.
    const kit = kitWith({ unmarkedJunction: 'straight' });
    const drawing = fromStart()
      .straight(130)
      .to(160, 150, -90)
      .straight(110)
      .to(160, 150, 90)
      .straight(40)
      .to(160, 190, 90)
      .arc(40, -180)
      .arc(40, -180)
      .drawing();
    const odds = oddsOn({ sheet: lighthouseAt(160, 50), drawing, kit });
    expect(odds.finish).toBeCloseTo(0.5, 12);
    expect(odds.endless).toBeCloseTo(0.5, 12);
  });
});

describe('start and finish', () => {
  it('share a berth: arriving counts after having left it', () => {
    const berth = { ...SHEET.start, at: { x: 110, y: 150 } };
    const sheet = { ...SHEET, start: berth, finish: berth };
    const drawing = new Pen().to(90, 150).straight(100).arc(40, 180).straight(100).arc(40, 180).drawing();
    const odds = oddsOn({ sheet, drawing });
    expect(endingsOf(odds)).toEqual(['finished 1.0000']);
    expect(odds.inTime.meanTime).toBeGreaterThan(400 / 40);
  });

  it('from the finish the other berth is the one to reach', () => {
    const { sheet } = FORK;
    const back = { ...sheet.finish!, heading: Math.PI };
    const odds = oddsOn({ ...FORK, sheet: { ...sheet, finish: back }, start: 'finish' });
    expect(odds.start).toBe('finish');
    expect(endingsOf(odds).sort()).toEqual(['finished 0.5000', 'stopped 0.5000']);
    expect(odds.endings.find((e) => e.ending === 'finished')?.at).toEqual({ x: 40, y: 150 });
  });

  it('from a finish that is not there is refused', () => {
    const drawing = fromStart().straight(100).drawing();
    expect(() => chainOn({ sheet: SHEET, drawing, start: 'finish' })).toThrow(RangeError);
  });
});

describe('time limit', () => {
  it('counts for the chance in time alone', () => {
    const { finish, inTime } = oddsOn(RING, 15);
    expect(finish).toBeCloseTo(2 / 3, 12);
    // Half of the robots pass the far side once, a quarter of a quarter more come by later than 15 s.
    expect(inTime).toMatchObject({ limit: 15, finish: expect.closeTo(0.5, 12) });
  });

  it('of nobody in time has no mean time', () => {
    expect(oddsOn(FORK, 2).inTime).toEqual({ limit: 2, finish: 0 });
  });

  it('chances in time grow towards the chance without a limit', () => {
    const chances = [15, 30, 60, 120, 240].map((limit) => oddsOn(RING, limit).inTime.finish);
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
    expect(chances.at(-1)).toBeCloseTo(2 / 3, 6);
  });
});
