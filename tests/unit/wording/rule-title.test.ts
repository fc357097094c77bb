import { expect, it } from 'vitest';
import type { RuleId } from '../../../shared/documents/verdict.ts';
import { titleOfRule, worstOfRule } from '../../../shared/wording/rule-title.ts';
import { wording } from '../../../shared/wording/wording.ts';

it('the title of a rule has no measure, which several findings do not share', () => {
  expect(titleOfRule({ rule: 'R-corner' }, wording('en'))).toBe('Sharp corner');
});

it('the worst of a rule is said with its measure, where it has one, and with its sentence', () => {
  const worst = (rule: RuleId, measured?: number): string =>
    worstOfRule(
      {
        id: rule,
        rule,
        severity: 'may-stop',
        place: { kind: 'point', at: { x: 0, y: 0 } },
        ...(measured === undefined ? {} : { unit: 'mm', variant: 'corner', measured, allowed: 20 }),
      },
      wording('en'),
    );
  expect(worst('R-before-mark', 4)).toBe(
    'At worst 4 mm. The robot may overlook this mark: it needs at least 20 mm of straight line from the corner before it.',
  );
  expect(worst('R-unknown-mark')).toBe(
    'These bands are not in the chart: the robot drives on as if nothing were there.',
  );
});
