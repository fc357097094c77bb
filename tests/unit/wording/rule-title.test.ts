import { expect, it } from 'vitest';
import { titleOfRule } from '../../../shared/wording/rule-title.ts';
import { wording } from '../../../shared/wording/wording.ts';

it('the title of a rule has no measure, which several findings do not share', () => {
  expect(titleOfRule({ rule: 'R-corner' }, wording('en'))).toBe('Sharp corner');
});
