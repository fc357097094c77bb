import { describe, expect, test } from 'vitest';
import { type Challenge, VARIANTS, type Variant } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { actionOf, type Kit } from '../../../shared/documents/kit.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { answerKey } from '../../../shared/judge/predict.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { challengeIn, designIn, designOn, variantOf } from '../../../shared/library/variants.ts';
import { challengeOf, ofForty } from '../../disturbed.ts';

const challenges = readyChallenges(DEMO_KIT).flatMap((one) => (one.playable ? [one.challenge] : []));
const cases = challenges.flatMap((challenge) =>
  VARIANTS.map((variant) => [challenge.id, variant, challenge] as const),
);
const sure = (challenge: Challenge, variant: Variant): Challenge => {
  const found = variantOf(challenge, variant);
  if (!found) throw new Error('the demo chart has a word for either side');
  return found;
};
const words = (design: Design | undefined) =>
  design?.drawing.marks.map((mark) => mark.bands.map((band) => band.ink).join(''));

describe('variantOf', () => {
  test.each(cases)('%s, %s: sound, with the same goals, limits and questions', (_, variant, challenge) => {
    const other = sure(challenge, variant);
    expect(checkChallenge(other)).toEqual([]);
    const { id, sheet, begin, model, sentence, mirroredSentence, ...rest } = challenge;
    expect(other).toMatchObject(rest);
    expect(other.sheet.w).toBe(sheet.w);
  });

  test.each(cases.filter(([, , { play }]) => play !== 'predict'))(
    '%s, %s: the maker’s design does there as it does here',
    (_, variant, challenge) => {
      const [here, there] = [challenge, sure(challenge, variant)].map((one) =>
        judge(one, one.model!, 'live'),
      );
      expect(there!.verdict.findings).toEqual([]);
      expect(there!.verdict.met).toBe(true);
      const reached = (runs: typeof here) => runs!.verdict.goals.map((one) => [one.id, one.met]);
      expect(reached(there)).toEqual(reached(here));
      const told = (runs: typeof here) => runs!.verdict.runs.map((run) => run.readings.map((r) => r.mark));
      expect(told(there)).toEqual(told(here));
      // The mirrored robot makes the same steps; numbers of the drawing are rounded to 0.01 mm.
      const times = (runs: typeof here) => runs!.verdict.runs.map((run) => run.duration);
      for (const [i, time] of times(there).entries())
        expect(Math.abs(time - times(here)[i]!)).toBeLessThan(0.05);
    },
  );

  test.each(cases.filter(([, , { play }]) => play === 'predict'))(
    '%s, %s: the questions have the same answers, but for left and right in a mirror',
    (_, variant, challenge) => {
      const swap = (says: string | number) =>
        says === 'choose:left' ? 'choose:right' : says === 'choose:right' ? 'choose:left' : says;
      const key = [...answerKey(challenge)].map(([id, says]) => [
        id,
        variant === 'mirrored' ? swap(says) : says,
      ]);
      expect([...answerKey(sure(challenge, variant))]).toEqual(key);
    },
  );

  test.each(cases)('%s, %s: twice is the challenge again', (_, variant, challenge) => {
    const twice = sure(sure(challenge, variant), variant);
    const points = ({ sheet, model, begin }: Challenge) =>
      [sheet.given, model?.drawing, begin?.drawing].flatMap((drawing) =>
        (drawing?.lines ?? []).flatMap((line) => [line.from, ...line.pieces.map((piece) => piece.to)]),
      );
    expect(points(twice)).toEqual(points(challenge));
    expect(twice.sheet.start.at).toEqual(challenge.sheet.start.at);
    expect(Math.cos(twice.sheet.start.heading - challenge.sheet.start.heading)).toBeCloseTo(1, 9);
    expect([twice.sentence, words(twice.model)]).toEqual([challenge.sentence, words(challenge.model)]);
  });

  test('boxes for marks lie where they lay in the mirror, and are turned with the sheet', () => {
    const ferry = challengeOf('ferry-junction');
    const box = { id: 'a', name: { en: 'Marks' }, at: { x: 80, y: 95 }, w: 50.25, h: 20 };
    const boxed = { ...ferry, sheet: { ...ferry.sheet, boxes: [box] } };
    // The sheet is 297 × 210 mm.
    expect(sure(boxed, 'mirrored').sheet.boxes).toEqual([{ ...box, at: { x: 166.75, y: 95 } }]);
    expect(sure(boxed, 'turned').sheet.boxes).toEqual([{ ...box, at: { x: 166.75, y: 95 } }]);
    const low = { ...box, at: { x: 80, y: 20 } };
    expect(sure({ ...ferry, sheet: { ...ferry.sheet, boxes: [low] } }, 'turned').sheet.boxes).toEqual([
      { ...box, at: { x: 166.75, y: 170 } },
    ]);
    for (const variant of VARIANTS) {
      expect(sure(sure(boxed, variant), variant).sheet.boxes).toEqual([box]);
      expect('boxes' in sure(ferry, variant).sheet).toBe(false);
    }
  });

  test('a sentence that says left says right in the mirror, and left when turned', () => {
    const junction = challengeOf('ferry-junction');
    expect(sure(junction, 'mirrored').sentence.en).toBe('Take the right way at the ferry junction.');
    expect(sure(junction, 'turned').sentence).toEqual(junction.sentence);
  });

  test('no sentence says left or right without another one for its mirror', () => {
    for (const { sentence, mirroredSentence } of challenges) {
      if (/\b(left|right)\b/.test(sentence.en)) expect(mirroredSentence).toBeDefined();
    }
  });
});

