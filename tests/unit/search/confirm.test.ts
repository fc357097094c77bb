import { describe, expect, test } from 'vitest';
import type { Weather } from '../../../shared/documents/outlook.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { confirm, staysSteady } from '../../../shared/search/confirm.ts';

/** The maker's design for parking on the landing: 39 of 40 robots drive it in a breeze, 25 in a storm. */
function parked(weather: Weather) {
  const ready = readyChallenges(DEMO_KIT).find(({ key }) => key === 'park-on-the-landing');
  if (!ready?.playable) throw new Error('park-on-the-landing can’t be played');
  const challenge = { ...ready.challenge, weather };
  return { challenge, design: challenge.model! };
}

describe('staysSteady', () => {
  test('says yes where nearly all later robots do the same, no in a storm that leads many astray', () => {
    const calm = parked('calm');
    const stormy = parked('stormy');
    expect(staysSteady(calm.challenge, calm.design)).toBe(true);
    expect(staysSteady(stormy.challenge, stormy.design)).toBe(false);
  });
});

describe('confirm', () => {
  test('asks the twenty robots of the verdict: 19 must do the same', () => {
    const calm = parked('calm');
    const stormy = parked('stormy');
    expect(confirm(calm.challenge, calm.design)).toEqual({ met: true, steady: true });
    expect(confirm(stormy.challenge, stormy.design)).toEqual({ met: true, steady: false });
  });
});
