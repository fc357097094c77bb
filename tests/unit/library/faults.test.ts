import { describe, expect, test } from 'vitest';
import { type Design, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { markFor } from '../../../shared/library/chart-words.ts';
import { challengeOf, ofForty } from '../../disturbed.ts';

/**
 * How many of forty disturbed robots make the faulty or unmarked version. The course was tried out
 * before on another program of the same model; its numbers stand beside ours as the direction.
 */
describe('faulty and unmarked versions', () => {
  const begun = (key: string) => ofForty(challengeOf(key), challengeOf(key).begin);
  const unmarked = (key: string) => ofForty(challengeOf(key))[0]!;

  test('a corner of 30 degrees loses some and lets some through (tried before: 15)', () => {
    const [through] = begun('sharp-corner');
    expect(through).toBeGreaterThan(5);
    expect(through).toBeLessThan(30);
  });

  test('the mark behind a corner is overlooked by all (tried before: 0)', () => {
    expect(begun('overlooked-mark')).toEqual([0]);
  });

  test('with two marks painted in a hurry none parks, and mending one of them helps few (tried before: 2 and 0)', () => {
    const challenge = challengeOf('painted-in-a-hurry');
    const [begin, model] = [challenge.begin!, challenge.model!];
    expect(ofForty(challenge, begin)).toEqual([0]);
    for (const mended of ['second', 'third']) {
      const marks = begin.drawing.marks.map((mark) =>
        mark.id === mended ? model.drawing.marks.find(({ id }) => id === mended)! : mark,
      );
      const half: Design = { version: 1, drawing: { lines: [], marks } };
      expect(ofForty(challenge, half)[0]).toBeLessThanOrEqual(4);
    }
  });

  // A choice that comes too late leaves two ways to chance. Of forty throws of a fair coin fewer than
  // 10 or more than 30 come less than once in a thousand times.
  test('the choice that comes too late works about half of the time (tried before: 21)', () => {
    const [half] = begun('late-choice');
    expect(half).toBeGreaterThan(9);
    expect(half).toBeLessThan(31);
  });

  test('the choice that comes too late works for all when it is moved, and when the robot is slowed down before it', () => {
    const challenge = challengeOf('late-choice');
    expect(ofForty(challenge, challenge.model)).toEqual([40]);
    const slower = markFor(DEMO_KIT, { id: 'slower', line: 'way', at: 36, action: 'slower' })!;
    const marks = [slower, ...challenge.begin!.drawing.marks];
    const slowed: Design = { version: 1, drawing: { lines: [], marks } };
    expect(judge(challenge, slowed, 'live').verdict).toMatchObject({ met: true, findings: [] });
    expect(ofForty(challenge, slowed)).toEqual([40]);
  });

  test('without a mark about half take the left way, and about a third go straight on', () => {
    expect(unmarked('ferry-junction')).toBeGreaterThan(9);
    expect(unmarked('ferry-junction')).toBeLessThan(31);
    // A third of forty with two standard deviations of 3 to either side.
    expect(unmarked('rail-crossing')).toBeGreaterThan(6);
    expect(unmarked('rail-crossing')).toBeLessThan(21);
  });

  test.each(['park-on-the-landing', 'long-pier', 'in-time-for-the-ferry', 'wait-at-the-landing'])(
    '%s: without a mark nobody makes it',
    (key) => {
      expect(ofForty(challengeOf(key), EMPTY_DESIGN)).toEqual([0]);
    },
  );

  test('with the mark turned round the choice is the wrong one for all', () => {
    const challenge = challengeOf('ferry-junction');
    const marks = challenge.model!.drawing.marks.map((mark) => ({ ...mark, bands: mark.bands.toReversed() }));
    expect(ofForty(challenge, { version: 1, drawing: { lines: [], marks } })).toEqual([0]);
  });
});
