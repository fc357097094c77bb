import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readingsOn } from '../../../shared/odds/readings.ts';
import { looksLikeJunction, roadMap, turnAt } from '../../../shared/odds/roads.ts';
import { wordMet } from '../../../shared/odds/words-met.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';
import { BANDS, fromStart, lighthouseAt } from './tracks.ts';

const sheet = lighthouseAt(380, 60);
const EQUAL: Kit = { ...DEMO_KIT, equalNeighbours: true };

function mapOf(drawing: Drawing, kit = DEMO_KIT) {
  const track = buildTrack(layOut(sheet, drawing), kit);
  return roadMap(track, sheet, kit);
}

/** Words and the ways of the bar at which they are understood, on the road from the first line's beginning. */
function readings(drawing: Drawing, plainFrom = 0) {
  const map = mapOf(drawing);
  const first = map.track.edges.find((edge) => edge.along && edge.low === 0)!;
  return readingsOn(map, map.from(first.index), plainFrom).map(({ at, word }) => [word, at]);
}

/** The word of the first mark, met along its line. */
const met = (word: string, lengths: readonly number[], gap = 0, kit = DEMO_KIT) => {
  const map = mapOf(fromStart().straight(200).mark(60, word, lengths, gap).drawing(), kit);
  const mark = map.track.edges.flatMap((edge) => edge.marks).find((one) => one.along)!;
  return wordMet(mark, kit);
};

describe('wordMet', () => {
  it('reads bands of the right length, from either side', () => {
    const map = mapOf(fromStart().straight(200).mark(60, 'CAV', [5, 5.5, 6]).drawing());
    const [along, back] = [true, false].map(
      (way) => map.track.edges.flatMap((edge) => edge.marks).find((one) => one.along === way)!,
    );
    expect(wordMet(along!, DEMO_KIT)).toBe('CAV');
    expect(wordMet(back!, DEMO_KIT)).toBe('VAC');
  });

  // The reader's own numbers: a band unit of 5.5, one band from 2.2, none from 1.6 units on.
  it.each([
    [2.3, 'CA'],
    [2.1, undefined],
    [8.2, 'CA'],
    [8.3, undefined],
    [8.9, undefined],
  ])('takes %f mm beside a sound band for %s', (length, word) => {
    expect(met('CA', [length, 5.5])).toBe(word);
  });

  it('takes one ink twice as long for two bands only where the kit allows equal neighbours', () => {
    expect(met('CA', [11, 5.5])).toBeUndefined();
    expect(met('CA', [11, 5.5], 0, EQUAL)).toBe('CCA');
    expect(met('CCA', BANDS, 0, EQUAL)).toBe('CCA');
  });

  it('white of a millimetre breaks a word, less does not', () => {
    expect(met('CA', BANDS, 0.9)).toBe('CA');
    expect(met('CA', BANDS, 1)).toBeUndefined();
  });

  it('an overlap of up to 1.7 mm is passed over', () => {
    expect(met('CA', BANDS, -1.5)).toBe('CA');
    expect(met('CA', BANDS, -2)).toBeUndefined();
  });

  it('a single band is no word, nor are more bands than the kit has', () => {
    expect(met('C', [5.5])).toBeUndefined();
    expect(met('CACA', BANDS)).toBe('CACA');
    expect(met('CACAC', [...BANDS, 5.5])).toBeUndefined();
  });
});

describe('readingsOn', () => {
  it('understands a word after 8 mm of black', () => {
    expect(readings(fromStart().straight(200).mark(60, 'CA', BANDS).drawing())).toEqual([['CA', 79]]);
  });

  it('wants 10 mm of black before a word', () => {
    const drawing = fromStart().straight(200).mark(60, 'CA', BANDS).drawing();
    expect(readings(drawing, 50)).toHaveLength(1);
    expect(readings(drawing, 50.5)).toEqual([]);
    expect(readings(drawing, 65)).toEqual([]);
  });

  it('of two marks so near that the first has not ended reads none', () => {
    const apart = (gap: number) =>
      readings(
        fromStart()
          .straight(200)
          .mark(60, 'CA', BANDS)
          .mark(71 + gap, 'AV', BANDS)
          .drawing(),
      );
    expect(apart(7)).toEqual([]);
    // The first has ended; the second has had less than 10 mm of black.
    expect(apart(9)).toEqual([['CA', 79]]);
    expect(apart(10)).toEqual([
      ['CA', 79],
      ['AV', 100],
    ]);
  });

  it('reads nothing that ends under the eyes of a corner or junction', () => {
    const corner = (length: number) =>
      readings(fromStart().straight(length).turn(90).straight(100).mark(60, 'CA', BANDS).drawing());
    // 79 mm, and 2.5 more where the bar sees the other leg's edge.
    expect(corner(81)).toEqual([]);
    expect(corner(82)).toEqual([['CA', 79]]);
    // A wide bend is just followed, and the word goes on over it.
    const bend = fromStart().straight(78).turn(30).straight(100).mark(60, 'CA', BANDS).drawing();
    expect(readings(bend)).toEqual([['CA', 79]]);
  });

  it('reads nothing on a curve that throws the line off the middle sensor', () => {
    const curve = (radius: number) =>
      readings(fromStart().straight(30).arc(radius, 120).straight(60).mark(45, 'CA', BANDS).drawing());
    // 2 mm off the middle: about 0.022 · 2 mm of turn rate a mm, a radius of some 23 mm.
    expect(curve(20)).toEqual([]);
    expect(curve(30)).toHaveLength(1);
  });
});

