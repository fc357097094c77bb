import { describe, expect, test } from 'vitest';
import { type Finding, RULE_IDS, SEVERITIES } from '../../../shared/documents/verdict.ts';
import { wording } from '../../../shared/wording/wording.ts';

const { findings, actions } = wording('en');

const finding = (over: Partial<Finding>): Finding => ({
  id: 'f',
  rule: 'R-corner',
  severity: 'may-stop',
  place: { kind: 'point', at: { x: 0, y: 0 } },
  ...over,
});

describe('findings', () => {
  test('a corner of 42 degrees that may be taken for a junction', () => {
    expect(findings.said(finding({ measured: 42, allowed: 90, unit: 'degrees' }))).toEqual({
      title: 'Sharp corner (42°)',
      sentence:
        'The robot may take it for a junction. It gets round, but a waiting take left or take right would be used up here. Corners from 90° on are safe.',
    });
  });
  test('a value that rounds to the allowed one gets more places', () => {
    const near = (rule: Finding['rule'], measured: number, allowed: number) =>
      findings.said(finding({ rule, measured, allowed })).title;
    expect(near('R-before-mark', 24.9, 25)).toBe('Too little before (24.9 mm)');
    expect(near('R-corner', 89.98, 90)).toBe('Sharp corner (89.98°)');
    expect(near('R-before-mark', 20.2, 25)).toBe('Too little before (20 mm)');
  });
  test('a gap says what the robot does there', () => {
    const gap = (severity: Finding['severity']) =>
      findings.said(finding({ rule: 'R-loose-end', variant: 'gap', severity, measured: 8, allowed: 3 }));
    expect(gap('may-stop')).toEqual({
      title: 'Gap in the line (8 mm)',
      sentence: 'There is a gap of 8 mm in the line. The robot may cross it.',
    });
    expect(gap('untidy').sentence).toMatch(/The robot crosses it\.$/);
    expect(gap('stops').sentence).toMatch(/doesn’t find the line/);
  });
  for (const rule of RULE_IDS) {
    test(`${rule} has a short title and a whole sentence in every severity`, () => {
      for (const severity of SEVERITIES) {
        const { title, sentence } = findings.said(finding({ rule, severity, measured: 3, allowed: 5 }));
        expect(title.replace(/ \(.*\)$/, '').split(' ').length).toBeLessThanOrEqual(4);
        expect(sentence).toMatch(/^[A-Z].*\.$/);
        expect(sentence).not.toMatch(/undefined|NaN/);
      }
    });
  }
});

describe('actions', () => {
  test('are said as the chart says them', () => {
    expect(actions.name({ kind: 'pace-by', steps: 1 })).toBe('faster');
    expect(actions.name({ kind: 'pace-by', steps: -2 })).toBe('slower by 2');
    expect(actions.name({ kind: 'choose', way: 'straight' })).toBe('straight on');
    expect(actions.name({ kind: 'pace-to', pace: 'creep' })).toBe('tiptoe');
    expect(actions.name({ kind: 'nothing' })).toBe('pass');
    expect(actions.already('fast')).toBe('already fast');
  });
});
