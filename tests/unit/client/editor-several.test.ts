import { describe, expect, it } from 'vitest';
import { chooseAll, copyChosen, moveChosen, nudge, rubChosen } from '../../../client/editor/keys.ts';
import type { Editor } from '../../../client/editor/model.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { pathOf, pointAt } from '../../../shared/geometry/path.ts';
import { contextOf, DRAW, drag, editorWith, GIVEN, lineThrough, tap } from './editor-setting.ts';

/** Two lines apart, the first with a mark. */
const two = (): Design => ({
  version: 1,
  drawing: {
    lines: [
      { id: 'l1', width: 5, from: { x: 60, y: 60 }, pieces: [{ to: { x: 120, y: 60 }, bulge: 0 }] },
      { id: 'l2', width: 5, from: { x: 60, y: 100 }, pieces: [{ to: { x: 100, y: 100 }, bulge: 0.4 }] },
    ],
    marks: [
      {
        id: 'm1',
        line: 'l1',
        at: 20,
        bands: [
          { ink: 'C', length: 5.5, gap: 0 },
          { ink: 'A', length: 5.5, gap: 0 },
        ],
      },
    ],
  },
});

const both = (): Editor =>
  drag(editorWith('move', two()), DRAW, [
    [50, 45],
    [140, 120],
  ]).editor;

describe('choosing several', () => {
  it('a box chooses the lines that lie mostly in it', () => {
    expect(both().selection).toEqual({ kind: 'several', lines: ['l1', 'l2'], marks: [] });
    const one = drag(editorWith('move', two()), DRAW, [
      [50, 45],
      [95, 75],
    ]).editor;
    expect(one.selection).toEqual({ kind: 'line', line: 'l1' });
  });

  it('a tap adds a line to several and takes it away, a tap beside lets go', () => {
    const less = tap(both(), DRAW, [110, 60]).editor;
    expect(less.selection).toEqual({ kind: 'line', line: 'l2' });
    const again = drag(less, DRAW, [[108, 60]], 8, { adds: true }).editor;
    expect(again.selection).toMatchObject({ kind: 'several', lines: ['l2', 'l1'] });
    expect(tap(again, DRAW, [200, 180]).editor.selection).toBeNull();
  });

  it('where the lines are given a box chooses marks only', () => {
    const context = contextOf('fill-in', GIVEN);
    const marked = tap({ ...editorWith('mark'), word: 'CA' }, context, [100, 160]).editor;
    const boxed = drag({ ...marked, tool: 'move' }, context, [
      [80, 130],
      [120, 190],
    ]).editor;
    expect(boxed.selection).toEqual({ kind: 'several', lines: [], marks: ['m1'] });
    expect(chooseAll(marked, context)).toEqual(boxed.selection);
    expect(nudge(boxed, context, 5, 3).editor.design.drawing.marks[0]!.at).toBe(
      marked.design.drawing.marks[0]!.at + 5,
    );
  });
});

describe('what is chosen', () => {
  it('moves together by a pull on one of it, in steps of the grid; marks ride along', () => {
    const { editor } = drag(both(), DRAW, [
      [110, 60],
      [121, 69],
    ]);
    const { lines, marks } = editor.design.drawing;
    expect(lines.map((line) => line.from)).toEqual([
      { x: 70, y: 70 },
      { x: 70, y: 110 },
    ]);
    expect(marks).toEqual(two().drawing.marks);
    expect(editor.selection).toEqual(both().selection);
  });

  it('a quarter turn about its middle keeps lengths and bends', () => {
    const { editor } = moveChosen(both(), DRAW, { turned: Math.PI / 2 });
    const [a, b] = editor.design.drawing.lines;
    // The box runs from 60 to 120 and from 60 to 100; its middle is (90, 80).
    expect(a!.from.x).toBeCloseTo(90 + 20, 6);
    expect(a!.from.y).toBeCloseTo(80 - 30, 6);
    expect(pathOf(a!).length).toBeCloseTo(60, 6);
    expect(b!.pieces[0]!.bulge).toBe(0.4);
  });

  it('mirrored twice it is what it was, and once it bends to the other side', () => {
    const once = moveChosen(both(), DRAW, { mirrored: true }).editor;
    expect(once.design.drawing.lines[0]!.from).toEqual({ x: 120, y: 60 });
    expect(once.design.drawing.lines[1]!.pieces[0]!.bulge).toBe(-0.4);
    expect(moveChosen(once, DRAW, { mirrored: true }).editor.design).toEqual(two());
  });

  it('a copy lies beside it with marks of its own, and is chosen', () => {
    const { editor } = copyChosen(both(), DRAW);
    const { lines, marks } = editor.design.drawing;
    expect(lines.map((line) => line.id)).toEqual(['l1', 'l2', 'l3', 'l4']);
    expect(lines[2]!.from).toEqual({ x: 70, y: 70 });
    expect(marks[1]).toEqual({ ...two().drawing.marks[0]!, id: 'm2', line: 'l3' });
    expect(editor.selection).toMatchObject({ lines: ['l3', 'l4'] });
  });

  it('a copy with more marks than there may be is refused', () => {
    expect(copyChosen(both(), { ...DRAW, mostMarks: 1 }).refusal).toEqual({ code: 'no-marks-left', most: 1 });
  });

  it('is rubbed out with all that is on it', () => {
    expect(rubChosen(both(), DRAW).editor.design.drawing).toEqual({ lines: [], marks: [] });
  });

  it('turns by its handle in steps of five degrees', () => {
    // The handle stands 34 pixels of 0.4 mm above the box's top, over the middle.
    const { editor } = drag(both(), DRAW, [
      [90, 60 - 13.6],
      [90 + 33.6, 80],
    ]);
    expect(editor.design.drawing.lines[0]!.from.x).toBeCloseTo(90 + 20, 1);
  });
});

