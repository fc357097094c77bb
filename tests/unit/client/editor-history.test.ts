import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redo, startAgain, undo } from '../../../client/editor/history.ts';
import {
  chooseAll,
  copyChosen,
  flipChosen,
  moveChosen,
  nudge,
  rubChosen,
} from '../../../client/editor/keys.ts';
import { type Editor, TOOLS } from '../../../client/editor/model.ts';
import { Design, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import '../../seed.ts';
import { DRAW, drag, editorWith, lineThrough } from './editor-setting.ts';

const point = fc.tuple(fc.integer({ min: 5, max: 290 }), fc.integer({ min: 5, max: 205 }));
const action = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      tool: fc.constantFrom(...TOOLS),
      word: fc.constantFrom('CA', 'VAV', 'AV'),
      ink: fc.constantFrom('C', 'A', 'V', null),
      free: fc.boolean(),
      adds: fc.boolean(),
      rub: fc.constantFrom('piece' as const, 'line' as const),
      points: fc.array(point, { minLength: 1, maxLength: 5 }),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      'flip' as const,
      'nudge' as const,
      'delete' as const,
      'again' as const,
      'all' as const,
      'turn' as const,
      'mirror' as const,
      'copy' as const,
    ),
  },
);

function act(editor: Editor, what: typeof action extends fc.Arbitrary<infer T> ? T : never): Editor {
  if (what === 'flip') return flipChosen(editor).editor;
  if (what === 'nudge') return nudge(editor, DRAW, 1, 0).editor;
  if (what === 'delete') return rubChosen(editor, DRAW).editor;
  if (what === 'again') return startAgain(editor, DRAW);
  if (what === 'all') return { ...editor, selection: chooseAll(editor, DRAW) };
  if (what === 'turn') return moveChosen(editor, DRAW, { turned: 0.7 }).editor;
  if (what === 'mirror') return moveChosen(editor, DRAW, { mirrored: true }).editor;
  if (what === 'copy') return copyChosen(editor, DRAW).editor;
  const { points, free, adds, ...rest } = what;
  return drag({ ...editor, ...rest, pending: null }, DRAW, points, 8, { free, adds }).editor;
}

const bytes = (editor: Editor) => JSON.stringify(writeDocument(Design, editor.design));

function all(editor: Editor, step: (e: Editor) => Editor, more: (e: Editor) => unknown): Editor {
  let now = editor;
  while (more(now)) now = step(now);
  return now;
}

describe('undo and redo', () => {
  it.each([
    ['the empty sheet', EMPTY_DESIGN],
    ['the drawing that it began with', lineThrough([60, 100], [160, 100], [160, 180])],
  ])('undo all gives %s, redo all the same bytes', (_, begin) => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 25 }), (actions) => {
        const done = actions.reduce(act, editorWith('straight', begin));
        const back = all(done, undo, (editor) => editor.past);
        expect(bytes(back)).toBe(JSON.stringify(writeDocument(Design, begin)));
        const again = all(back, redo, (editor) => editor.future);
        expect(bytes(again)).toBe(bytes(done));
      }),
      { numRuns: 60 },
    );
  });

  it('every drawing that can be reached reads back as it was written', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const { design } = actions.reduce(act, editorWith('straight'));
        expect(parseDocument(Design, writeDocument(Design, design))).toEqual({ ok: true, value: design });
      }),
      { numRuns: 60 },
    );
  });

  it('start again leads back to the beginning and can be taken back', () => {
    const drawn = drag(editorWith('straight'), DRAW, [
      [60, 100],
      [120, 100],
    ]).editor;
    const empty = startAgain(drawn, DRAW);
    expect(empty.design).toEqual(EMPTY_DESIGN);
    expect(undo(empty).design).toEqual(drawn.design);
  });

  it('an edit after undo forgets the way forward', () => {
    const drawn = drag(editorWith('straight'), DRAW, [
      [60, 100],
      [120, 100],
    ]).editor;
    const other = drag(undo(drawn), DRAW, [
      [60, 50],
      [120, 50],
    ]).editor;
    expect(other.future).toBeNull();
  });

  it('what changes nothing makes no step', () => {
    const drawn = drag(editorWith('straight'), DRAW, [
      [60, 100],
      [120, 100],
    ]).editor;
    expect(
      drag({ ...drawn, tool: 'move' }, DRAW, [
        [90, 100],
        [91, 100],
      ]).editor.past,
    ).toBe(drawn.past);
  });
});
