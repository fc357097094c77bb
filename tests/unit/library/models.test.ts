import { describe, expect, test } from 'vitest';
import { EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { ofForty } from '../../disturbed.ts';

const challenges = readyChallenges(DEMO_KIT).flatMap((one) => (one.playable ? [one.challenge] : []));
const drawn = challenges.filter((challenge) => challenge.play !== 'predict');

describe('ready challenges', () => {
  test.each(drawn.map((c) => [c.id, c] as const))(
    '%s: the maker’s design gets full points unless a cheaper one is known, and no rule has anything to say',
    (_, challenge) => {
      const { verdict, refusal } = judge(challenge, challenge.model!, 'entry');
      expect(refusal).toBeUndefined();
      expect(verdict.findings).toEqual([]);
      expect(verdict.goals.filter((goal) => !goal.met)).toEqual([]);
      // Goals have 75 of 100 and thrift 25, of which half: one mark does what the maker does with two.
      const total = challenge.id === 'in-time-for-the-ferry' ? 87 : 100;
      expect(verdict).toMatchObject({ met: true, total });
      expect(verdict.runs).toHaveLength(challenge.starts.length);
    },
  );

  test.each(drawn.map((c) => [c.id, c] as const))(
    '%s: what a team begins with is not met',
    (_, challenge) => {
      const { verdict } = judge(challenge, challenge.begin ?? EMPTY_DESIGN, 'live');
      expect(verdict.met).toBe(false);
      expect(verdict.total).toBeLessThan(25);
      if (challenge.play === 'mend') expect(verdict.findings.length).toBeGreaterThan(0);
    },
  );

  // The numbers of the course as it was tried out before: every sound solution 40 of 40.
  test.each(drawn.map((c) => [c.id, c] as const))(
    '%s: forty of forty disturbed robots make the maker’s design',
    (_, challenge) => {
      expect(ofForty(challenge, challenge.model!)).toEqual(challenge.starts.map(() => 40));
    },
  );

  test('round-the-harbour: at least 36 of forty make it in a breeze too, the goal’s 18 of 20', () => {
    const { model, ...challenge } = drawn.find((one) => one.id === 'round-the-harbour')!;
    expect(ofForty(challenge, model, 1.5)[0]).toBeGreaterThanOrEqual(36);
  });
});
