import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design, Drawing } from '../../../shared/documents/design.ts';
import { MISTAKEN_REASONS, TRUE_REASONS } from '../../../shared/documents/reason.ts';
import { reasonsFor } from '../../../shared/judge/because.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { fromOtherEnd, inStorm, isYes, type NextQuestion } from '../../../shared/judge/next-question.ts';
import { type Study, studyOf } from '../../../shared/judge/study.ts';
import { Pen } from '../../sweeps/pen.ts';
import { BANDS, FORK, fromStart, lighthouseAt, SHEET } from '../odds/tracks.ts';
import { challengeOn } from './setting.ts';

const challenge = challengeOn(FORK.sheet, 30);
const design = (drawing: Drawing): Design => ({ version: 1, drawing });

/** The newest pieces of a study, until there is what is looked for. */
function studied(on: Challenge, drawing: Drawing, until?: (study: Partial<Study>) => boolean) {
  let study: Partial<Study> = {};
  let steps = 0;
  for (const piece of studyOf(on, design(drawing))) {
    study = { ...study, ...piece };
    steps++;
    if (until?.(study)) break;
  }
  return { ...study, steps };
}

const withTroubles = ({ troubles }: Partial<Study>) => troubles !== undefined;
const withStorm = ({ next }: Partial<Study>) => next?.some(({ kind }) => kind === 'storm') ?? false;

const troubleOn = (drawing: Drawing, over: Partial<Challenge> = {}) =>
  studied(challenge(over), drawing, withTroubles).troubles?.[0];

describe('studyOf', () => {
  /** 21 mm of black before the mark, where the kit wants 25: some robots read it, some do not. */
  const close = fromStart().straight(70).turn(-90).straight(110).mark(92, 'CA', [5.5, 5.5]).drawing();
  const near = challenge({ sheet: lighthouseAt(100, 60), limits: { time: 12 } });

  test('drives 200 robots, the twenty of the verdict first, and says where they leave', () => {
    const { entry, frayed, bars, steps } = studied(near, close);
    const { verdict } = judge(near, design(close), 'entry');
    const { steadiness, runs } = verdict;
    expect(entry).toEqual(verdict);
    expect(bars).toHaveLength(runs.length);
    expect(steps).toBeGreaterThanOrEqual(200);
    const { of, same, interval, stretches } = frayed!;
    expect(of).toBe(200);
    expect(stretches.reduce((sum, stretch) => sum + stretch.left, 0)).toBe(of - same);
    expect(interval.high - interval.low).toBeLessThan(steadiness!.interval.high - steadiness!.interval.low);
    for (const { from, to, pieces } of stretches) {
      expect(pieces.length).toBeGreaterThan(0);
      expect(to - from).toBeLessThanOrEqual(20);
    }
  });

  test('of a design that is not judged there is none', () => {
    const marks = [{ id: 'm', line: 'gone', at: 10, bands: [{ ink: 'C', length: 5.5, gap: 0 }] }];
    expect(studied(near, { lines: [], marks })).toEqual({ steps: 0 });
  });
});

describe('troubles', () => {
  const sheet = lighthouseAt(340, 150);

  test('of a drawing that is met there are none', () => {
    expect(troubleOn(fromStart().straight(330).drawing(), { sheet })).toBeUndefined();
  });

  test('a berth without a line', () => {
    const drawing = new Pen().to(200, 40).straight(100).drawing();
    expect(troubleOn(drawing, { sheet })).toMatchObject({ reason: 'no-line-in-berth' });
  });

  test('a line that ends, where it ends', () => {
    // From the boathouse at (30, 150) 170 mm on: the line ends at x = 200.
    const trouble = troubleOn(fromStart().straight(170).drawing(), { sheet });
    expect(trouble?.reason).toBe('line-ends');
    expect(Math.abs(trouble!.at.x - 200)).toBeLessThan(20);
  });

  test('a corner of 25 degrees is taken for a junction, where there is none', () => {
    const drawing = fromStart().straight(170).turn(155).straight(120).drawing();
    const trouble = troubleOn(drawing, { sheet });
    expect(trouble?.reason).toBe('taken-for-junction');
    expect(Math.abs(trouble!.at.x - 200)).toBeLessThan(30);
  });

  test('a junction left to luck, at the junction', () => {
    const trouble = troubleOn(FORK.drawing);
    expect(trouble?.reason).toBe('left-to-luck');
    expect(Math.abs(trouble!.at.x - 160)).toBeLessThan(20);
  });

  test('a mark that says right where left is wanted: it only has to be turned round', () => {
    const marks = fromStart().mark(70, 'VA', BANDS).marks;
    const trouble = troubleOn({ ...FORK.drawing, marks });
    expect(trouble?.reason).toBe('met-from-behind');
    expect(Math.abs(trouble!.at.x - 111)).toBeLessThan(25);
  });

  test('a mark without enough plain line before it is overlooked', () => {
    // 12 mm of plain line after a corner, where 20 mm are never read (simulation rows).
    const drawing = fromStart().straight(70).turn(-90).straight(100).mark(82, 'VAV', BANDS).drawing();
    const wished = challenge({
      sheet: SHEET,
      goals: [{ id: 'g', formula: { kind: 'park' }, must: true, weight: 1 }],
    });
    const { reason } = studied(wished, drawing, withTroubles).troubles![0]!;
    expect(reason).toBe('mark-overlooked');
  });

  test('a word that the chart does not have', () => {
    const marks = fromStart().mark(70, 'CAV', BANDS).marks;
    const drawing = { ...fromStart().straight(170).drawing(), marks };
    expect(troubleOn(drawing, { sheet })).toMatchObject({ reason: 'mark-unknown' });
  });
});

