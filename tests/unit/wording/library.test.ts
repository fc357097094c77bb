import { describe, expect, test } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { wording } from '../../../shared/wording/wording.ts';

const { library } = wording('en');

describe('how a ready challenge stands with a kit', () => {
  test('with its own kit each can be played', () => {
    expect(new Set(readyChallenges(DEMO_KIT).map(library.standing))).toEqual(new Set(['Can be played.']));
  });

  test('with the second kit each says whether, and why not', () => {
    const said = new Map(readyChallenges(SECOND_KIT).map((one) => [one.topic, library.standing(one)]));
    const open = 'Can be played; with this kit the best that can be reached is not known.';
    expect([...said.values()].filter((sentence) => sentence === open)).toHaveLength(20);
    // Its chart has no tiptoe, and its robot goes straight on without being told to.
    const straight = 'Nothing to learn with this kit: its robot goes straight on by itself.';
    const tiptoe = 'Can’t be played with this kit: its chart has no mark for “tiptoe”.';
    expect([14, 17, 19, 20].map((topic) => said.get(topic))).toEqual([straight, straight, tiptoe, tiptoe]);
  });
});
