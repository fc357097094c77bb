import { describe, expect, it } from 'vitest';
import { nextPlace, placesOf, stepped, underCursor } from '../../../../client/editor/keyboard/cursor.ts';
import type { Design } from '../../../../shared/documents/design.ts';
import { DRAW, SHEET } from '../editor-setting.ts';

const at = (x: number, y: number) => ({ x, y });

/** A corner of two straights from the start berth, with one mark in the middle of the first. */
const design: Design = {
  version: 1,
  drawing: {
    lines: [
      {
        id: 'l1',
        width: 5,
        from: at(40, 160),
        pieces: [
          { to: at(140, 160), bulge: 0 },
          { to: at(140, 60), bulge: 0 },
        ],
      },
    ],
    marks: [
      {
        id: 'm1',
        line: 'l1',
        at: 44,
        bands: [
          { ink: 'C', length: 6, gap: 0 },
          { ink: 'A', length: 6, gap: 0 },
        ],
      },
    ],
  },
};

describe('stepped', () => {
  it('goes to the next line of the grid, or on by a millimetre', () => {
    expect(stepped(at(40, 160), 'right', false, SHEET)).toEqual(at(45, 160));
    expect(stepped(at(42, 160), 'right', false, SHEET)).toEqual(at(45, 160));
    expect(stepped(at(42, 160), 'left', false, SHEET)).toEqual(at(40, 160));
    expect(stepped(at(42, 160), 'left', true, SHEET)).toEqual(at(41, 160));
    expect(stepped(at(40, 160), 'up', true, SHEET)).toEqual(at(40, 159));
  });
  it('stays on the sheet', () => {
    expect(stepped(at(2, 160), 'left', false, SHEET)).toEqual(at(0, 160));
    expect(stepped(at(0, 160), 'left', true, SHEET)).toEqual(at(0, 160));
    expect(stepped(at(295, 208), 'down', false, SHEET)).toEqual(at(295, 210));
    expect(stepped(at(295, 210), 'right', false, SHEET)).toEqual(at(297, 210));
  });
});

describe('placesOf and nextPlace', () => {
  it('lists berths, ends, corners, middles and marks once each, in reading order', () => {
    // The mark's middle is 44 + 6 mm along; the first straight's is at 50 mm too.
    expect(placesOf(design, DRAW)).toEqual([
      at(140, 60),
      at(250, 60),
      at(140, 110),
      at(40, 160),
      at(90, 160),
      at(140, 160),
    ]);
  });
  it('goes round and round, from between places too', () => {
    const places = placesOf(design, DRAW);
    expect(nextPlace(at(40, 160), places, false)).toEqual(at(90, 160));
    expect(nextPlace(at(140, 160), places, false)).toEqual(at(140, 60));
    expect(nextPlace(at(140, 60), places, true)).toEqual(at(140, 160));
    expect(nextPlace(at(100, 160), places, false)).toEqual(at(140, 160));
    expect(nextPlace(at(100, 160), places, true)).toEqual(at(90, 160));
    expect(nextPlace(at(290, 200), places, false)).toEqual(at(140, 60));
    expect(nextPlace(at(290, 200), places, true)).toEqual(at(140, 160));
  });
});

describe('underCursor', () => {
  it('names what is there: berth and end, mark, corner, middle of nothing, line, paper', () => {
    const under = (x: number, y: number) => underCursor(at(x, y), design, DRAW);
    expect(under(40, 160)).toEqual([{ kind: 'berth', which: 'start' }, { kind: 'end' }]);
    expect(under(250, 60)).toEqual([{ kind: 'berth', which: 'finish' }]);
    expect(under(90, 161)).toEqual([{ kind: 'mark', bands: ['C', 'A'] }]);
    expect(under(140, 160)).toEqual([{ kind: 'corner' }]);
    expect(under(120, 160)).toEqual([{ kind: 'line' }]);
    expect(under(120, 100)).toEqual([{ kind: 'paper' }]);
  });
  it('names the box for marks that it is in beside what is there, its frame included', () => {
    const name = { en: 'Bracket' };
    const boxes = [{ id: 'b', name, at: { x: 100, y: 150 }, w: 30, h: 20 }];
    const context = { ...DRAW, sheet: { ...DRAW.sheet, boxes } };
    const under = (x: number, y: number) => underCursor(at(x, y), design, context);
    expect(under(120, 160)).toEqual([{ kind: 'line' }, { kind: 'box', name }]);
    expect(under(130, 170)).toEqual([{ kind: 'paper' }, { kind: 'box', name }]);
    expect(under(131, 170)).toEqual([{ kind: 'paper' }]);
  });
});
