import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { costOf } from '../../../shared/points/cost.ts';
import { isAboutMarks } from '../../../shared/search/marks-problem.ts';
import { type ParResult, parOf } from '../../../shared/search/par.ts';

const challenges = readyChallenges(DEMO_KIT).flatMap((one) => (one.playable ? [one.challenge] : []));
const withKit = (id: string, kit: Kit): Challenge => {
  const one = readyChallenges(kit).find((ready) => ready.key === id);
  if (!one?.playable) throw new Error(`${id} can't be played`);
  return one.challenge;
};
const named = (id: string): Challenge => withKit(id, DEMO_KIT);

function found(result: ParResult): Extract<ParResult, { kind: 'par' }> {
  if (result.kind !== 'par') throw new Error(`no par: ${JSON.stringify(result)}`);
  return result;
}

/**
 * From below, by hand. A choice: an unmarked junction sends half of the robots the wrong way, so one mark.
 * The pier: one mark to be brisk and one to be steady again. Three calls: four junctions are passed, each
 * uses up one choice, and no mark is met twice on the way. The bakery: one mark to turn back, one to go on
 * at the junction; a way back without a third takes any arm. Painted: brisk, steady, park are three.
 */
const BY_HAND: Readonly<Record<string, number>> = {
  'park-on-the-landing': 1,
  'overlooked-mark': 1,
  'long-pier': 2,
  'painted-in-a-hurry': 3,
  'ferry-junction': 1,
  'rail-crossing': 1,
  'three-calls': 4,
  'late-choice': 1,
  'in-time-for-the-ferry': 1,
  'wait-at-the-landing': 1,
  'bakery-and-back': 3,
};

const aboutMarks = challenges.filter(isAboutMarks);

describe('parOf', () => {
  test.each(aboutMarks.map((c) => [c.id, c] as const))(
    '%s: the fewest marks, no more than the maker needs, and they do it',
    (id, challenge) => {
      const par = found(parOf(challenge));
      expect(par.proof).toBe('exhaustive');
      expect(par.cost).toBe(20 * (BY_HAND[id] ?? Number.NaN));
      expect(par.cost).toBeLessThanOrEqual(costOf(challenge.model!.drawing));
      expect(costOf(par.design.drawing)).toBe(par.cost);
      expect(challenge.par).toBe(par.cost);
      const { verdict } = judge(challenge, par.design, 'live');
      expect(verdict.met).toBe(true);
      expect(verdict.runs).toHaveLength(challenge.starts.length);
    },
  );

  test.each(challenges.filter((c) => c.play === 'draw').map((c) => [c.id, c] as const))(
    '%s: the cost of the maker’s design',
    (_, challenge) => {
      const par = found(parOf(challenge));
      expect(par).toMatchObject({ proof: 'model', design: challenge.model });
      // Files hold hundredths: kept upwards, so that the design itself has par.
      expect(challenge.par! - par.cost).toBeGreaterThanOrEqual(0);
      expect(challenge.par! - par.cost).toBeLessThan(0.01);
    },
  );

  test('a mend of lines: the cost of the maker’s design', () => {
    expect(found(parOf(named('sharp-corner'))).proof).toBe('model');
  });

  test('a goal about many robots is settled by driving them', () => {
    const landing = named('park-on-the-landing');
    const steady = { kind: 'steadiness', least: 0.95 } as const;
    const goals = [...landing.goals, { id: 'steady', formula: steady, must: true, weight: 1 }];
    const par = found(parOf({ ...landing, goals }));
    expect(par.cost).toBe(20);
    expect(judge({ ...landing, goals }, par.design, 'entry').verdict.met).toBe(true);
  });

  test('a predict has nothing to draw', () => {
    const predict = challenges.find((c) => c.play === 'predict')!;
    expect(parOf(predict)).toEqual({ kind: 'nothing-to-draw' });
  });

  test('equal challenges have equal results', () => {
    expect(parOf(named('long-pier'))).toEqual(parOf(named('long-pier')));
  });

  test('ends when it is told to', () => {
    let asked = 0;
    const result = parOf(named('three-calls'), { goOn: () => ++asked < 3 });
    expect(result.kind).toBe('cancelled');
    expect(asked).toBe(3);
  });

  test('with little to spend it falls back on the maker’s design', () => {
    expect(found(parOf(named('three-calls'), { most: 500 }))).toMatchObject({ cost: 80, proof: 'model' });
  });

  test('words come from the chart: another word for park is placed', () => {
    const chart = DEMO_KIT.chart.map((row) => (row.word === 'VAV' ? { ...row, word: 'CVC' } : row));
    const kit = { ...DEMO_KIT, chart: chart.filter((row) => row.action.kind !== 'signal') };
    const [mark] = found(parOf(withKit('park-on-the-landing', kit))).design.drawing.marks;
    expect(mark?.bands.map((band) => band.ink)).toEqual(['C', 'V', 'C']);
  });
});

describe('parOf, where nothing does it', () => {
  const pier = named('long-pier');
  const why = (challenge: Challenge) => {
    const result = parOf(challenge);
    return result.kind === 'impossible' ? result.why : result;
  };

  test('no line comes to the finish', () => {
    const finish = { ...pier.sheet.finish!, at: { x: 150, y: 190 } };
    expect(why({ ...pier, sheet: { ...pier.sheet, finish } })).toEqual([
      { code: 'out-of-reach', goal: 'finish', place: { en: 'Lighthouse', es: 'Faro' } },
    ]);
  });

  test('no line under a robot in the start berth', () => {
    const start = { ...pier.sheet.start, at: { x: 50, y: 30 } };
    expect(why({ ...pier, sheet: { ...pier.sheet, start } })).toEqual([{ code: 'no-start', berth: 'start' }]);
  });

  test('the chart has no mark for parking', () => {
    const landing = named('park-on-the-landing');
    const kit = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter((row) => row.action.kind !== 'park') };
    expect(why({ ...landing, kit })).toEqual([{ code: 'action-missing', goal: 'park', action: 'park' }]);
  });

  test('fewer marks are allowed than any drawing needs', () => {
    expect(why({ ...pier, limits: { ...pier.limits, marks: 1 } })).toEqual([
      { code: 'marks-needed', needed: 2, allowed: 1 },
    ]);
  });

  test('a stretch that is longer than the line', () => {
    // The whole line is 42 mm longer than from berth to berth and 682 mm long: 700 mm can't be brisk on it.
    const formula = { kind: 'stretches', pace: 'brisk', how: 'at-least', count: 1, length: 700 } as const;
    const goals = [{ id: 'long', formula, must: true, weight: 1 }];
    const found = why({ ...pier, goals, limits: { ...pier.limits, marks: 1 } });
    expect(found).toMatchObject([{ code: 'goal-never-met', goal: 'long', marks: 1, unit: 'mm' }]);
  });

  test('two goals that need different marks, and one mark', () => {
    // 637 mm from berth to rim at steady take 16 s. Brisk for 10 cm makes that shorter, 18 s ask for slower.
    const time = { kind: 'time', from: 18, to: 22 } as const;
    const brisk = { kind: 'stretches', pace: 'brisk', how: 'at-least', count: 1, length: 100 } as const;
    const goals = [
      { id: 'time', formula: time, must: true, weight: 1 },
      { id: 'brisk', formula: brisk, must: true, weight: 1 },
    ];
    const result = why({ ...pier, goals, limits: { ...pier.limits, marks: 1 } });
    expect(result).toEqual([{ code: 'goals-clash', goals: ['time', 'brisk'], marks: 1 }]);
  });
});
