import { describe, expect, it } from 'vitest';
import { asBuilt, blankChallenge } from '../../../../../client/desk/builder/blank.ts';
import { contextIn, designIn, layersOf, withDesign } from '../../../../../client/desk/builder/layers.ts';
import { Work } from '../../../../../client/desk/builder/work.ts';
import { Challenge } from '../../../../../shared/documents/challenge.ts';
import type { Design, Line, Mark } from '../../../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../../../shared/documents/values.ts';
import { checkChallenge } from '../../../../../shared/judge/check-challenge.ts';
import { DEMO_KIT } from '../../../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../../../shared/library/ready.ts';

const blank = blankChallenge('own-1', DEMO_KIT);
const line = (id: string, length: number, y = 105): Line => ({
  id,
  width: 5,
  from: { x: 40, y },
  pieces: [{ to: { x: 40 + length, y }, bulge: 0 }],
});
const mark = (id: string, on: string, at: number): Mark => ({
  id,
  line: on,
  at,
  bands: ['C', 'A'].map((ink) => ({ ink, length: 5.5, gap: 0 })),
});
const design = (lines: Line[], marks: Mark[] = []): Design => ({ version: 1, drawing: { lines, marks } });

describe('a new challenge', () => {
  it('is one that a file may hold, and says what is still missing', () => {
    expect(parseDocument(Challenge, writeDocument(Challenge, blank))).toEqual({ ok: true, value: blank });
    expect(checkChallenge(blank).map(({ code }) => code)).toEqual(['given-lines-missing', 'goals-missing']);
  });

  it('made of a ready one has goals by their numbers, and its par is worked out anew', () => {
    for (const one of readyChallenges(DEMO_KIT)) {
      if (!one.playable) continue;
      const built = asBuilt(one.challenge);
      expect([one.key, checkChallenge(built), built.par]).toEqual([one.key, [], undefined]);
      expect(built.goals.map(({ id }) => id)).toEqual(one.challenge.goals.map((_, i) => String(i + 1)));
    }
  });
});

describe('layers', () => {
  it('are what a way to play has', () => {
    expect((['draw', 'fill-in', 'mend', 'predict'] as const).map(layersOf)).toEqual([
      ['given', 'own'],
      ['given', 'own'],
      ['given', 'begin', 'own'],
      ['given'],
    ]);
  });

  it('give back what was drawn in them; an empty one is none', () => {
    const drawn = design([line('l1', 100)]);
    for (const layer of ['given', 'begin', 'own'] as const)
      expect(designIn(withDesign(blank, layer, drawn), layer)).toEqual(drawn);
    const emptied = withDesign(withDesign(blank, 'own', drawn), 'own', design([]));
    expect('model' in emptied).toBe(false);
  });

  it('let what is given be drawn as one’s own, and only marks where lines are given', () => {
    const given = withDesign(blank, 'given', design([line('l1', 100)]));
    expect(contextIn(given, 'given')).toMatchObject({ play: 'draw', sheet: { given: { lines: [] } } });
    expect(contextIn(given, 'own')).toMatchObject({ play: 'fill-in', sheet: given.sheet });
  });

  it('keep a solution to its lines: marks go with a line that has gone or become too short', () => {
    const given = withDesign(blank, 'given', design([line('l1', 100), line('l2', 100, 50)]));
    const solved = withDesign(given, 'own', design([], [mark('m1', 'l1', 60), mark('m2', 'l2', 60)]));
    const shorter = withDesign(solved, 'given', design([line('l1', 65)]));
    expect(shorter.model?.drawing.marks).toEqual([]);
    const longer = withDesign(solved, 'given', design([line('l1', 200)]));
    expect(longer.model?.drawing.marks.map(({ id }) => id)).toEqual(['m1']);
  });

  it('never have the same id twice, and marks stay on the line that they were drawn on', () => {
    const own = design([line('l1', 100)], [mark('m1', 'l1', 30)]);
    const solved = withDesign({ ...blank, play: 'draw' }, 'own', own);
    const { model, sheet } = withDesign(solved, 'given', design([line('l1', 80, 50)]));
    const { lines, marks } = model!.drawing;
    expect(lines[0]!.id).not.toBe(sheet.given.lines[0]!.id);
    expect([lines[0]!.from.y, marks[0]!.line]).toEqual([105, lines[0]!.id]);
  });
});

describe('the way back', () => {
  it('leads over every change, whoever made it, and forth again', () => {
    const work = new Work(blank);
    work.change({ ...blank, play: 'draw' });
    work.draw('own', design([line('l1', 100)]));
    expect(work.challenge.model?.drawing.lines.length).toBe(1);
    work.undo();
    expect([work.challenge.play, work.challenge.model]).toEqual(['draw', undefined]);
    work.undo();
    work.undo();
    expect(work.challenge).toBe(blank);
    work.redo();
    work.redo();
    expect(work.challenge.model?.drawing.lines.length).toBe(1);
    work.undo();
    work.change({ ...work.challenge, play: 'mend' });
    work.redo();
    expect(work.challenge.play).toBe('mend');
  });

  it('takes a text that is typed as one step, until it has been left', () => {
    const work = new Work(blank);
    for (const en of ['F', 'Fe', 'Fer']) work.change({ ...work.challenge, title: { en } }, 'title');
    work.settle();
    work.change({ ...work.challenge, title: { en: 'Ferry' } }, 'title');
    work.undo();
    expect(work.challenge.title).toEqual({ en: 'Fer' });
    work.undo();
    expect(work.challenge).toBe(blank);
  });

  it('begins pens anew after everything but a pen', () => {
    const work = new Work(blank);
    const at = () => work.store.getState().revision;
    work.draw('given', design([line('l1', 100)]));
    expect(at()).toBe(0);
    work.undo();
    work.change({ ...blank, play: 'mend' });
    expect(at()).toBe(2);
  });
});