describe('corners on a road', () => {
  const nodeOf = (turn: number) => {
    const { track } = mapOf(fromStart().straight(100).turn(turn).straight(100).drawing());
    return track.nodes.find((node) => node.kind === 'corner')!;
  };

  it('turn by the angle from ahead', () => {
    expect(turnAt(nodeOf(120))).toBeCloseTo((120 * Math.PI) / 180, 9);
  });

  // The model's description: 50 degrees and wider are always clean, 40 never.
  it.each([
    [50, false],
    [40, true],
    [90, false],
    [120, false],
  ])('of %f degrees inside is taken for a junction: %s', (interior, taken) => {
    expect(looksLikeJunction(nodeOf(180 - interior), DEMO_KIT)).toBe(taken);
  });

  it('end a road where they are sharp, and belong to it where they are not', () => {
    const road = (turn: number) => {
      const map = mapOf(new Pen().to(30, 150).straight(100).turn(turn).straight(80).drawing());
      return map.from(map.track.edges.find((edge) => edge.along && edge.low === 0)!.index);
    };
    expect(road(90)).toMatchObject({ end: 'corner', length: 100 });
    expect(road(40).end).toBe('end');
    expect(road(40).length).toBeCloseTo(180, 6);
  });
});

describe('where a mark is understood', () => {
  it('needs 8 mm of black after it before a loose end, and before the edge of a crossing line', () => {
    const toEnd = (black: number) =>
      readings(
        fromStart()
          .straight(200)
          .mark(189 - black, 'CA', BANDS)
          .drawing(),
      );
    expect([toEnd(8), toEnd(7.9)]).toEqual([[['CA', 200]], []]);
    const toCrossing = (black: number) => {
      const main = fromStart()
        .straight(300)
        .mark(189 - 2.5 - black, 'CA', BANDS);
      return readings(main.to(230, 100, 90).straight(100).drawing());
    };
    expect([toCrossing(8), toCrossing(7.9)]).toEqual([[['CA', 197.5]], []]);
  });

  it('counts plain line from where the robot last turned, behind marks that it never saw', () => {
    const two = fromStart().straight(200).mark(60, 'CA', BANDS).mark(105, 'AV', BANDS).drawing();
    expect(readings(two, 95)).toEqual([['AV', 124]]);
    expect(readings(two, 100)).toEqual([]);
  });

  it('leaves out a mark whose bands make no word', () => {
    expect(readings(fromStart().straight(200).mark(60, 'CA', [8.6, 5.5]).drawing())).toEqual([]);
  });

  it('loses the bands where more than 6 mm of a tight bend lie under them or beside them', () => {
    // Radius 15 throws the bar of this robot further out than it reads; 10 mm before and 8 mm after count.
    const behindMark = (room: number) =>
      readings(
        fromStart()
          .straight(100)
          .arc(15, 90)
          .straight(60)
          .mark(89 - room, 'CA', BANDS)
          .drawing(),
      );
    expect([behindMark(5), behindMark(1)]).toEqual([[['CA', 103]], []]);
    const bend = (15 * Math.PI) / 2;
    const aheadOfMark = (room: number) =>
      readings(
        fromStart()
          .straight(60)
          .arc(15, 90)
          .straight(90)
          .mark(60 + bend + room, 'CA', BANDS)
          .drawing(),
      );
    expect(aheadOfMark(7).map(([word]) => word)).toEqual(['CA']);
    expect(aheadOfMark(3)).toEqual([]);
    const on = (radius: number) =>
      readings(fromStart().straight(60).arc(radius, 90).mark(70, 'CA', BANDS).drawing());
    expect([on(60), on(15)]).toEqual([[['CA', 89]], []]);
  });
});
