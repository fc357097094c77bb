import { describe, expect, test } from 'vitest';
import { Answers, AnswersVerdict, NO_ANSWERS } from '../../../shared/documents/answers.ts';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { answerKey, judgeAnswers, questionsOf } from '../../../shared/judge/predict.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { answersOfRun, challengeOf, disturbedRuns, ofForty } from '../../disturbed.ts';

const keyOf = (name: string) => Object.fromEntries(answerKey(challengeOf(name)));
const answered = (answers: Record<string, string | number>): Answers => ({
  version: 1,
  answers: Object.entries(answers).map(([question, says]) => ({ question, says })),
});

/** By the chart, the sheet and common sense; written before the engine was asked. */
const BY_HAND: Record<string, Record<string, string | number>> = {
  // The line ends on the sandbank, 26 mm before the next one begins: a robot sees no further than its bar.
  'end-of-the-line': { 'end-start': 'area:sandbank' },
  // From the boathouse coral comes first (CA, faster: steady becomes brisk), from the lighthouse aqua
  // (AC, slower: steady becomes creep). Both have the mark behind them before pier and beach.
  'two-travellers': {
    'mark-start-mark': 'pace-by:1',
    'pace-start-pier': 'brisk',
    'mark-finish-mark': 'pace-by:-1',
    'pace-finish-beach': 'creep',
  },
  // The bracket C A … A C, met from its other end, is C A … A C again.
  'from-the-other-end': {
    'pace-start-pier': 'brisk',
    'mark-finish-lower': 'pace-by:-1',
    'mark-finish-upper': 'pace-by:1',
    'pace-finish-pier': 'brisk',
  },
  // Two ways on and never back: 1/2 each, of twenty robots ten.
  'no-mark-at-the-junction': { 'end-start': 'chance', 'many-start-berth:finish': 10 },
  // Eastward the mark reads A V (take left), and left is north: the lighthouse. Westward it reads V A
  // (take right), and right is north again: the bakery.
  'one-mark-two-junctions': {
    'mark-start-mark': 'choose:left',
    'end-start': 'area:lighthouse',
    'mark-finish-mark': 'choose:right',
    'end-finish': 'area:bakery',
  },
};

describe('answerKey', () => {
  test.each(Object.entries(BY_HAND))('%s: the engine answers as we do by hand', (name, byHand) => {
    expect(keyOf(name)).toEqual(byHand);
  });

  test.each(Object.keys(BY_HAND).filter((name) => name !== 'no-mark-at-the-junction'))(
    '%s: forty of forty disturbed robots answer like the undisturbed one',
    (name) => {
      const challenge = challengeOf(name);
      expect(ofForty(challenge)).toEqual(challenge.starts.map(() => 40));
    },
  );

  test('about half of many robots see the lighthouse, as chance has it', () => {
    const challenge = challengeOf('no-mark-at-the-junction');
    const ends = disturbedRuns(challenge, EMPTY_DESIGN, 'start').map((run) =>
      answersOfRun(challenge, run).get('end-start'),
    );
    expect(new Set(ends)).toEqual(new Set(['berth:finish', 'area:market']));
    // Of forty throws of a fair coin fewer than 10 or more than 30 come less than once in a thousand times.
    const there = ends.filter((end) => end === 'berth:finish').length;
    expect(there).toBeGreaterThan(9);
    expect(there).toBeLessThan(31);
  });

  test('three ways on, one of them to the finish: a third of twenty, to the nearest whole robot', () => {
    const crossing = challengeOf('rail-crossing');
    const place = { kind: 'berth', berth: 'finish' } as const;
    const asks: Challenge['asks'] = [
      { kind: 'how-many', start: 'start', place, of: 20 },
      { kind: 'how-many', start: 'start', place: { kind: 'area', area: 'quay' }, of: 60 },
    ];
    const key = answerKey({ ...crossing, play: 'predict', asks });
    expect([...key.values()]).toEqual([7, 20]);
  });

  test('a mark that the robot never meets is never read; an area that it never enters has no pace', () => {
    const ladder = challengeOf('one-mark-two-junctions');
    const [mark] = ladder.sheet.given.marks;
    const off = { ...mark!, id: 'off', line: 'west', at: 80 };
    const given = { ...ladder.sheet.given, marks: [mark!, off] };
    const asks: Challenge['asks'] = [
      { kind: 'marks', start: 'start' },
      { kind: 'pace', start: 'start', area: 'market' },
      { kind: 'pace', start: 'start', area: 'lighthouse' },
    ];
    const key = answerKey({ ...ladder, sheet: { ...ladder.sheet, given }, asks });
    expect([...key.values()]).toEqual(['choose:left', 'never', 'never', 'steady']);
  });

  // By the model's description no mark is read any more at a change of 0.8, and lines are still followed.
  test('in light that has changed since calibration marks are not read, and no pace is changed', () => {
    const light = { calibrated: 0.1, now: 0.9, tint: { red: 1, green: 1, blue: 1 } };
    expect(Object.fromEntries(answerKey({ ...challengeOf('two-travellers'), light }))).toEqual({
      'mark-start-mark': 'never',
      'pace-start-pier': 'steady',
      'mark-finish-mark': 'never',
      'pace-finish-beach': 'steady',
    });
  });

  test('an end outside every place is a lettered loose end where a line ends there', () => {
    const challenge = challengeOf('end-of-the-line');
    const sheet = { ...challenge.sheet, areas: [] };
    const [question] = questionsOf({ ...challenge, sheet });
    const loose = question?.kind === 'end' ? question.choices.filter((c) => c.kind === 'loose-end') : [];
    // From the top: where the far line begins, the two ends at y = 108 from the left, the market's end.
    expect(loose.map((c) => [c.key, Math.round(c.at.x), Math.round(c.at.y)])).toEqual([
      ['end:A', 164, 82],
      ['end:B', 164, 108],
      ['end:C', 196, 108],
      ['end:D', 246, 150],
    ]);
    expect([...answerKey({ ...challenge, sheet }).values()]).toEqual(['end:B']);
  });
});

