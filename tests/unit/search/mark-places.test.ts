import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Line } from '../../../shared/documents/design.ts';
import type { MarkBox } from '../../../shared/documents/sheet.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { findingsOnGiven } from '../../../shared/search/certainty.ts';
import { markPlaces } from '../../../shared/search/mark-places.ts';
import { parOf } from '../../../shared/search/par.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { SHEET } from '../rules/setting.ts';

const box = (x: number, y: number, w: number, h: number): MarkBox => ({
  id: `box-${x}-${y}`,
  name: { en: 'Marks' },
  at: { x, y },
  w,
  h,
});

describe('markPlaces', () => {
  const pier: Line = {
    id: 'pier',
    width: 5,
    from: { x: 40, y: 100 },
    pieces: [{ to: { x: 72.5, y: 100 }, bulge: 0 }],
  };
  const on = (length: number, ...boxes: MarkBox[]) => {
    const layout = layOut({ ...SHEET, given: { lines: [pier], marks: [] } }, { lines: [], marks: [] });
    return markPlaces(layout, boxes.length > 0 ? boxes : undefined)(0, length);
  };

  test('without boxes every 5 mm, as far as the mark stays on the line', () => {
    expect(on(11)).toEqual([0, 5, 10, 15, 20]);
    expect(on(12.5)).toEqual([0, 5, 10, 15, 20]);
    expect(on(40)).toEqual([]);
  });

  test('with boxes what lies in them, its ends included, and the middle where the grid steps over one', () => {
    expect(on(11, box(45, 90, 21, 20))).toEqual([5, 10, 15]);
    // Ways from 6 to 9 alone.
    expect(on(11, box(46, 90, 14, 20))).toEqual([7.5]);
    expect(on(11, box(41, 90, 13, 20), box(55, 90, 16.5, 20))).toEqual([2, 15, 20]);
    expect(on(11, box(45, 120, 21, 20))).toEqual([]);
  });
});

const ferry = readyChallenges(DEMO_KIT).find(({ key }) => key === 'ferry-junction')!;

describe('parOf on a sheet with boxes', () => {
  if (!ferry.playable) throw new Error('the demo kit takes left');
  /** The way leads from (42, 105) to its junction at (160, 105); the maker's mark stands 55 mm along. */
  const boxed = (...boxes: MarkBox[]): Challenge => ({
    ...ferry.challenge,
    sheet: { ...ferry.challenge.sheet, boxes },
  });

  test('a box round the only place is all that it takes', () => {
    const challenge = boxed(box(80, 95, 50, 20));
    const par = parOf(challenge);
    if (par.kind !== 'par') throw new Error(JSON.stringify(par));
    expect(par).toMatchObject({ cost: 20, proof: 'exhaustive' });
    const { at } = par.design.drawing.marks[0]!;
    expect([at >= 38, at <= 77]).toEqual([true, true]);
    expect(judge(challenge, par.design, 'entry').verdict).toMatchObject({ met: true, findings: [] });
  });

  test('a box that is narrower than the grid takes the mark in its middle', () => {
    // From 56 to 57 mm along.
    expect(parOf(boxed(box(98, 95, 12, 20)))).toMatchObject({
      cost: 20,
      design: { drawing: { marks: [{ line: 'way', at: 56.5 }] } },
    });
  });

  test('boxes beside all lines are the reason why nothing does it', () => {
    const why = [{ code: 'no-box' }];
    expect(parOf(boxed(box(20, 150, 60, 40)))).toMatchObject({ kind: 'impossible', why });
    // Half of the mark would stick out.
    expect(parOf(boxed(box(60, 105, 60, 40)))).toMatchObject({ kind: 'impossible', why });
  });

  test('a mark outside its box is never met, however well it drives', () => {
    const { verdict } = judge(boxed(box(20, 150, 60, 40)), ferry.challenge.model!, 'entry');
    expect(verdict.findings).toMatchObject([{ rule: 'R-mark-box', severity: 'stops' }]);
    expect([verdict.met, verdict.goals[0]!.met]).toEqual([false, true]);
  });

  test('given marks are no fault of the sheet', () => {
    const { given } = ferry.challenge.sheet;
    const marks = ferry.challenge.model!.drawing.marks;
    const challenge = boxed(box(20, 150, 60, 40));
    const sheet = { ...challenge.sheet, given: { ...given, marks } };
    expect(findingsOnGiven({ ...challenge, sheet }).map(({ rule }) => rule)).not.toContain('R-mark-box');
  });
});
