import { describe, expect, it } from 'vitest';
import { between, type Tone, tonesOf } from '../../../../client/board/tones.ts';
import { judge } from '../../../../shared/judge/judge.ts';
import { challengeOf } from '../../../disturbed.ts';

const TONES: Tone[] = [
  { t: 1, kind: 'reading' },
  { t: 2, kind: 'arrival' },
];

describe('tones', () => {
  it('of a run are its readings and its arrival', () => {
    const challenge = challengeOf('one-fast-stretch');
    const { traces } = judge(challenge, challenge.model!, 'live');
    expect(tonesOf(traces).map(({ kind }) => kind)).toEqual(['reading', 'reading', 'reading', 'arrival']);
  });

  it('sound once, when the run comes to them', () => {
    expect(between(TONES, 0.9, 1)).toEqual([TONES[0]]);
    expect(between(TONES, 1, 1.1)).toEqual([]);
  });

  it('are silent where somebody scrubs or jumps, and while it stands', () => {
    expect(between(TONES, 0, 5)).toEqual([]);
    expect(between(TONES, 1.2, 0.9)).toEqual([]);
    expect(between(TONES, 1, 1)).toEqual([]);
    expect(between(TONES, Number.POSITIVE_INFINITY, 1)).toEqual([]);
  });
});
