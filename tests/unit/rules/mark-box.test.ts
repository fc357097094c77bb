import { describe, expect, it } from 'vitest';
import type { MarkBox } from '../../../shared/documents/sheet.ts';
import { drawn, findings, line, mark, mended, of, PIER } from './setting.ts';

/** Two bands are 11 mm long and 5.4 mm wide; the pier runs from (40, 100) to (260, 100). */

const box = (x: number, y: number, w: number, h: number): MarkBox => ({
  id: `box-${x}-${y}`,
  name: { en: 'Marks' },
  at: { x, y },
  w,
  h,
});
const sheet = (...boxes: MarkBox[]) => ({ sheet: { boxes } });
const pier = (at: number, word = 'CA') => drawn([PIER], [mark('m', 'pier', at, word)]);
const lone = (x: number, length: number) => sheet(box(x, 90, length, 20));

describe('R-mark-box', () => {
  it('R-mark-box is silent without boxes, inside one, and where a mark just touches its frame', () => {
    expect(of('R-mark-box', pier(60))).toEqual([]);
    expect(of('R-mark-box', pier(60), sheet(box(95, 90, 20, 20)))).toEqual([]);
    expect(of('R-mark-box', pier(60), sheet(box(100, 97.3, 11, 5.4)))).toEqual([]);
  });

  it('R-mark-box finds a mark that reaches out by 3 mm, lengthwise or to the side', () => {
    const finding = {
      severity: 'stops',
      measured: 3,
      allowed: 0,
      unit: 'mm',
      place: { kind: 'mark', mark: 'm', at: { x: 105.5, y: 100 } },
      remedy: { code: 'into-box' },
    };
    expect(of('R-mark-box', pier(60), lone(103, 30))).toMatchObject([finding]);
    expect(of('R-mark-box', pier(60), sheet(box(90, 70, 40, 29.7)))).toMatchObject([finding]);
  });

  it('R-mark-box measures by the box that takes most of the mark, and two do not make one', () => {
    expect(of('R-mark-box', pier(60), sheet(box(20, 20, 30, 30), box(102, 90, 30, 20)))).toMatchObject([
      { measured: 2 },
    ]);
    expect(of('R-mark-box', pier(60), sheet(box(80, 90, 26, 20), box(106, 90, 26, 20)))).toMatchObject([
      { measured: 5 },
    ]);
  });

  it('R-mark-box goes by the outer edge of a bend, and by the ends of the bands', () => {
    // Over the top of a half circle of radius 40 at y = 60: the bands reach from 57.3 down to
    // 100 − 37.3 · cos(5.5/40) = 63.05.
    const arch = line('arch', [40, 100], [110, 100], [190, 100, 1], [260, 100]);
    const top = 70 + 20 * Math.PI - 5.5;
    const on = (y: number, h: number) =>
      of('R-mark-box', drawn([arch], [mark('m', 'arch', Math.round(top * 100) / 100, 'CA')]), {
        sheet: { boxes: [box(120, y, 60, h)] },
      });
    expect(on(57.3, 20)).toEqual([]);
    expect(on(58.3, 20)).toMatchObject([{ measured: 1 }]);
    expect(on(40, 22)).toMatchObject([{ measured: 1.05 }]);
  });

  it('R-mark-box is about every mark of the team, whatever its bands, and about no given one', () => {
    const stretch = drawn([PIER], [mark('m', 'pier', 60, [{ ink: 'C', length: 30, gap: 0 }])]);
    expect(of('R-mark-box', stretch, lone(103, 60))).toHaveLength(1);
    // The second band is painted over the first, which still ends 3 mm behind it.
    const painted = mark('m', 'pier', 60, [
      { ink: 'C', length: 9, gap: 0 },
      { ink: 'A', length: 4, gap: -7 },
    ]);
    expect(of('R-mark-box', drawn([PIER], [painted]), lone(90, 16))).toMatchObject([{ measured: 3 }]);
    const given = pier(60);
    expect(of('R-mark-box', drawn([]), { sheet: { given, boxes: [box(10, 10, 20, 20)] } })).toEqual([]);
    const two = drawn([PIER], [mark('a', 'pier', 60, 'CA'), mark('b', 'pier', 140, 'CA')]);
    expect(of('R-mark-box', two, lone(150, 60))).toMatchObject([{ place: { mark: 'a' } }]);
  });
});

describe('a mark that is moved into a box', () => {
  const at = (...setting: Parameters<typeof of>) => mended(of(...setting)[0]).marks[0]!.at;

  it('slides as far as it has to, to the nearer box', () => {
    // From 160 on, 120 mm along; 0.02 mm are kept.
    expect(at('R-mark-box', pier(60), lone(160, 40))).toBe(120.02);
    expect(at('R-mark-box', pier(60), sheet(box(70, 90, 25, 20), box(200, 90, 25, 20)))).toBe(43.98);
  });

  it('goes to the middle of a box whose near end has no room, also past a crossing or another mark', () => {
    const across = line('across', [150, 40], [150, 160]);
    const crossed = drawn([PIER, across], [mark('m', 'pier', 60, 'CA')]);
    // It may begin from 120 to 169 mm along; from the crossing at 110 mm it wants 25 mm of line.
    expect(at('R-mark-box', crossed, lone(160, 60))).toBe(144.5);
    const two = drawn([PIER], [mark('m', 'pier', 30, 'CA'), mark('n', 'pier', 110, 'CA')]);
    // From 110 to 199 mm along; the other mark ends at 121 mm.
    expect(at('R-mark-box', two, lone(150, 100))).toBe(154.5);
  });

  it('goes to the middle of a box that leaves nothing to spare', () => {
    expect(at('R-mark-box', pier(60), sheet(box(160, 90, 11, 20)))).toBe(120);
  });

  it('is left to the team where every place would break another rule, or no box lies on its line', () => {
    // 25 mm to the line's end are wanted.
    expect(of('R-mark-box', pier(60), lone(236, 20))[0]?.remedy).toEqual({ code: 'into-box' });
    expect(of('R-mark-box', pier(60), sheet(box(100, 120, 60, 40)))[0]?.remedy).toEqual({ code: 'into-box' });
  });

  it('stays in its box when it slides for another reason', () => {
    // It stands 20 mm behind the robot's axle and wants 25; in the shorter box it may begin up to 24 mm along.
    const slid = (length: number) => of('R-before-mark', pier(20), lone(50, length))[0]?.remedy;
    expect(slid(50)?.design?.drawing.marks[0]?.at).toBe(25.02);
    expect(slid(25)).toEqual({ code: 'slide-mark' });
    expect(findings(pier(20), lone(50, 25)).map(({ rule }) => rule)).toEqual(['R-before-mark']);
  });
});