describe('questionsOf', () => {
  test('a mark may do whatever the chart says, each action once, or never be read, or be left to chance', () => {
    const [question] = questionsOf(challengeOf('two-travellers'));
    const keys = question?.kind === 'mark' ? question.choices.map((choice) => choice.key) : [];
    expect(keys).toHaveLength(DEMO_KIT.chart.length + 2);
    expect(keys.slice(0, 3)).toEqual(['pace-by:1', 'pace-by:-1', 'choose:left']);
    expect(keys.slice(-2)).toEqual(['never', 'chance']);
  });

  test('a run may end in any berth or area, elsewhere, or by chance', () => {
    const [question] = questionsOf(challengeOf('end-of-the-line'));
    const keys = question?.kind === 'end' ? question.choices.map((choice) => choice.key) : [];
    const places = ['berth:start', 'berth:finish', 'area:sandbank', 'area:market'];
    // The far line begins on no place with a name.
    expect(keys).toEqual([...places, 'end:A', 'end:B', 'elsewhere', 'chance']);
  });

  test('the same challenge has the same questions with different ids', () => {
    for (const name of Object.keys(BY_HAND)) {
      const ids = questionsOf(challengeOf(name)).map((question) => question.id);
      expect(ids).toEqual(questionsOf(challengeOf(name)).map((question) => question.id));
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});

describe('judgeAnswers', () => {
  const name = 'two-travellers';
  const challenge = challengeOf(name);
  const right = BY_HAND[name]!;

  test('gives 100 times right answers over questions', () => {
    expect(judgeAnswers(challenge, answered(right))).toMatchObject({ right: 4, questions: 4, total: 100 });
    const three = answered({ ...right, 'pace-start-pier': 'fast' });
    expect(judgeAnswers(challenge, three)).toMatchObject({ right: 3, questions: 4, total: 75 });
    expect(judgeAnswers(challenge, NO_ANSWERS)).toMatchObject({ right: 0, questions: 4, total: 0 });
  });

  test('says which answers are right and never what the others should be', () => {
    const { lines } = judgeAnswers(
      challenge,
      answered({ 'pace-start-pier': 'creep', 'mark-start-mark': 'pace-by:1' }),
    );
    expect(lines).toEqual([
      { question: 'mark-start-mark', answered: true, right: true },
      { question: 'pace-start-pier', answered: true, right: false },
      { question: 'mark-finish-mark', answered: false, right: false },
      { question: 'pace-finish-beach', answered: false, right: false },
    ]);
  });

  test('of a robot from a finish berth that the sheet lacks nothing is asked, and nothing counts', () => {
    const { finish: _, ...sheet } = challenge.sheet;
    const without = { ...challenge, sheet };
    expect([...answerKey(without).keys()]).toEqual(['mark-start-mark', 'pace-start-pier']);
    expect(judgeAnswers(without, answered(right))).toMatchObject({ right: 2, questions: 2, total: 100 });
  });

  test('passes over answers that nobody asked for', () => {
    expect(judgeAnswers(challenge, answered({ ...right, 'end-start': 'chance' })).total).toBe(100);
  });

  test('answers and what is said of them are the same after writing and reading', () => {
    const answers = answered({ ...right, 'many-start-berth:finish': 10 });
    const again = parseDocument(Answers, JSON.parse(JSON.stringify(writeDocument(Answers, answers))));
    expect(again).toEqual({ ok: true, value: answers });
    const verdict = judgeAnswers(challenge, answers);
    const read = parseDocument(
      AnswersVerdict,
      JSON.parse(JSON.stringify(writeDocument(AnswersVerdict, verdict))),
    );
    expect(read).toEqual({ ok: true, value: verdict });
  });

  test('a drawing meets nothing where answers are asked for', () => {
    expect(judge(challenge, EMPTY_DESIGN, 'live').verdict).toMatchObject({ met: false, total: 0, goals: [] });
  });

  test('a question answered twice is refused', () => {
    const twice = {
      version: 1,
      answers: [
        { question: 'end-start', says: 'a' },
        { question: 'end-start', says: 'b' },
      ],
    };
    const parsed = parseDocument(Answers, twice);
    expect(!parsed.ok && parsed.problems.map((p) => p.code)).toEqual(['same-question-twice']);
  });
});
