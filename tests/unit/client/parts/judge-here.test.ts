import { describe, expect, it } from 'vitest';
import { type JudgedHere, startJudgeHere } from '../../../../client/parts/judge-here.ts';
import type { Challenge, Goal } from '../../../../shared/documents/challenge.ts';
import type { Design } from '../../../../shared/documents/design.ts';
import type { Formula } from '../../../../shared/documents/formula.ts';
import { judge } from '../../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../../shared/library/ready.ts';

function ready(key: string): Challenge {
  const one = readyChallenges(DEMO_KIT).find((each) => each.key === key);
  if (!one?.playable) throw new Error(`no playable challenge ${key}`);
  return one.challenge;
}
const NOTHING: Design = { version: 1, drawing: { lines: [], marks: [] } };
const NOT_THERE: Formula = { kind: 'not', of: { kind: 'finish' } };
const goal = (id: string, formula: Formula): Goal => ({ id, formula, must: true, weight: 1 });

describe('startJudgeHere', () => {
  const ask = startJudgeHere();
  const judgeHere = (challenge: Challenge, design: Design): JudgedHere => {
    const outcome = ask(challenge, { design, mend: null });
    if (!('judged' in outcome)) throw new Error('no verdict');
    return outcome.judged;
  };
  const junction = { ...ready('ferry-junction'), goals: [goal('arrive', { kind: 'finish' })] };

  it('a junction left to chance misses the finish in one of two ways', () => {
    expect(judgeHere(junction, NOTHING).ways).toEqual({ arrive: { missed: 1, of: 2 } });
  });

  it('what no way meets is missed in all, what every way meets is not named', () => {
    const goals = [
      goal('never', { kind: 'and', of: [{ kind: 'finish' }, NOT_THERE] }),
      goal('ever', { kind: 'or', of: [{ kind: 'finish' }, NOT_THERE] }),
    ];
    expect(judgeHere({ ...junction, goals }, NOTHING).ways).toEqual({ never: { missed: 2, of: 2 } });
  });

  it('one way, or a goal that no run decides, names no ways; the verdict is the judge’s', () => {
    const { ways, ...judged } = judgeHere(junction, ready('ferry-junction').model!);
    expect(ways).toEqual({});
    expect(judged).toEqual(judge(junction, ready('ferry-junction').model!, 'live'));
    const goals = [goal('marks', { kind: 'not', of: { kind: 'mark-limit', most: 5 } })];
    expect(judgeHere({ ...junction, goals }, NOTHING).ways).toEqual({});
  });

  it('only the findings are the verdict’s, as the runs have settled them', () => {
    const { begin, ...corner } = ready('sharp-corner');
    const { findings } = judge(corner, begin!, 'live').verdict;
    expect(findings.map(({ rule, severity }) => [rule, severity])).toContainEqual(['R-corner', 'stops']);
    expect(ask(corner, { design: begin!, mend: null, findingsOnly: true })).toEqual({ findings });
  });

  it('a stage is told beside the traces when each goal becomes certain', () => {
    const goals = [goal('arrive', { kind: 'finish' }), goal('marks', { kind: 'mark-limit', most: 5 })];
    const outcome = ask({ ...junction, goals }, { design: NOTHING, mend: null, staging: { robot: null } });
    const { traces, certain } = 'judged' in outcome ? outcome.judged : { traces: [], certain: undefined };
    const arrivals = traces.map(({ events }) => events.find(({ kind }) => kind === 'finish')?.t);
    expect(arrivals.filter((t) => t !== undefined)).toHaveLength(1);
    // At the first of fifty samples a second that has seen it.
    const sampled = arrivals.map((t) => (t === undefined ? null : { t: Math.ceil(t * 50) / 50, met: true }));
    expect(certain).toEqual({ arrive: sampled, marks: traces.map(() => ({ t: 0, met: true })) });
  });

  it('drawings of several series, in turn: each verdict is the judge’s', () => {
    const of = (key: string) => ({ challenge: ready(key), design: ready(key).model! });
    const series = { a: of('ferry-junction'), b: of('first-line'), c: of('three-calls') };
    for (const turn of [0, 1])
      for (const [name, { challenge, design }] of Object.entries(series)) {
        const marks = design.drawing.marks.slice(turn);
        const drawn = { ...design, drawing: { ...design.drawing, marks } };
        const outcome = ask(challenge, { design: drawn, mend: null, series: name });
        const { ways: _, ...judged } = 'judged' in outcome ? outcome.judged : { ways: {} };
        expect(judged).toEqual(judge(challenge, drawn, 'live'));
      }
  });

  it('mends a finding of the verdict by its id, and nothing by another', () => {
    const { begin, ...corner } = ready('sharp-corner');
    const faulty = judgeHere(corner, begin!).verdict.findings.find(({ rule }) => rule === 'R-corner')!;
    const outcome = ask(corner, { design: begin!, mend: faulty.id });
    const mended = 'mended' in outcome ? outcome.mended : null;
    const rules = judgeHere(corner, mended!).verdict.findings.map(({ rule }) => rule);
    expect(rules).not.toContain('R-corner');
    expect(ask(corner, { design: begin!, mend: 'R-corner@elsewhere' })).toEqual({ mended: null });
  });
});
