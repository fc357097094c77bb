import { describe, expect, test } from 'vitest';
import type { Impossibility } from '../../../shared/documents/par.ts';
import { wording } from '../../../shared/wording/wording.ts';

const { par } = wording('en');

const CASES: readonly (readonly [Impossibility, RegExp])[] = [
  [{ code: 'no-start', berth: 'start' }, /out of the start berth/],
  [{ code: 'out-of-reach', goal: 'g', place: { en: 'Lighthouse' } }, /no line leads to Lighthouse/],
  [{ code: 'no-box' }, /no box lies over a line/],
  [{ code: 'action-missing', goal: 'g', action: 'park' }, /needs parking/],
  [{ code: 'marks-needed', needed: 2, allowed: 1 }, /two marks at least, and one mark may/],
  [{ code: 'goal-never-met', goal: 'g', marks: 3, margin: -120, unit: 'mm' }, /three marks .* lacks 12 cm/],
  [{ code: 'goals-clash', goals: ['a', 'b'], marks: 1 }, /one mark no drawing meets “a” and “b”/],
  [{ code: 'goals-clash', goals: ['a'], marks: 0 }, /^Goal “a”: without a mark no drawing/],
  [{ code: 'never-steady', marks: 2, driven: 12 }, /^12 drawings/],
];

describe('why nothing meets a challenge', () => {
  test.each(CASES)('%o is said in words', (why, words) => expect(par.impossible(why)).toMatch(words));
});