describe('next questions', () => {
  const sheet = lighthouseAt(340, 150);
  const questions = (drawing: Drawing, over: Partial<Challenge> = {}) => {
    const all: NextQuestion[] = [...(studied(challenge({ sheet, ...over }), drawing, withStorm).next ?? [])];
    return Object.fromEntries(all.map((question) => [question.kind, question]));
  };

  test('a straight without marks: it drives from the other end too, and in a storm', () => {
    const drawing = fromStart().straight(320).drawing();
    // The robot leaves the lighthouse towards the boathouse.
    const over = { sheet: { ...sheet, finish: { ...sheet.finish!, heading: Math.PI } } };
    const asked = questions(drawing, over);
    expect(Object.keys(asked)).toEqual(['other-end', 'storm']);
    expect(asked['other-end']).toEqual({ kind: 'other-end', met: true });
    expect(isYes(asked.storm!)).toBe(true);
    const stormy = judge(inStorm(challenge(over)), design(drawing), 'entry').verdict.steadiness!;
    expect(asked.storm).toEqual({ kind: 'storm', same: stormy.same, of: stormy.of });
  });

  test('a mark that decides nothing is spare, the one that decides is not', () => {
    const fork = { ...FORK.drawing, marks: fromStart().mark(60, 'AV', BANDS).marks };
    expect(questions(fork, { sheet: FORK.sheet })['fewer-marks']).toEqual({
      kind: 'fewer-marks',
      spare: null,
    });
    const wait = fromStart().straight(320).mark(120, 'VCV', BANDS).drawing();
    expect(questions(wait)['fewer-marks']).toEqual({ kind: 'fewer-marks', spare: 'mark0' });
  });

  test('of a drawing that is not met there are none', () => {
    const past = studied(challenge(), FORK.drawing, ({ entry }) => entry !== undefined);
    const pieces = studyOf(challenge(), design(FORK.drawing));
    const following = Array.from({ length: past.steps + 2 }, () => pieces.next().value);
    expect(following.slice(past.steps)).toEqual([{}, {}]);
  });

  test('there is no other end where both are asked for, or none is there', () => {
    expect(fromOtherEnd(challenge({ starts: ['start', 'finish'] }))).toBeUndefined();
    expect(fromOtherEnd(challenge({ sheet: SHEET }))).toBeUndefined();
  });
});

describe('reasonsFor', () => {
  const marked = { ...FORK.drawing, marks: fromStart().mark(60, 'AV', BANDS).marks };

  test('the right one among two known mistakes, each once, in an order that turns with the run', () => {
    const hashes = Array.from({ length: 60 }, (_, i) => i.toString(16).padStart(8, '0'));
    const all = hashes.map((hash) => reasonsFor('line-lost', marked, hash));
    for (const { offered, right } of all) {
      expect(right).toBe('line-lost');
      expect(new Set(offered).size).toBe(3);
      expect(offered.filter((one) => TRUE_REASONS.some((reason) => reason === one))).toEqual(['line-lost']);
    }
    expect(new Set(all.map(({ offered }) => offered.indexOf('line-lost')))).toEqual(new Set([0, 1, 2]));
    expect(new Set(all.flatMap(({ offered }) => offered)).size).toBe(MISTAKEN_REASONS.length + 1);
  });

  test('the same run, the same reasons', () => {
    expect(reasonsFor('time-up', marked, 'deadbeef')).toEqual(reasonsFor('time-up', marked, 'deadbeef'));
  });

  test('no mistake about marks where nothing is marked', () => {
    const bare = fromStart().straight(100).drawing();
    const all = Array.from(
      { length: 40 },
      (_, i) => reasonsFor('line-ends', bare, i.toString(16)).offered,
    ).flat();
    for (const about of ['acts-at-once', 'same-from-both-sides', 'first-colour-counts', 'shortest-way']) {
      expect(all).not.toContain(about);
    }
  });
});
