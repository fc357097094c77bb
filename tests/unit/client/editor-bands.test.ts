import { describe, expect, it } from 'vitest';
import { bandHandles } from '../../../client/editor/bands.ts';
import type { Editor } from '../../../client/editor/model.ts';
import { wordOf } from '../../../shared/documents/design.ts';
import { contextOf, DRAW, drag, editorWith, GIVEN, lineThrough, tap } from './editor-setting.ts';

const line = lineThrough([40, 100], [240, 100]);
const painting = (ink: string | null, editor: Editor = editorWith('bands', line)): Editor => ({
  ...editor,
  tool: 'bands',
  ink,
});
/** Strokes along the line from x to x, one after the other. */
const strokes = (...all: readonly (readonly [string | null, number, number])[]): Editor =>
  all.reduce<Editor>(
    (editor, [ink, from, to]) =>
      drag(painting(ink, editor), DRAW, [
        [from, 101],
        [(from + to) / 2, 99],
        [to, 101],
      ]).editor,
    editorWith('bands', line),
  );
const marksOf = (editor: Editor) =>
  editor.design.drawing.marks.map((mark) => [
    wordOf(mark),
    mark.at,
    ...mark.bands.flatMap(({ gap, length }) => [gap, length]),
  ]);

describe('painting bands', () => {
  it('a stroke along a line is one band, from where it began to where it ended', () => {
    const editor = strokes(['C', 100, 107]);
    // The line begins at x 40.
    expect(marksOf(editor)).toEqual([['C', 60, 0, 7]]);
    expect(editor.selection).toEqual({ kind: 'mark', mark: 'm1' });
  });

  it('a band beside one becomes a mark with it, edge to edge where it came near', () => {
    expect(marksOf(strokes(['C', 100, 106], ['A', 107, 113]))).toEqual([['CA', 60, 0, 6, 0, 7]]);
    expect(marksOf(strokes(['C', 100, 106], ['A', 94, 99]))).toEqual([['AC', 54, 0, 6, 0, 6]]);
  });

  it('white between two bands stays as a gap, until they are marks apart', () => {
    expect(marksOf(strokes(['C', 100, 106], ['A', 110, 116]))).toEqual([['CA', 60, 0, 6, 4, 6]]);
    expect(marksOf(strokes(['C', 100, 106], ['A', 113, 119]))).toEqual([
      ['C', 60, 0, 6],
      ['A', 73, 0, 6],
    ]);
  });

  it('a band between two makes one mark of them', () => {
    const editor = strokes(['C', 100, 106], ['C', 113, 119], ['A', 107, 112]);
    expect(marksOf(editor)).toEqual([['CAC', 60, 0, 6, 0, 7, 0, 6]]);
  });

  it('ink over ink covers it', () => {
    expect(marksOf(strokes(['C', 100, 120], ['V', 106, 112]))).toEqual([['CVC', 60, 0, 6, 0, 6, 0, 8]]);
    expect(marksOf(strokes(['C', 100, 106], ['A', 99, 107]))).toEqual([['A', 60, 0, 6]]);
  });

  it('ink beside the same ink is one longer band', () => {
    expect(marksOf(strokes(['C', 100, 106], ['C', 106, 112]))).toEqual([['C', 60, 0, 12]]);
  });

  it('without ink it takes away what lies there', () => {
    expect(marksOf(strokes(['C', 100, 106], ['A', 106, 112], [null, 105, 113]))).toEqual([['C', 60, 0, 5]]);
    expect(marksOf(strokes(['C', 100, 106], [null, 98, 108]))).toEqual([]);
  });

  it('taps put bands of the kit’s own length side by side', () => {
    let editor = tap(painting('C'), DRAW, [100, 100]).editor;
    editor = tap(painting('A', editor), DRAW, [104, 100]).editor;
    editor = tap(painting('C', editor), DRAW, [110, 100]).editor;
    expect(marksOf(editor)).toEqual([['CAC', 57.25, 0, 5.5, 0, 5.5, 0, 5.5]]);
  });

  it('nothing catches while the hand wishes so', () => {
    const one = strokes(['C', 100, 106]);
    const points = [
      [107, 100],
      [113, 100],
    ] as const;
    const { editor } = drag(painting('A', one), DRAW, points, 8, { free: true });
    expect(marksOf(editor)).toEqual([['CA', 60, 0, 6, 1, 6]]);
  });

  it('beside every line nothing is painted', () => {
    expect(
      drag(painting('C'), DRAW, [
        [100, 30],
        [120, 30],
      ]).editor.design,
    ).toEqual(line);
  });

  it('one mark more than the limit is refused', () => {
    const context = contextOf('fill-in', GIVEN, 1);
    const one = drag(painting('C', editorWith('bands')), context, [
      [80, 160],
      [86, 160],
    ]).editor;
    expect(
      drag(painting('C', one), context, [
        [120, 160],
        [126, 160],
      ]).refusal,
    ).toEqual({ code: 'no-marks-left', most: 1 });
  });

  it('a ninth band in one mark is refused', () => {
    const all = Array.from({ length: 9 }, (_, i) => [i % 2 ? 'A' : 'C', 100 + 6 * i, 106 + 6 * i] as const);
    const editor = strokes(...all.slice(0, 8));
    expect(marksOf(editor)[0]![0]).toBe('CACACACA');
    const [ink, from, to] = all[8]!;
    expect(
      drag(painting(ink, editor), DRAW, [
        [from, 100],
        [to, 100],
      ]).refusal,
    ).toEqual({ code: 'too-many-bands' });
  });
});

describe('the ends of a chosen mark’s bands', () => {
  const chosen = () => strokes(['C', 100, 106], ['A', 106, 112]);
  const pulled = (end: number, by: number) => {
    const editor = { ...chosen(), tool: 'move' as const };
    const { at } = bandHandles(editor.design, DRAW, 'm1', 0.4)[end]!;
    return marksOf(
      drag(editor, DRAW, [
        [at.x, at.y],
        [at.x + by / 2, at.y],
        [at.x + by, at.y],
      ]).editor,
    );
  };

  it('stand beside the line by turns, one more than there are bands', () => {
    const handles = bandHandles(chosen().design, DRAW, 'm1', 0.4);
    // Half a line of 5 mm and 26 pixels of 0.4 mm.
    expect(handles.map(({ at }) => [at.x, at.y])).toEqual([
      [100, 100 - 12.9],
      [106, 100 + 12.9],
      [112, 100 - 12.9],
    ]);
  });

  it('the first one pulled out makes the first band longer and leaves the rest', () => {
    expect(pulled(0, -4)).toEqual([['CA', 56, 0, 10, 0, 6]]);
  });

  it('a middle one makes its band longer and pushes those after it', () => {
    expect(pulled(1, 4)).toEqual([['CA', 60, 0, 10, 0, 6]]);
  });

  it('no band gets shorter than 2 mm', () => {
    expect(pulled(2, -30)).toEqual([['CA', 60, 0, 6, 0, 2]]);
  });
});
