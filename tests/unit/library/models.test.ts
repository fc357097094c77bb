import { describe, expect, test } from 'vitest';
import { EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

describe('ready challenges', () => {
  for (const one of readyChallenges(DEMO_KIT)) {
    if (!one.playable) continue;
    const { challenge } = one;

    test(`${one.key}: the maker's design gets full points, and no rule has anything to say`, () => {
      const { verdict, refusal } = judge(challenge, challenge.model!, 'entry');
      expect(refusal).toBeUndefined();
      expect(verdict.findings).toEqual([]);
      expect(verdict.goals.filter((goal) => !goal.met)).toEqual([]);
      expect(verdict).toMatchObject({ met: true, total: 100 });
      expect(verdict.runs).toHaveLength(1);
    });

    test(`${one.key}: what a team begins with is not met`, () => {
      const { verdict } = judge(challenge, challenge.begin ?? EMPTY_DESIGN, 'entry');
      expect(verdict.met).toBe(false);
      expect(verdict.total).toBeLessThan(25);
      if (challenge.play === 'mend') expect(verdict.findings.length).toBeGreaterThan(0);
    });
  }
});
