import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Formula } from '../../../shared/documents/formula.ts';
import type { Steadiness, Stray } from '../../../shared/documents/outlook.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { type Finding, Verdict } from '../../../shared/documents/verdict.ts';
import { type JudgeStep, judge, judging } from '../../../shared/judge/judge.ts';
import { settleSeverities } from '../../../shared/judge/severity.ts';
import { at, run, samplesAt } from '../goals/hand-made.ts';
import { FORK, fromStart, lighthouseAt } from '../odds/tracks.ts';
import { challengeOn } from './setting.ts';

const challenge = challengeOn(FORK.sheet, 30);
const design: Design = { version: 1, drawing: FORK.drawing };
const wishing = (formula: Formula, over: Partial<Challenge> = {}) =>
  challenge({ goals: [{ id: 'g', formula, must: true, weight: 1 }], ...over });

describe('an entry', () => {
  const { verdict } = judge(challenge(), design, 'entry');

  test('has odds from each berth and the robots of calm weather', () => {
    expect(verdict.odds).toMatchObject([{ start: 'start', basis: 'track', finish: 0.5, endless: 0 }]);
    expect(verdict.steadiness).toMatchObject({ weather: 'calm', same: 20, of: 20 });
  });

  test('is the same after writing and reading', () => {
    const file: unknown = JSON.parse(JSON.stringify(writeDocument(Verdict, verdict)));
    expect(parseDocument(Verdict, file)).toEqual({ ok: true, value: verdict });
  });

  test('of the live level has neither', () => {
    const live = judge(challenge(), design, 'live').verdict;
    expect(live).not.toHaveProperty('odds');
    expect(live).not.toHaveProperty('steadiness');
    expect(live.runs).toEqual(verdict.runs);
  });

  test('is driven in the weather and the light that the challenge says', () => {
    const light = { calibrated: 0.1, now: 1.6, tint: { red: 1, green: 1, blue: 1 } };
    const stormy = judge(challenge({ weather: 'stormy' }), design, 'entry').verdict;
    expect(stormy.steadiness?.weather).toBe('stormy');
    // By the model's description readings are spoilt from 0.6 of change on, and a mark decides nothing any more.
    const marked: Design = {
      version: 1,
      drawing: { ...FORK.drawing, marks: fromStart().mark(50, 'AV', [5.5, 5.5]).marks },
    };
    expect(judge(challenge(), marked, 'live').verdict.runs).toHaveLength(1);
    expect(judge(challenge({ light }), marked, 'live').verdict.runs.length).not.toBe(1);
  });
});

describe('judging step by step', () => {
  test('stops between steps, also between robots, and says where it is', () => {
    const steps: JudgeStep[] = [];
    const work = judging(challenge(), design, 'entry');
    for (let next = work.next(); !next.done; next = work.next()) steps.push(next.value);
    expect(steps.slice(0, 4)).toEqual(['ink', 'runs', 'rules', 'odds']);
    expect(steps.slice(4)).toEqual(new Array(20).fill('robot'));
  });

  test('comes to the same verdict as all at once', () => {
    const work = judging(challenge(), design, 'live');
    let next = work.next();
    while (!next.done) next = work.next();
    expect(next.value).toEqual(judge(challenge(), design, 'live'));
  });
});

describe('goals over what is found out for entries', () => {
  const sure = wishing({ kind: 'steadiness', least: 0.95 });

  test('steadiness is open while drawing, and counts in an entry', () => {
    const live = judge(sure, design, 'live').verdict;
    expect(live.goals).toMatchObject([{ met: false, open: true }]);
    // What is open keeps nothing from being met so far.
    expect(live.met).toBe(true);
    const entry = judge(sure, design, 'entry').verdict;
    expect(entry.goals).toMatchObject([{ met: true, margin: 0.05, unit: 'ratio', by: 'steadiness' }]);
  });

  test('nothing left to chance is told while drawing', () => {
    const decided = wishing({ kind: 'decided' });
    expect(judge(decided, design, 'live').verdict.goals).toMatchObject([
      { met: false, margin: -1, unit: 'count', by: 'decided' },
    ]);
    const straight: Design = { version: 1, drawing: fromStart().straight(200).drawing() };
    const plain = { ...decided, sheet: lighthouseAt(220, 150) };
    expect(judge(plain, straight, 'live').verdict.goals).toMatchObject([{ met: true, margin: 0 }]);
  });
});

