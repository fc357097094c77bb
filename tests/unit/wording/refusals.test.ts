import { describe, expect, it } from 'vitest';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { refusalSentence, refusals } from '../../../shared/wording/en/refusals.ts';

const SAMPLES: { readonly [C in WireRefusal['code']]: Extract<WireRefusal, { code: C }> } = {
  'not-for-this-seat': { code: 'not-for-this-seat' },
  'not-now': { code: 'not-now', phase: 'build' },
  'room-full': { code: 'room-full', most: 40 },
  'unknown-team': { code: 'unknown-team' },
  'team-removed': { code: 'team-removed' },
  'emblem-taken': { code: 'emblem-taken' },
  'no-challenge': { code: 'no-challenge' },
  'unknown-challenge': { code: 'unknown-challenge', key: 'the-moon' },
  'other-round': { code: 'other-round' },
  'other-sheet': { code: 'other-sheet' },
  'unknown-entry': { code: 'unknown-entry', entry: 'e1' },
  'already-judged': { code: 'already-judged' },
  'not-building': { code: 'not-building' },
  'already-so': { code: 'already-so' },
  'nothing-to-ask': { code: 'nothing-to-ask' },
  'no-check': { code: 'no-check' },
  'unknown-answer': { code: 'unknown-answer' },
  'not-judged': { code: 'not-judged' },
  'not-on-the-wall': { code: 'not-on-the-wall' },
  'too-many-on-stage': { code: 'too-many-on-stage', most: 2 },
  'nothing-to-show': { code: 'nothing-to-show' },
  'queue-full': { code: 'queue-full', most: 30 },
  'unknown-trial': { code: 'unknown-trial' },
  'too-many-trials': { code: 'too-many-trials', most: 2000 },
  'bad-form': { code: 'bad-form', path: 'ask.round', problem: 'too_small' },
  'too-large': { code: 'too-large', bytes: 300_000, most: 256_000 },
  'too-fast': { code: 'too-fast' },
  'other-version': { code: 'other-version', ours: 1 },
  'no-seat': { code: 'no-seat' },
  'other-site': { code: 'other-site' },
  'seat-freed': { code: 'seat-freed' },
  'unknown-room': { code: 'unknown-room' },
  'no-room-named': { code: 'no-room-named' },
  'unknown-document': { code: 'unknown-document' },
  'unknown-page': { code: 'unknown-page' },
  'wrong-key': { code: 'wrong-key' },
  'cannot-print': { code: 'cannot-print', why: 'no-drawing' },
  'kit-not-sound': { code: 'kit-not-sound', problem: 'size-zero', path: 'robot.width', more: 2 },
  'wrong-code': { code: 'wrong-code' },
  'unknown-link': { code: 'unknown-link' },
  'store-full': { code: 'store-full' },
  'shelf-full': { code: 'shelf-full', most: 60 },
  'not-on-shelf': { code: 'not-on-shelf' },
  'store-away': { code: 'store-away' },
  'restart-needed': { code: 'restart-needed' },
  'server-trouble': { code: 'server-trouble' },
};

describe('refusalSentence', () => {
  it.each(Object.values(SAMPLES))('$code says what is wrong and what to do', (refusal) => {
    const sentence = refusalSentence(refusal);
    expect(sentence).toMatch(/^[A-Z].*[.]$/);
    expect(sentence).not.toMatch(/undefined|null|NaN|\[object/);
    expect(sentence.length).toBeGreaterThan(30);
  });

  it('names the numbers that explain it', () => {
    expect(refusalSentence(SAMPLES['room-full'])).toContain('40 teams');
    expect(refusalSentence(SAMPLES['too-large'])).toContain('300 kB, and at most 256 kB');
    expect(refusalSentence(SAMPLES['bad-form'])).toContain('at ask.round: too_small');
    expect(refusalSentence(SAMPLES['unknown-challenge'])).toContain('“the-moon”');
  });

  it('has no sentence without a code', () => {
    expect(Object.keys(refusals).sort()).toEqual(Object.keys(SAMPLES).sort());
  });
});
