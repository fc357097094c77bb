import { describe, expect, it } from 'vitest';
import { begin, type Touch } from '../../../client/editor/gesture.ts';
import { hitAt } from '../../../client/editor/hit.ts';
import { type EditContext, openEditor } from '../../../client/editor/model.ts';
import { gentlerLines } from '../../../shared/library/gentler.ts';
import { challengeNamed } from '../../browser/room.ts';

/** In the gentler form the drawing begins with lines that are not the team's to change. */

const challenge = challengeNamed('one-fast-stretch');
const lines = gentlerLines(challenge)!;
const { from } = lines.drawing.lines[0]!;
const context = (play: 'draw' | 'fill-in'): EditContext => ({
  sheet: challenge.sheet,
  kit: challenge.kit,
  play,
  mostMarks: null,
  begin: lines,
});
const touch: Touch = { at: from, reach: 5, pixel: 0.3 };

describe('lines that a drawing begins with, where only marks are the team’s', () => {
  it('have no ends to take hold of, and are given', () => {
    expect(hitAt(from, lines, context('draw'), 5)).toMatchObject({ kind: 'node' });
    expect(hitAt(from, lines, context('fill-in'), 5)).toMatchObject({ kind: 'line', given: true });
  });

  it('are not moved by a pull, and take a mark where they are tapped', () => {
    const editor = { ...openEditor(lines, context('fill-in')), tool: 'move' as const };
    expect(begin(editor, context('fill-in'), touch)).toMatchObject({
      kind: 'nothing',
      refusal: { code: 'given' },
    });
    const marking = { ...editor, tool: 'mark' as const };
    expect(begin(marking, context('fill-in'), touch)).toMatchObject({ kind: 'place' });
  });
});