describe('marks in a mirror', () => {
  test('left and right change words; every other mark keeps its word; all keep place and side', () => {
    const errands = challengeOf('three-calls');
    expect(words(errands.model)).toEqual(['ACA', 'AV', 'AV', 'ACA']);
    const mirrored = sure(errands, 'mirrored');
    expect(words(mirrored.model)).toEqual(['ACA', 'VA', 'VA', 'ACA']);
    const places = (c: Challenge) => c.model!.drawing.marks.map(({ line, at }) => [line, at]);
    expect(places(mirrored)).toEqual(places(errands));
    const bakery = challengeOf('bakery-and-back');
    // Turning back is met along the line, in the mirror as before it.
    expect(words(sure(bakery, 'mirrored').model)?.at(-1)).toBe(words(bakery.model)?.at(-1));
  });

  test('bands painted in a hurry stay as they were painted', () => {
    const hurry = challengeOf('painted-in-a-hurry');
    const painted = (c: Challenge) =>
      c.begin!.drawing.marks.map((mark) => mark.bands.map((b) => [b.length, b.gap]));
    expect(painted(sure(hurry, 'mirrored'))).toEqual(painted(hurry));
  });

  test('a chart that says left in a one-way word and right in none has no mirrored junction', () => {
    const chart = DEMO_KIT.chart.map((row) =>
      row.word === 'VA' ? { ...row, action: { kind: 'nothing' } as const } : row,
    );
    const kit: Kit = { ...DEMO_KIT, chart };
    const junction = readyChallenges(kit).find((one) => one.key === 'ferry-junction');
    if (!junction?.playable) throw new Error('taking left is all that the junction needs');
    expect(variantOf(junction.challenge, 'mirrored')).toBeUndefined();
    expect(variantOf(junction.challenge, 'turned')).toBeDefined();
    // Nor is any other sheet mirrored, and teams, who are not told the maker's design, come to the same.
    const { model, ...told } = junction.challenge;
    expect(challengeIn('mirrored', junction.challenge)).toBe(junction.challenge);
    expect(challengeIn('mirrored', told)).toBe(told);
    expect(challengeIn('turned', told)).toEqual(variantOf(told, 'turned'));
  });

  test('a word whose mirror word has another meaning from behind is not taken for it', () => {
    const chart = [
      ...DEMO_KIT.chart.filter((row) => row.word !== 'AV' && row.word !== 'VA'),
      { word: 'AV', action: { kind: 'choose', way: 'left' } as const },
      { word: 'VA', action: { kind: 'nothing' } as const },
      { word: 'CAV', action: { kind: 'choose', way: 'right' } as const },
      { word: 'VAC', action: { kind: 'nothing' } as const },
    ];
    const kit: Kit = { ...DEMO_KIT, chart };
    const challenge = { ...challengeOf('ferry-junction'), kit };
    const left = challengeOf('ferry-junction').model!;
    expect(actionOf(kit, words(left)![0]!)).toEqual({ kind: 'choose', way: 'left' });
    // Two bands say left, and only three say right: the mark can't keep its bands.
    expect(designIn('mirrored', challenge, left)).toBeUndefined();
  });
});

describe('a drawing copied from the table with the other sheet', () => {
  // Tried before on another program of the same model: 14 of 40 with copied marks, 40 of 40 with swapped ones.
  test.each(['ferry-junction', 'three-calls'])(
    '%s: marks copied as they are fail in most runs, swapped ones in none',
    (key) => {
      const challenge = challengeOf(key);
      const mirrored = sure(challenge, 'mirrored');
      const [copied] = ofForty(mirrored, challenge.model);
      expect(copied).toBeLessThanOrEqual(14);
      expect(ofForty(mirrored, designIn('mirrored', challenge, challenge.model!))).toEqual([40]);
    },
  );

  test.each([
    ['first-line', 'mirrored'],
    ['one-fast-stretch', 'mirrored'],
    ['one-fast-stretch', 'turned'],
  ] as const)('%s, %s: lines copied as they are lead nobody anywhere', (key, variant) => {
    const challenge = challengeOf(key);
    expect(ofForty(sure(challenge, variant), challenge.model)).toEqual([0]);
  });
});

describe('designOn', () => {
  const challenge = challengeOf('ferry-junction');
  const model = challenge.model!;
  const on = (to: Variant | null) => (to === null ? model : designIn(to, challenge, model)!);
  const sheets = [null, ...VARIANTS];

  test.each(sheets.flatMap((from) => sheets.map((to) => [from, to] as const)))(
    'a drawing on %s becomes that on %s, and the way back leads to the same',
    (from, to) => {
      const there = designOn(from, to, challenge, on(from));
      expect(there).toEqual(on(to));
      expect(designOn(to, from, challenge, there)).toEqual(on(from));
    },
  );

  test('stays as it is where the kit’s chart has no sheets in a mirror', () => {
    const chart = DEMO_KIT.chart.filter(({ word }) => word !== 'VA');
    const kit: Kit = { ...DEMO_KIT, chart };
    expect(challengeIn('mirrored', { ...challenge, kit }).sheet).toBe(challenge.sheet);
    expect(designOn(null, 'mirrored', { ...challenge, kit }, model)).toBe(model);
  });
});
