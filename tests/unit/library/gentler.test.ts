import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { gentlerLines } from '../../../shared/library/gentler.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

const playable = readyChallenges(DEMO_KIT).flatMap((one) => (one.playable ? [one.challenge] : []));
const drawn = playable.filter(({ play, model }) => play === 'draw' && model!.drawing.marks.length > 0);

describe('gentlerLines', () => {
  it('gives the lines of the maker’s drawing and none of its marks', () => {
    expect(drawn.length).toBeGreaterThan(0);
    for (const challenge of drawn) {
      const { lines, marks } = challenge.model!.drawing;
      const gentler = gentlerLines(challenge)!.drawing;
      expect(gentler).toEqual({ lines, marks: [] });
      // Every mark of the maker's has its line: with those marks put in it is the maker's drawing again.
      const onLines = marks.filter((mark) => gentler.lines.some(({ id }) => id === mark.line));
      expect(onLines).toEqual(marks);
    }
  });

  it('is nothing where lines are given, or would be all there is', () => {
    const others = playable.filter((challenge) => !drawn.includes(challenge));
    expect(others.filter((challenge) => gentlerLines(challenge) !== undefined)).toEqual([]);
  });
});
