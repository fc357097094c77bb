import { describe, expect, it } from 'vitest';
import { EMPTY_DRAWING } from '../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { svgOf } from '../../../shared/picture/svg.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { FULL_SHEET, STRAIGHT } from './picture-setting.ts';

const picture = (drawing = STRAIGHT, sheet = FULL_SHEET) =>
  pictureOf({ sheet, kit: DEMO_KIT, layout: layOut(sheet, drawing) });

describe('pictureOf', () => {
  it('rules fine lines every 5 mm and coarse ones every 50 mm, none twice, none on the edge', () => {
    const { grid } = picture();
    expect(grid.coarse.xs).toEqual([50, 100, 150, 200, 250]);
    expect(grid.coarse.ys).toEqual([50, 100, 150]);
    expect(grid.fine.xs.slice(0, 3)).toEqual([5, 10, 15]);
    expect(grid.fine.xs).not.toContain(50);
    expect(grid.fine.xs).toHaveLength(300 / 5 - 1 - 5);
  });

  it('lays a band across its line, 0.4 mm wider than it, with the gap before it', () => {
    const [coral, aqua] = picture().bands;
    // The first band begins 40 mm along, at x = 90; half of 5.4 to either side of y = 150.
    expect(coral!.outline).toEqual([
      { x: 90, y: 147.3 },
      { x: 95.5, y: 147.3 },
      { x: 95.5, y: 152.7 },
      { x: 90, y: 152.7 },
    ]);
    expect(aqua!.outline[0]!.x).toBeCloseTo(96, 9);
    expect([coral!.ink, coral!.color, coral!.hatch]).toEqual(['C', '#F4743B', 'diagonal']);
  });

  it('bends a band with its line', () => {
    const quarter = Math.SQRT2 - 1;
    const bent = {
      ...STRAIGHT,
      lines: [{ ...STRAIGHT.lines[0]!, pieces: [{ to: { x: 80, y: 180 }, bulge: quarter }] }],
      marks: [{ ...STRAIGHT.marks[0]!, at: 10 }],
    };
    const band = picture(bent).bands[0]!;
    expect(band.outline.length).toBeGreaterThan(4);
    // A quarter circle of radius 30 from (50, 150) to (80, 180) with its centre at (50, 180).
    for (const [i, p] of band.outline.entries()) {
      const radius = Math.hypot(p.x - 50, p.y - 180);
      expect(radius).toBeCloseTo(i < band.outline.length / 2 ? 32.7 : 27.3, 6);
    }
  });

  it('opens a berth towards where the robot faces', () => {
    const [start, finish] = picture(EMPTY_DRAWING).berths;
    const ahead = (berth: typeof start) =>
      berth!.bow.flat().map((p) => [p.x - berth!.at.x, p.y - berth!.at.y]);
    for (const [x] of ahead(start)) expect(x!).toBeGreaterThan(10);
    for (const [, y] of ahead(finish)) expect(y!).toBeGreaterThan(10);
    expect(Math.min(...start!.hull.map((p) => p.x))).toBe(35);
  });

  it('names a berth above, or below where the robot drives out upwards', () => {
    const up = { ...FULL_SHEET, start: { ...FULL_SHEET.start, heading: -Math.PI / 2 } };
    expect(picture(EMPTY_DRAWING).berths[0]!.label).toMatchObject({ baseline: 'bottom', text: 'Boathouse' });
    expect(picture(EMPTY_DRAWING, up).berths[0]!.label).toMatchObject({ baseline: 'top' });
  });

  it('takes names in the language of the page, or in English', () => {
    const { berths } = pictureOf({
      sheet: FULL_SHEET,
      kit: DEMO_KIT,
      layout: layOut(FULL_SHEET, EMPTY_DRAWING),
      language: 'es',
    });
    expect(berths.map((berth) => berth.label.text)).toEqual(['Cobertizo', 'Lighthouse']);
  });

  const area = (height: number, x = 100) => ({
    ...FULL_SHEET.areas[0]!,
    polygon: [
      { x, y: 35 - height / 2 },
      { x: x + 40, y: 35 - height / 2 },
      { x: x + 40, y: 35 + height / 2 },
      { x, y: 35 + height / 2 },
    ],
  });
  const through = {
    id: 'rail',
    width: 5,
    from: { x: 20, y: 35 },
    pieces: [{ to: { x: 280, y: 35 }, bulge: 0 }],
  };

  it('keeps the name of an area off given lines: inside where there is room, else outside', () => {
    const named = (height: number, lines: (typeof through)[]) => {
      const sheet = { ...FULL_SHEET, areas: [area(height)], given: { lines, marks: [] } };
      return picture(EMPTY_DRAWING, sheet).areas[0]!.label;
    };
    expect(named(40, [])).toMatchObject({ at: { x: 120, y: 35 }, baseline: 'middle' });
    expect(named(40, [through])).toMatchObject({ at: { x: 120, y: 22 }, baseline: 'middle' });
    expect(named(10, [through])).toMatchObject({ at: { x: 120, y: 27.5 }, baseline: 'bottom' });
  });

  it('keeps it off drawn lines once they stay, and out of the way of what drives there if it can', () => {
    const drawn = { lines: [through], marks: [] };
    const named = (height: number, still: boolean, driven = 0, row = 9) => {
      const sheet = { ...FULL_SHEET, areas: [area(height)] };
      const layout = layOut(sheet, drawn);
      return pictureOf({ sheet, kit: DEMO_KIT, layout, still, names: { row, driven } }).areas[0]!.label;
    };
    expect(named(40, false)).toMatchObject({ at: { y: 35 } });
    expect(named(40, true)).toMatchObject({ at: { y: 22 }, baseline: 'middle' });
    // 13 mm from the line is in the way of a robot 28 mm wide; above the area it stands 27 mm from it.
    expect(named(40, true, 14)).toMatchObject({ at: { y: 12.5 }, baseline: 'bottom' });
    // Nowhere is out of the way: off the line is what is left.
    expect(named(10, true, 30)).toMatchObject({ at: { y: 27.5 }, baseline: 'bottom' });
    // A row of 15 mm in the area is 10 mm from the line and needs 11; above is no room for it on the sheet.
    expect(named(40, true, 0, 15)).toMatchObject({ at: { y: 57.5 }, baseline: 'top' });
  });

  it('names a gate past its upper post, or past the lower one where a line runs over that', () => {
    // Its posts are at (150, 130) and (150, 170).
    const across = (y: number) => ({
      lines: [{ ...through, from: { x: 20, y }, pieces: [{ to: { x: 280, y }, bulge: 0 }] }],
      marks: [],
    });
    const named = (y: number) => {
      const layout = layOut(FULL_SHEET, across(y));
      return pictureOf({ sheet: FULL_SHEET, kit: DEMO_KIT, layout, still: true }).gates[0]!.label;
    };
    expect(named(150)).toMatchObject({ at: { x: 150, y: 127 }, baseline: 'bottom' });
    expect(named(125)).toMatchObject({ at: { x: 150, y: 173 }, baseline: 'top' });
  });

  it('keeps it on the sheet beside whose edge the area lies', () => {
    const sheet = { ...FULL_SHEET, areas: [{ ...area(40, 0), name: { en: 'Old ferry landing' } }] };
    // 17 letters, half a letter being 0.256 rows of 9 mm, to either side of the middle, and 2.5 mm of white.
    expect(picture(EMPTY_DRAWING, sheet).areas[0]!.label.at.x).toBeCloseTo(17 * 9 * 0.256 + 2.5, 9);
  });

  it('frames a box for marks, whole at its corners, and names it outside, off given lines', () => {
    const box = { id: 'b', name: { en: 'Marks' }, at: { x: 100, y: 60 }, w: 60, h: 16 };
    const boxed = (y: number, ...given: number[]) => {
      const lines = given.map((at) => ({
        id: `g${at}`,
        width: 5,
        from: { x: 20, y: at },
        pieces: [{ to: { x: 280, y: at }, bulge: 0 }],
      }));
      const boxes = [{ ...box, at: { x: 100, y } }];
      return picture(EMPTY_DRAWING, { ...FULL_SHEET, boxes, given: { lines, marks: [] } }).boxes[0]!;
    };
    const { polygon, angles } = boxed(60);
    expect(polygon.map(({ x, y }) => [x, y])).toEqual([
      [100, 60],
      [160, 60],
      [160, 76],
      [100, 76],
    ]);
    // 5 mm along a side, of the short ones a quarter.
    expect(angles[0]).toEqual([{ x: 105, y: 60 }, polygon[0], { x: 100, y: 64 }]);
    expect(angles[2]).toEqual([{ x: 155, y: 76 }, polygon[2], { x: 160, y: 72 }]);
    expect(boxed(60, 68).label).toEqual({
      text: 'Marks',
      at: { x: 106, y: 57.5 },
      align: 'left',
      baseline: 'bottom',
    });
    expect(boxed(60, 68, 52).label).toMatchObject({ at: { x: 106, y: 78.5 }, baseline: 'top' });
    expect(boxed(2, 8).label).toMatchObject({ at: { x: 106, y: 20.5 }, baseline: 'top' });
    expect(picture().boxes).toEqual([]);
    // Beside the start at (50, 150), whose name reaches from 14 to 86 mm over it; and two boxes side by side.
    const named = (...xs: number[]) => {
      const boxes = xs.map((x) => ({ ...box, id: `b${x}`, at: { x, y: 137 }, w: 30 }));
      const sheet = { ...FULL_SHEET, gates: [], boxes };
      return picture(EMPTY_DRAWING, sheet).boxes.map(({ label }) => label.baseline);
    };
    expect(named(70)).toEqual(['top']);
    expect(named(85)).toEqual(['bottom']);
    expect(named(85, 100)).toEqual(['bottom', 'top']);
  });

  it('tells given lines from drawn ones', () => {
    const sheet = { ...FULL_SHEET, given: { lines: [{ ...STRAIGHT.lines[0]!, id: 'g1' }], marks: [] } };
    expect(picture(STRAIGHT, sheet).strokes.map((stroke) => stroke.role)).toEqual(['given', 'line']);
  });
});

describe('svgOf', () => {
  it('writes straights and arcs as path data; a bend to the right sweeps clockwise', () => {
    const line = {
      ...STRAIGHT.lines[0]!,
      pieces: [
        { to: { x: 100, y: 150 }, bulge: 0 },
        { to: { x: 130, y: 180 }, bulge: Math.SQRT2 - 1 },
        { to: { x: 100, y: 150 }, bulge: -2 },
      ],
    };
    const { paths } = svgOf(picture({ lines: [line], marks: [] }));
    expect(paths.find((path) => path.role === 'line')?.d).toMatch(
      /^M50 150L100 150A30 30 0 0 1 130 180A26\.52 26\.52 0 1 0 100 150$/,
    );
  });

  it('makes one path of all bands of an ink, and leaves grid and hatch out unless asked', () => {
    const roles = svgOf(picture()).paths.map((path) => path.role);
    expect(roles).toEqual(['area', 'keep-out', 'gate', 'berth', 'bow', 'line', 'band', 'band']);
    const all = svgOf(picture(), { grid: true, hatch: true }).paths.map((path) => path.role);
    expect(all).toContain('grid-fine');
    expect(all).toContain('hatch');
  });
});