describe('severity of an entry', () => {
  const corner: Finding = {
    id: 'R-corner',
    rule: 'R-corner',
    severity: 'may-stop',
    place: { kind: 'point', at: { x: 100, y: 100 } },
  };
  const mark: Finding = {
    ...corner,
    rule: 'R-before-mark',
    place: { kind: 'mark', at: { x: 100, y: 100 }, mark: 'first' },
  };
  const end = at.end('finished', { x: 200, y: 100 });
  const passing = run([at.read('first'), end], { samples: samplesAt([{ x: 90, y: 100, count: 3 }]) });
  const elsewhere = run([end], { samples: samplesAt([{ x: 300, y: 100, count: 3 }]) });
  const stray = (cause: Stray['cause'], x: number, named?: string): Stray => ({
    seed: 1,
    start: 'start',
    cause,
    at: { x, y: 100 },
    ...(named === undefined ? {} : { mark: named }),
  });
  const settled = (finding: Finding, strays: readonly Stray[], trace = passing) => {
    const same = 20 - strays.length;
    const interval = { low: 0, high: 1 };
    const steadiness: Steadiness = { weather: 'calm', same, of: 20, interval, strays: [...strays] };
    return settleSeverities([finding], [trace], steadiness)[0]!.severity;
  };

  test('two robots of twenty that stray nearby make it "may stop", one makes it untidy', () => {
    const untidy: Finding = { ...corner, severity: 'untidy' };
    expect(settled(untidy, [stray('lost', 110), stray('other-branch', 95)])).toBe('may-stop');
    expect(settled(corner, [stray('lost', 110)])).toBe('untidy');
  });

  test('robots that stray far away, or by a mark, say nothing against a corner', () => {
    expect(settled(corner, [stray('lost', 150), stray('lost', 160)])).toBe('untidy');
    expect(settled(corner, [stray('mark-missed', 100, 'a'), stray('mark-misread', 100, 'a')])).toBe('untidy');
  });

  test('a mark answers for its own robots, also where another stands nearby', () => {
    const missed = (name: string) => [stray('mark-missed', 110, name), stray('mark-misread', 110, name)];
    expect(settled(mark, missed('first'))).toBe('may-stop');
    expect(settled(mark, missed('second'))).toBe('untidy');
    expect(settled(mark, [stray('lost', 100), stray('lost', 100)])).toBe('untidy');
  });

  test('a thin line answers for marks that are missed on it', () => {
    const thin: Finding = { ...corner, rule: 'R-line-width' };
    expect(settled(thin, [stray('mark-missed', 100, 'a'), stray('mark-missed', 100, 'a')])).toBe('may-stop');
  });

  test('where no run comes by, and of a mark that no run reads, the proposal stands', () => {
    expect(settled(corner, [], elsewhere)).toBe('may-stop');
    const overlooked = run([end], { samples: samplesAt([{ x: 90, y: 100, count: 3 }]) });
    expect(settled(mark, [], overlooked)).toBe('may-stop');
  });

  test('a corner that uses up a waiting choice may stop, however steady', () => {
    const usedUp = run(
      [
        {
          kind: 'junction',
          t: 1,
          x: 101,
          y: 99,
          way: 0,
          pace: 'steady',
          took: 'left',
          by: 'mark',
          arms: ['left', 'straight'],
        },
        end,
      ],
      { samples: samplesAt([{ x: 90, y: 100, count: 3 }]) },
    );
    expect(settled(corner, [], usedUp)).toBe('may-stop');
  });
});