describe('lines whose ends are brought together', () => {
  it('become one line when an end is pulled onto another', () => {
    const { editor } = drag(editorWith('move', two()), DRAW, [
      [100, 100],
      [105, 80],
      [119, 61],
    ]);
    const { lines, marks } = editor.design.drawing;
    expect(lines).toHaveLength(1);
    const mark = marks[0]!;
    const path = pathOf(lines.find((line) => line.id === mark.line)!);
    expect(pointAt(path, mark.at + 5.5).x).toBeCloseTo(85.5, 6);
    expect(editor.selection).toMatchObject({ kind: 'node' });
  });

  it('become one when a whole line is moved so that an end meets another', () => {
    const { editor } = drag(editorWith('move', two()), DRAW, [
      [110, 60],
      [111, 98],
    ]);
    expect(editor.design.drawing.lines).toHaveLength(1);
  });

  it('stay two while the hand wishes that nothing catches', () => {
    const points = [
      [100, 100],
      [119, 61],
    ] as const;
    const { editor } = drag(editorWith('move', two()), DRAW, points, 8, { free: true });
    expect(editor.design.drawing.lines).toHaveLength(2);
    expect(editor.design.drawing.lines[1]!.pieces[0]!.to).toEqual({ x: 119, y: 61 });
  });
});

describe('an arc', () => {
  it('is bent by its middle with the tool that moves', () => {
    // The middle of l2 lies 0.4 × 20 mm above its chord: a positive bulge bows to the left of travel.
    const path = pathOf(two().drawing.lines[1]!);
    const { x, y } = pointAt(path, path.length / 2);
    const { editor } = drag(editorWith('move', lineOnly()), DRAW, [
      [x, y],
      [x, y - 6],
      [x, 100 - 14],
    ]);
    const { bulge } = editor.design.drawing.lines[0]!.pieces[0]!;
    expect(bulge < 0 ? -bulge : bulge).toBeCloseTo(14 / 20, 6);
  });

  const lineOnly = (): Design => ({
    version: 1,
    drawing: { lines: [two().drawing.lines[1]!], marks: [] },
  });
});

describe('directions that catch', () => {
  it('straight on from the end of a slanting line', () => {
    const before = lineThrough([60, 60], [120, 90]);
    const { editor } = drag(editorWith('straight', before), DRAW, [
      [120, 90],
      [181, 119],
    ]);
    const [, to] = editor.design.drawing.lines[0]!.pieces.map((piece) => piece.to);
    // Along (2, 1)/√5 in steps of 5 mm.
    expect((to!.x - 120) / (to!.y - 90)).toBeCloseTo(2, 2);
    expect(pathOf(editor.design.drawing.lines[0]!).length - Math.hypot(60, 30)).toBeCloseTo(70, 1);
  });

  it('beside a slanting line', () => {
    const before = lineThrough([60, 60], [120, 90]);
    const { editor } = drag(editorWith('straight', before), DRAW, [
      [60, 120],
      [120, 151],
    ]);
    const line = editor.design.drawing.lines[1]!;
    const to = line.pieces[0]!.to;
    expect((to.x - line.from.x) / (to.y - line.from.y)).toBeCloseTo(2, 2);
  });

  it('nothing catches while the hand wishes so', () => {
    const { editor } = drag(
      editorWith('straight'),
      DRAW,
      [
        [61.3, 99.2],
        [121.7, 100.9],
      ],
      8,
      { free: true },
    );
    expect(editor.design.drawing.lines[0]).toMatchObject({
      from: { x: 61.3, y: 99.2 },
      pieces: [{ to: { x: 121.7, y: 100.9 } }],
    });
  });
});
