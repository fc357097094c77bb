import { describe, expect, it } from 'vitest';
import { lineAt } from '../../../client/editor/hit.ts';
import { addRun, reverseLine } from '../../../client/editor/lines.ts';
import { pathOf, pointAt } from '../../../shared/geometry/path.ts';
import { contextOf, DRAW, drag, editorWith, GIVEN, lineThrough, tap } from './editor-setting.ts';

describe('straight', () => {
  it('tap, tap draws one straight on the grid', () => {
    const once = tap(editorWith('straight'), DRAW, [61, 101]).editor;
    expect(once.pending).toEqual({ x: 60, y: 100 });
    const { editor } = tap(once, DRAW, [121, 99]);
    expect(editor.design.drawing.lines).toEqual([
      { id: 'l1', width: 5, from: { x: 60, y: 100 }, pieces: [{ to: { x: 120, y: 100 }, bulge: 0 }] },
    ]);
    expect(editor.pending).toBeNull();
  });

  it('a pull from place to place draws it at once', () => {
    const { editor } = drag(editorWith('straight'), DRAW, [
      [60, 100],
      [90, 100],
      [120, 101],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces).toEqual([{ to: { x: 120, y: 100 }, bulge: 0 }]);
  });

  it('catches on 45 degrees', () => {
    const { editor } = drag(editorWith('straight'), DRAW, [
      [60, 100],
      [100, 143],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[0]!.to).toEqual({ x: 100, y: 140 });
  });

  it('catches on the middle of a berth', () => {
    const { editor } = drag(editorWith('straight'), DRAW, [
      [43, 157],
      [120, 160],
    ]);
    expect(editor.design.drawing.lines[0]!.from).toEqual({ x: 40, y: 160 });
  });

  it('goes on from the end of a line: one line, its marks in place', () => {
    const before = lineThrough([60, 100], [120, 100]);
    const { editor } = drag(editorWith('straight', before), DRAW, [
      [122, 101],
      [120, 150],
    ]);
    expect(editor.design.drawing.lines).toHaveLength(1);
    expect(editor.design.drawing.lines[0]!.pieces.map((piece) => piece.to)).toEqual([
      { x: 120, y: 100 },
      { x: 120, y: 150 },
    ]);
  });

  it('goes on before the beginning of a line and shifts its marks along', () => {
    const marked = drag(editorWith('mark', lineThrough([60, 100], [120, 100])), DRAW, [[90, 100]]).editor;
    const { editor } = drag({ ...marked, tool: 'straight' }, DRAW, [
      [60, 100],
      [60, 150],
    ]);
    const line = editor.design.drawing.lines[0]!;
    expect(line.from).toEqual({ x: 60, y: 150 });
    const mark = editor.design.drawing.marks[0]!;
    // 50 mm of new line stand before the place, which is 30 mm from the old beginning; two bands of 5.5.
    expect(mark.at).toBeCloseTo(50 + 30 - 5.5, 6);
  });

  it('ends on the side of a line without joining it', () => {
    const before = lineThrough([60, 100], [120, 100]);
    const { editor } = drag(editorWith('straight', before), DRAW, [
      [90, 150],
      [91, 102],
    ]);
    expect(editor.design.drawing.lines).toHaveLength(2);
    expect(editor.design.drawing.lines[1]!.pieces[0]!.to.y).toBe(100);
  });

  it('a third end at a place where two are joined makes a junction, no longer line', () => {
    const before = lineThrough([60, 100], [120, 100], [120, 150]);
    const { editor } = drag(editorWith('straight', before), DRAW, [
      [120, 100],
      [180, 100],
    ]);
    expect(editor.design.drawing.lines).toHaveLength(2);
  });

  it('a second tap on the first place lets go of it', () => {
    const once = tap(editorWith('straight'), DRAW, [60, 100]).editor;
    const { editor, refusal } = tap(once, DRAW, [61, 101]);
    expect(refusal).toBeNull();
    expect(editor.pending).toBeNull();
    expect(editor.design.drawing.lines).toEqual([]);
  });

  it('is refused where only marks may be placed', () => {
    const context = contextOf('fill-in', GIVEN);
    expect(
      drag(editorWith('straight'), context, [
        [60, 60],
        [120, 60],
      ]).refusal,
    ).toEqual({ code: 'only-marks' });
  });
});

describe('curve', () => {
  it('a straight pulled by its middle to a tenth of its chord bends by bulge 0.2', () => {
    // Bulge is sagitta over half chord: 10 / 50 (the open DXF convention).
    const before = lineThrough([60, 100], [160, 100]);
    const { editor } = drag(editorWith('curve', before), DRAW, [
      [110, 100],
      [110, 90],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[0]!.bulge).toBe(0.2);
    const path = pathOf(editor.design.drawing.lines[0]!);
    expect(pointAt(path, path.length / 2).y).toBeCloseTo(90, 6);
  });

  it('catches on the half circle', () => {
    const before = lineThrough([60, 100], [160, 100]);
    const { editor } = drag(editorWith('curve', before), DRAW, [
      [110, 100],
      [112, 149],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[0]!.bulge).toBe(-1);
  });

  it('pulled back to its chord it is straight again', () => {
    const bent = drag(editorWith('curve', lineThrough([60, 100], [160, 100])), DRAW, [
      [110, 100],
      [110, 80],
    ]);
    const { editor } = drag(bent.editor, DRAW, [
      [110, 80],
      [110, 101],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[0]!.bulge).toBe(0);
  });

  it('a corner pulled inwards becomes an arc that touches both legs', () => {
    const before = lineThrough([60, 100], [160, 100], [160, 190]);
    const { editor } = drag(editorWith('curve', before), DRAW, [
      [160, 100],
      [150, 110],
    ]);
    const path = pathOf(editor.design.drawing.lines[0]!);
    expect(path.pieces.map((piece) => piece.kind)).toEqual(['straight', 'arc', 'straight']);
    // A right angle pulled by d: radius d / (√2 − 1) = 34.1, taken down to the step of 5.
    expect(1 / path.pieces[1]!.curvature).toBeCloseTo(30, 1);
  });

  it('a given line is refused', () => {
    const { refusal } = drag(editorWith('curve'), contextOf('draw', GIVEN), [
      [100, 160],
      [100, 140],
    ]);
    expect(refusal).toEqual({ code: 'given' });
  });
});

describe('freehand', () => {
  const wave = Array.from({ length: 60 }, (_, i) => [60 + i * 2, 100 + 20 * Math.sin(i / 10)] as const);

  it('is fitted when the finger goes up, as one line', () => {
    const { editor } = drag(editorWith('freehand'), DRAW, wave);
    const lines = editor.design.drawing.lines;
    expect(lines).toHaveLength(1);
    expect(lines[0]!.pieces.length).toBeLessThan(12);
  });

  it('its end meets the end of a line that it came near, and joins it', () => {
    const before = lineThrough([200, 60], [54, 97]);
    const { editor } = drag(editorWith('freehand', before), DRAW, wave);
    expect(editor.design.drawing.lines).toHaveLength(1);
  });

  it('a tap draws nothing and says nothing', () => {
    const { editor, refusal } = tap(editorWith('freehand'), DRAW, [60, 60]);
    expect(editor.design.drawing.lines).toEqual([]);
    expect(refusal).toBeNull();
  });
});

describe('reverseLine', () => {
  it('twice is the line itself', () => {
    const line = { ...lineThrough([0, 0], [50, 0], [50, 50]).drawing.lines[0]! };
    const bent = { ...line, pieces: [line.pieces[0]!, { ...line.pieces[1]!, bulge: 0.5 }] };
    expect(reverseLine(reverseLine(bent))).toEqual(bent);
    expect(pathOf(reverseLine(bent)).length).toBeCloseTo(pathOf(bent).length, 9);
  });
});

describe('addRun', () => {
  it('two lines joined by a third keep every mark where it lies on the paper', () => {
    const two = {
      version: 1 as const,
      drawing: {
        lines: [
          { id: 'l1', width: 5, from: { x: 20, y: 50 }, pieces: [{ to: { x: 80, y: 50 }, bulge: 0 }] },
          { id: 'l2', width: 5, from: { x: 200, y: 50 }, pieces: [{ to: { x: 140, y: 50 }, bulge: 0 }] },
        ],
        marks: [
          {
            id: 'm1',
            line: 'l2',
            at: 10,
            bands: [
              { ink: 'C', length: 5.5, gap: 0 },
              { ink: 'A', length: 5.5, gap: 0.5 },
            ],
          },
        ],
      },
    };
    const joined = addRun(two, DRAW, { x: 80, y: 50 }, [{ to: { x: 140, y: 50 }, bulge: 0 }]);
    if (!joined.ok) throw new Error(joined.refusal.code);
    expect(joined.design.drawing.lines).toHaveLength(1);
    const line = joined.design.drawing.lines[0]!;
    const mark = joined.design.drawing.marks[0]!;
    // The first band began at x = 190 and the second ended at 178.5; seen from the other end they swap.
    expect(pointAt(pathOf(line), mark.at).x).toBeCloseTo(178.5, 6);
    expect(mark.bands.map((band) => band.ink)).toEqual(['A', 'C']);
    expect(mark.bands[1]!.gap).toBe(0.5);
  });
});

describe('hit', () => {
  it('finds an own line before a given one under it', () => {
    const own = lineThrough([40, 160], [200, 160]);
    expect(lineAt({ x: 100, y: 161 }, own, contextOf('draw', GIVEN), 8)).toMatchObject({
      line: 'l1',
      given: false,
    });
  });
});
