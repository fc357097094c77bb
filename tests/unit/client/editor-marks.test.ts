import { describe, expect, it } from 'vitest';
import { flipChosen, nudge, rubChosen } from '../../../client/editor/keys.ts';
import { EMPTY_DESIGN, wordOf } from '../../../shared/documents/design.ts';
import { contextOf, DRAW, drag, editorWith, GIVEN, lineThrough, tap } from './editor-setting.ts';

const FILL_IN = contextOf('fill-in', GIVEN, 2);
const marking = (word: string) => ({ ...editorWith('mark'), word });
const placed = () => tap(marking('CA'), FILL_IN, [100, 163]).editor;

describe('mark', () => {
  it('a tap on a given line places the word in the tray, chosen at once', () => {
    const editor = placed();
    expect(editor.design.drawing.marks).toEqual([
      {
        id: 'm1',
        line: 'g1',
        at: 54.5,
        bands: [
          { ink: 'C', length: 5.5, gap: 0 },
          { ink: 'A', length: 5.5, gap: 0 },
        ],
      },
    ]);
    expect(editor.selection).toEqual({ kind: 'mark', mark: 'm1' });
  });

  it('reads as in the tray for a robot from the start, whichever way the line was drawn', () => {
    const drawnBack = lineThrough([200, 100], [45, 160]);
    const { editor } = tap({ ...editorWith('mark', drawnBack), word: 'CA' }, DRAW, [150, 120]);
    expect(wordOf(editor.design.drawing.marks[0]!)).toBe('AC');
  });

  it('slides along its line by the finger', () => {
    const { editor } = drag(placed(), FILL_IN, [
      [100, 160],
      [120, 160],
      [130, 165],
    ]);
    expect(editor.design.drawing.marks[0]!.at).toBe(84.5);
  });

  it('slides no further than the end of its line', () => {
    const { editor } = drag(placed(), FILL_IN, [
      [100, 160],
      [290, 160],
    ]);
    expect(editor.design.drawing.marks[0]!.at).toBe(160 - 11);
  });

  it('a second tap flips it in its place', () => {
    const { editor } = tap(placed(), FILL_IN, [100, 160]);
    expect(wordOf(editor.design.drawing.marks[0]!)).toBe('AC');
    expect(editor.design.drawing.marks[0]!.at).toBe(54.5);
  });

  it('flip twice is the mark itself', () => {
    const once = flipChosen(placed()).editor;
    expect(flipChosen(once).editor.design).toEqual(placed().design);
  });

  it('one more than the limit is refused with the limit', () => {
    const two = tap(placed(), FILL_IN, [150, 160]).editor;
    expect(two.design.drawing.marks).toHaveLength(2);
    expect(tap(two, FILL_IN, [180, 160]).refusal).toEqual({ code: 'no-marks-left', most: 2 });
  });

  it('a tap beside every line does nothing', () => {
    const { editor, refusal } = tap(marking('CA'), FILL_IN, [100, 60]);
    expect(editor.design).toEqual(EMPTY_DESIGN);
    expect(refusal).toBeNull();
  });

  it('does not fit on a line shorter than itself', () => {
    const short = lineThrough([60, 60], [70, 60]);
    expect(tap({ ...editorWith('mark', short), word: 'CAC' }, DRAW, [65, 60]).refusal).toEqual({
      code: 'line-too-short-for-mark',
    });
  });
});

