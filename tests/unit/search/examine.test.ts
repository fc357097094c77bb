import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN, wordOf } from '../../../shared/documents/design.ts';
import { reversed } from '../../../shared/documents/kit.ts';
import type { Misread } from '../../../shared/documents/misread.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { difficultyOf } from '../../../shared/search/difficulty.ts';
import { type Examined, examine } from '../../../shared/search/examine.ts';
import { misreadOf } from '../../../shared/search/misread.ts';

const named = (key: string): Challenge => {
  const found = readyChallenges(DEMO_KIT).find((one) => one.key === key);
  if (!found?.playable) throw new Error(`no challenge is called ${key}`);
  return found.challenge;
};

const examined = (challenge: Challenge): { steps: string[]; all: Partial<Examined> } => {
  const pieces = [...examine(challenge)];
  return { steps: pieces.flatMap(Object.keys), all: Object.assign({}, ...pieces) as Partial<Examined> };
};

describe('examine', () => {
  test('says step by step that a ready challenge can be met, at what cost, and how hard it is', () => {
    const { steps, all } = examined(named('ferry-junction'));
    expect(steps.slice(0, 4)).toEqual(['problems', 'own', 'par', 'difficulty']);
    expect(all.problems).toEqual([]);
    expect(all.own).toEqual({ met: true, steady: true });
    expect(all.par).toMatchObject({ kind: 'par', cost: 20, proof: 'exhaustive' });
    // One mark that takes left from one side and right from the other: two points for it, one for its sides.
    expect(all.difficulty).toMatchObject({ marks: 1, sided: 1, score: 3 });
    expect(all.misread?.map(({ misreading }) => misreading)).toEqual([
      'sides-swapped',
      'acts-at-once',
      'ink-mistaken',
    ]);
  });

  test('of a challenge that can’t be played says why, and looks no further', () => {
    const { steps, all } = examined({ ...named('ferry-junction'), goals: [] });
    expect([steps, all.problems?.map(({ code }) => code)]).toEqual([['problems'], ['goals-missing']]);
  });

  test('of one that can’t be met gives the proof, and no difficulty', () => {
    const challenge = named('ferry-junction');
    const { model: _, ...open } = challenge;
    const { steps, all } = examined({ ...open, limits: { ...open.limits, marks: 0 } });
    expect(all.par?.kind).toBe('impossible');
    expect(steps).toEqual(['problems', 'par']);
  });

  test('says of the maker’s own drawing whether it does', () => {
    const { all } = examined({ ...named('first-line'), model: EMPTY_DESIGN });
    expect([all.own?.met, all.par?.kind]).toEqual([false, 'open']);
  });

  test('has nothing to search where the team answers questions', () => {
    expect(examined(named('two-travellers')).all.par).toEqual({ kind: 'nothing-to-draw' });
  });
});

const known = new Map<string, ReadonlyMap<string, Misread>>();
/** Worked out once a challenge. */
const misread = (key: string): ReadonlyMap<string, Misread> => {
  const challenge = named(key);
  const found =
    known.get(key) ??
    new Map([...misreadOf(challenge, challenge.model!)].map((one) => [one.misreading, one] as const));
  known.set(key, found);
  return found;
};
const words = ({ drawing }: Design): string[] => drawing.marks.map(wordOf);

describe('misreadOf', () => {
  test('left taken for right shows in a run; what reads the same from both sides does not', () => {
    expect(misread('ferry-junction').get('sides-swapped')).toMatchObject({ met: false });
    expect(misread('rail-crossing').get('sides-swapped')).toMatchObject({ met: true });
  });

  test('a drawing of somebody who misreads does what is wanted with the marks as they are believed to be', () => {
    const challenge = named('ferry-junction');
    const found = misread('ferry-junction').get('sides-swapped')!;
    const chart = DEMO_KIT.chart.map((row) => ({ ...row, word: reversed(row.word) }));
    const believed = { ...challenge, kit: { ...DEMO_KIT, chart } };
    expect(judge(believed, found.design!, 'live').verdict.met).toBe(true);
  });

  test('where lines are drawn too, the maker’s marks stand for what is believed', () => {
    const own = words(named('one-fast-stretch').model!);
    expect(words(misread('one-fast-stretch').get('sides-swapped')!.design!)).toEqual(own.map(reversed));
    expect(misread('one-fast-stretch').has('acts-at-once')).toBe(false);
  });

  test('the ink that is mistaken is the one most like another', () => {
    const challenge = named('one-fast-stretch');
    const colours = ['#FF0000', '#00FF00', '#FE0101'];
    const inks = DEMO_KIT.inks.map((ink, i) => ({ ...ink, color: colours[i]! }));
    const found = [...misreadOf({ ...challenge, kit: { ...challenge.kit, inks } }, challenge.model!)];
    expect(found.find((one) => one.misreading === 'ink-mistaken')?.inks).toEqual([inks[0]!.id, inks[2]!.id]);
  });
});

test('difficultyOf counts marks, readings that depend on the side, what is to spare, and the search', () => {
  const challenge = named('long-pier');
  // Faster and slower, each one thing from this side and the other from that; about 15 mm to spare.
  const { slack, ...counted } = difficultyOf(challenge, challenge.model!, 12);
  expect(counted).toEqual({ marks: 2, sided: 2, searched: 12, score: 6 });
  expect(slack).toBeGreaterThan(1);
});
