import { describe, expect, it } from 'vitest';
import { readingNotes } from '../../../client/canvas/reading-notes.ts';
import type { Action } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { lineThrough, SHEET } from './editor-setting.ts';

const view = { scale: 2, left: 0, top: 0 };
const nameOf = (action: Action | undefined) =>
  action?.kind === 'choose' ? action.way : (action?.kind ?? '?');

function notesOf(
  word: string,
  clear: readonly { px: number; py: number }[] = [],
  chosen: string | null = null,
) {
  const { drawing } = lineThrough([60, 100], [160, 100]);
  const bands = [...word].map((ink) => ({ ink, length: 5.5, gap: 0 }));
  const marks = [{ id: 'm1', line: 'l1', at: 40, bands }];
  const layout = layOut(SHEET, { ...drawing, marks });
  return readingNotes({ layout, kit: DEMO_KIT, view, clear, nameOf, size: 16, chosen });
}

describe('readingNotes', () => {
  it('says on the right of each traveller what the mark is for it', () => {
    const [there, back] = notesOf('AV');
    // Half a line of 5 mm and 9 pixels at 2 pixels a millimetre: 7 mm beside the middle.
    expect(there).toMatchObject({
      at: { x: 105.5, y: 107 },
      along: { x: 1, y: 0 },
      text: { said: 'left' },
    });
    expect(back!.at).toEqual({ x: 105.5, y: 93 });
    expect(back!.along.x).toBe(-1);
    expect(back!.text).toMatchObject({ said: 'right' });
  });

  it('stands past the handles of a chosen mark', () => {
    // The arrow is at 214 pixels; its words are 8 and half a letter of 16 further, and 20 more past handles.
    expect(notesOf('AV')[0]!.text!.at.py).toBe(230);
    expect(notesOf('AV', [], 'm1')[0]!.text!.at.py).toBe(250);
    expect(notesOf('AV', [], 'm1')[0]!.at).toEqual(notesOf('AV')[0]!.at);
  });

  it('says once what is the same from both sides', () => {
    expect(notesOf('VAV').map((note) => note.text?.said)).toEqual(['park', undefined]);
  });

  it('says of a word that the chart lacks that it is none', () => {
    expect(notesOf('CV').map((note) => note.text?.said)).toEqual(['nothing', 'turn-back']);
    expect(notesOf('CAV').map((note) => note.text?.said)).toEqual(['?', undefined]);
  });

  it('leaves words out that would cover something, and never an arrow', () => {
    const ink = { px: 211, py: 230 };
    const notes = notesOf('VC', [ink]);
    expect(notes).toHaveLength(2);
    expect(notes.map((note) => note.text?.said)).toEqual([undefined, 'nothing']);
  });
});
