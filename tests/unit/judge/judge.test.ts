import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design, Mark } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { Verdict } from '../../../shared/documents/verdict.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { Pen } from '../../sweeps/pen.ts';

function ready(key: string): Challenge {
  const one = readyChallenges(DEMO_KIT).find((r) => r.key === key);
  if (!one?.playable) throw new Error(`no playable challenge ${key}`);
  return one.challenge;
}
const throughFile = (verdict: Verdict) =>
  parseDocument(Verdict, JSON.parse(JSON.stringify(writeDocument(Verdict, verdict))));
const at = <T>(things: readonly T[], i: number): T => things[i]!;

describe('judge', () => {
  test('the verdict is the same after writing and reading', () => {
    const challenge = ready('late-choice');
    for (const design of [challenge.begin!, challenge.model!]) {
      const { verdict } = judge(challenge, design, 'entry');
      expect(throughFile(verdict)).toEqual({ ok: true, value: verdict });
    }
  });

  test('more marks than the challenge allows are driven and pointed at, but never met', () => {
    const challenge = ready('late-choice');
    const few = { ...challenge, limits: { ...challenge.limits, marks: 0 } };
    const { verdict, refusal } = judge(few, challenge.model!, 'live');
    expect(refusal).toBeUndefined();
    expect(verdict.runs).toHaveLength(1);
    expect(verdict.findings).toMatchObject([{ rule: 'R-mark-budget', severity: 'stops' }]);
    expect(verdict.met).toBe(false);
  });

  test('a junction left to chance gives two runs of one half each, and the goal names the one that fails', () => {
    const challenge = ready('ferry-junction');
    const { verdict } = judge(challenge, { version: 1, drawing: { lines: [], marks: [] } }, 'live');
    expect(verdict.runs.map((run) => run.probability)).toEqual([0.5, 0.5]);
    const finish = at(verdict.goals, 0);
    expect(finish).toMatchObject({ met: false, leftToLuck: false });
    expect(at(verdict.runs, finish.run!).ending).toBe('stopped');
  });

  test('R-open-junction names the junction to decide first where there are more than 16 runs', () => {
    const ladder = (rungs: number[], ...marks: Mark[]) => {
      const pen = new Pen().to(20, 60).straight(257).to(20, 150).straight(257);
      for (const x of rungs) pen.to(x, 60, 90).straight(90);
      const challenge = ready('first-line');
      const start = { ...challenge.sheet.start, at: { x: 22, y: 60 }, heading: 0, r: 5 };
      const { lines } = pen.drawing();
      const design: Design = { version: 1, drawing: { lines, marks } };
      const { verdict } = judge({ ...challenge, sheet: { ...challenge.sheet, start } }, design, 'live');
      const found = verdict.findings.filter(({ rule }) => rule === 'R-open-junction');
      return { found, goal: at(verdict.goals, 0), top: lines[0]!.id };
    };
    const many = [80, 125, 170, 215, 260];
    const open = ladder(many);
    expect(open.goal).toMatchObject({ met: false, leftToLuck: true });
    const place = (x: number) => ({ kind: 'point', at: { x, y: 60 } });
    expect(open.found).toMatchObject([{ place: place(80), severity: 'may-stop', allowed: 16 }]);
    expect(open.found[0]?.remedy).toEqual({ code: 'decide-junction' });
    // Straight on at the first, by the word ACA: then the second one is the first that is open.
    const bands = [...'ACA'].map((ink) => ({ ink, length: 5.5, gap: 0 }));
    const decided = ladder([100, ...many.slice(1)], { id: 'm', line: open.top, at: 30, bands });
    expect(decided.found.map((finding) => finding.place)).toEqual([place(125)]);
    expect(ladder([80]).found).toEqual([]);
  });

  test('each reading names its mark and the place where it acts, after the mark', () => {
    const challenge = ready('park-on-the-landing');
    const { verdict } = judge(challenge, challenge.model!, 'live');
    const reading = at(at(verdict.runs, 0).readings, 0);
    expect(reading).toMatchObject({ mark: 'park', word: 'VAV', action: { kind: 'park' } });
    // Common practice in the trade gives 13 to 55 mm from the mark to the stand; the way leads to the left.
    const markEnd = { x: 202 - (345 - (160 + 2 * 45 * (Math.PI / 2) + 16)) - 16.5, y: 158 };
    expect(reading.acted!.y).toBeCloseTo(markEnd.y, 0);
    expect(markEnd.x - reading.acted!.x).toBeGreaterThan(13);
    expect(markEnd.x - reading.acted!.x).toBeLessThan(55);
  });

  test('a sharp corner where a run is lost stops the robot; mended it does not', () => {
    const challenge = ready('sharp-corner');
    const begin = judge(challenge, challenge.begin!, 'live').verdict;
    expect(begin.runs.some((run) => run.ending === 'lost')).toBe(true);
    expect(begin.findings).toMatchObject([{ rule: 'R-corner', severity: 'stops' }]);
    expect(judge(challenge, challenge.model!, 'live').verdict.findings).toEqual([]);
  });

  test('where a par is known, the cost of the marks gives a quarter of the points', () => {
    // Its lines are given, so the model's one mark is all of its cost: 20; 25 points times 10 over 20.
    const challenge = { ...ready('park-on-the-landing'), par: 10 };
    const { verdict } = judge(challenge, challenge.model!, 'live');
    expect(verdict.points.at(-1)).toEqual({ reason: 'thrift', got: 12, of: 25, measured: 20, allowed: 10 });
    expect(verdict.total).toBe(75 + 12);
    expect(throughFile(verdict)).toEqual({ ok: true, value: verdict });
  });

  test('a design that is refused has no runs, no points and the reason', () => {
    const challenge = ready('ferry-junction');
    const marks = [{ id: 'm', line: 'gone', at: 10, bands: [{ ink: 'C', length: 5.5, gap: 0 }] }];
    const design: Design = { version: 1, drawing: { lines: [], marks } };
    const { verdict, traces, refusal } = judge(challenge, design, 'entry');
    expect(refusal).toMatchObject({ code: 'mark-without-line', path: ['drawing', 'marks', 0, 'line'] });
    expect(traces).toEqual([]);
    expect(verdict).toMatchObject({ met: false, total: 0, runs: [], findings: [] });
    expect(verdict.goals.map((goal) => goal.met)).toEqual([false, false]);
    const freely = { ...challenge, goals: challenge.goals.map((goal) => ({ ...goal, must: false })) };
    expect(judge(freely, design, 'entry').verdict.met).toBe(false);
    expect(throughFile(verdict)).toEqual({ ok: true, value: verdict });
  });
});
