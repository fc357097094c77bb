import { describe, expect, it } from 'vitest';
import { whyStuck } from '../../../../client/desk/queued.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { type ReadyChallenge, readyChallenges } from '../../../../shared/library/ready.ts';

const ferry = readyChallenges(DEMO_KIT).find(({ key }) => key === 'ferry-junction')!;
const made = ferry.playable ? { ...ferry.challenge, id: 'own-1' } : undefined;
const foreign: ReadyChallenge = { ...ferry, key: 'long-pier', playable: false, missing: [] };
const ready = [ferry, foreign];

describe('whyStuck', () => {
  it('is null for a challenge that can be taken: a ready one, or one of the desk’s own', () => {
    expect(whyStuck('ferry-junction', ready, [])).toBeNull();
    expect(whyStuck('own-1', ready, [made!])).toBeNull();
  });

  it('says that one is gone which neither the library nor the desk has', () => {
    expect(whyStuck('own-1', ready, [])).toBe('gone');
  });

  it('says that one is there but can’t be played: not with this kit, or not finished', () => {
    expect(whyStuck('long-pier', ready, [])).toBe('not-playable');
    expect(whyStuck('own-1', ready, [{ ...made!, goals: [] }])).toBe('not-playable');
  });

  it('says nothing before kit and own challenges are here', () => {
    expect([whyStuck('own-1', [], []), whyStuck('own-1', ready, null)]).toEqual([null, null]);
  });
});