describe('move', () => {
  const corner = lineThrough([60, 100], [160, 100], [160, 180]);

  it('a corner goes where it is pulled; a mark on the other piece stays in place', () => {
    const marked = tap({ ...editorWith('mark', corner), word: 'CA' }, DRAW, [100, 100]).editor;
    const { editor } = drag({ ...marked, tool: 'move' }, DRAW, [
      [160, 180],
      [200, 180],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[1]!.to).toEqual({ x: 200, y: 180 });
    expect(editor.design.drawing.marks[0]!.at).toBe(marked.design.drawing.marks[0]!.at);
  });

  it('ends of two lines in one place move together', () => {
    const star = drag(editorWith('straight', corner), DRAW, [
      [160, 100],
      [220, 100],
    ]).editor;
    const { editor } = drag({ ...star, tool: 'move' }, DRAW, [
      [160, 100],
      [180, 120],
    ]);
    expect(editor.design.drawing.lines[0]!.pieces[0]!.to).toEqual({ x: 180, y: 120 });
    expect(editor.design.drawing.lines[1]!.from).toEqual({ x: 180, y: 120 });
  });

  it('a line taken by its middle moves as a whole, in steps of the grid', () => {
    const { editor } = drag(editorWith('move', corner), DRAW, [
      [110, 100],
      [121, 89],
    ]);
    expect(editor.design.drawing.lines[0]!.from).toEqual({ x: 70, y: 90 });
  });

  it('arrow keys nudge what is chosen by the millimetre', () => {
    const chosen = tap(editorWith('move', corner), DRAW, [160, 180]).editor;
    expect(chosen.selection).toEqual({ kind: 'node', line: 'l1', node: 2 });
    const { editor } = nudge(chosen, DRAW, 1, 0);
    expect(editor.design.drawing.lines[0]!.pieces[1]!.to).toEqual({ x: 161, y: 180 });
    expect(editor.selection).toEqual(chosen.selection);
  });

  it('a given line stays where it is', () => {
    const { refusal } = drag(editorWith('move'), contextOf('draw', GIVEN), [
      [100, 160],
      [100, 120],
    ]);
    expect(refusal).toEqual({ code: 'given' });
  });
});

describe('rub out', () => {
  const three = lineThrough([60, 100], [120, 100], [120, 150], [200, 150]);

  it('a tap takes the piece between two corners and leaves the others', () => {
    const { editor } = tap(editorWith('rub', three), DRAW, [120, 125]);
    const lines = editor.design.drawing.lines;
    expect(lines.map((line) => [line.from, line.pieces.at(-1)!.to])).toEqual([
      [
        { x: 60, y: 100 },
        { x: 120, y: 100 },
      ],
      [
        { x: 120, y: 150 },
        { x: 200, y: 150 },
      ],
    ]);
  });

  it('marks on what is left stay where they are, others go with their piece', () => {
    let editor = tap({ ...editorWith('mark', three), word: 'CA' }, DRAW, [120, 125]).editor;
    editor = tap({ ...editor, word: 'AV' }, DRAW, [160, 150]).editor;
    editor = tap({ ...editor, tool: 'rub' }, DRAW, [120, 110]).editor;
    const { lines, marks } = editor.design.drawing;
    expect(marks).toHaveLength(1);
    expect(marks[0]).toMatchObject({ line: lines[1]!.id, at: 40 - 5.5 });
  });

  it('a mark under the finger goes before its line', () => {
    const marked = tap({ ...editorWith('mark', three), word: 'CA' }, DRAW, [90, 100]).editor;
    const { editor } = tap({ ...marked, tool: 'rub' }, DRAW, [90, 101]);
    expect(editor.design.drawing.marks).toEqual([]);
    expect(editor.design.drawing.lines).toHaveLength(1);
  });

  it('set to whole lines, it takes the line', () => {
    const { editor } = tap({ ...editorWith('rub', three), rub: 'line' }, DRAW, [120, 125]);
    expect(editor.design.drawing.lines).toEqual([]);
  });

  it('cuts a line where another one crosses it', () => {
    const crossed = drag(editorWith('straight', lineThrough([60, 100], [180, 100])), DRAW, [
      [120, 150],
      [120, 50],
    ]).editor;
    const { editor } = tap({ ...crossed, tool: 'rub' }, DRAW, [150, 100]);
    const [main, other] = editor.design.drawing.lines.map((line) => [line.from, line.pieces.at(-1)!.to]);
    expect([main, other]).toContainEqual([
      { x: 60, y: 100 },
      { x: 120, y: 100 },
    ]);
    expect([main, other]).toContainEqual([
      { x: 120, y: 150 },
      { x: 120, y: 50 },
    ]);
  });

  it('cuts a line where another one ends on it', () => {
    const branched = drag(editorWith('straight', lineThrough([60, 100], [180, 100])), DRAW, [
      [120, 150],
      [120, 101],
    ]).editor;
    const { editor } = tap({ ...branched, tool: 'rub' }, DRAW, [150, 100]);
    const main = editor.design.drawing.lines.find((line) => line.id === 'l1')!;
    expect(main.pieces.at(-1)!.to).toEqual({ x: 120, y: 100 });
  });

  it('one rub over several things is one step back', () => {
    const marked = tap({ ...editorWith('mark', three), word: 'CA' }, DRAW, [90, 100]).editor;
    const { editor } = drag({ ...marked, tool: 'rub' }, DRAW, [
      [90, 100],
      [110, 100],
      [120, 120],
    ]);
    expect(editor.past?.design).toEqual(marked.design);
  });

  it('delete takes the chosen mark', () => {
    const marked = tap({ ...editorWith('mark', three), word: 'CA' }, DRAW, [90, 100]).editor;
    expect(rubChosen(marked, DRAW).editor.design.drawing.marks).toEqual([]);
  });
});
