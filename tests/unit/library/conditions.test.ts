import { describe, expect, it } from 'vitest';
import { AS_IT_IS } from '../../../shared/documents/challenge.ts';
import { WEATHERS } from '../../../shared/documents/outlook.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { challengeUnder, weatherOf } from '../../../shared/library/conditions.ts';
import { challengeIn } from '../../../shared/library/variants.ts';
import { challengeOf } from '../../disturbed.ts';

const pier = challengeOf('long-pier');

describe('challengeUnder', () => {
  it('is the challenge itself where neither sheet nor weather differs', () => {
    expect(challengeUnder(AS_IT_IS, pier)).toBe(pier);
    expect(weatherOf(pier)).toBe('calm');
    expect(challengeUnder({ variant: null, weather: 'calm' }, pier)).toBe(pier);
  });

  it('is on the same sheet, of the same kit, where the weather alone differs', () => {
    const stormy = challengeUnder({ variant: null, weather: 'stormy' }, pier);
    expect(stormy).toEqual({ ...pier, weather: 'stormy' });
    expect([stormy.sheet, stormy.kit]).toEqual([pier.sheet, pier.kit]);
    expect(stormy.sheet).toBe(pier.sheet);
  });

  it('takes sheet and weather together', () => {
    const both = challengeUnder({ variant: 'turned', weather: 'stormy' }, pier);
    expect(both).toEqual({ ...challengeIn('turned', pier), weather: 'stormy' });
  });

  // Tolerances are multiplied by 1, 1.5 and 3. In calm weather a sound drawing is made by all twenty robots, and
  // steadiness gives points from a breeze on only.
  it('has the same drawing made by fewer robots the worse the weather is, and counts them', () => {
    const verdicts = WEATHERS.map(
      (weather) => judge(challengeUnder({ variant: null, weather }, pier), pier.model!, 'entry').verdict,
    );
    const [calm, breezy, stormy] = verdicts.map(({ steadiness }) => steadiness!);
    expect(verdicts.map(({ steadiness }) => steadiness?.weather)).toEqual([...WEATHERS]);
    expect(calm!.same).toBe(20);
    expect(breezy!.same).toBeLessThanOrEqual(calm!.same);
    expect(stormy!.same).toBeLessThan(breezy!.same);
    const steady = verdicts.map(({ points }) => points.find(({ reason }) => reason === 'steadiness'));
    expect(steady[0]).toBeUndefined();
    expect(steady[2]!.got).toBeLessThan(steady[1]!.got);
    expect(verdicts.map(({ runs }) => runs)).toEqual(WEATHERS.map(() => verdicts[0]!.runs));
  });
});
