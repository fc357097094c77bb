import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import type { Stray } from '../documents/outlook.ts';
import { disturbedRobots, type SteadinessQuestion, steadinessFrom } from '../steadiness/steadiness.ts';
import { judge } from './judge.ts';
import { fromOtherEnd, type NextQuestion, without } from './next-question.ts';

/**
 * Yields the questions that make sense of this drawing, one more each time, and nothing between the robots of
 * the storm. `calm` is how its robots are driven in the challenge's own weather.
 */
export function* nextQuestions(
  challenge: Challenge,
  design: Design,
  calm: SteadinessQuestion,
): Generator<{ readonly next?: readonly NextQuestion[] }, void> {
  const next: NextQuestion[] = [];
  if (design.drawing.marks.length > 0) {
    next.push({ kind: 'fewer-marks', spare: spareMark(challenge, design) });
    yield { next: [...next] };
  }
  const other = fromOtherEnd(challenge);
  if (other) {
    next.push({ kind: 'other-end', met: judge(other, design, 'live').verdict.met });
    yield { next: [...next] };
  }
  if (challenge.weather !== 'stormy') {
    const robots: (Stray | undefined)[] = [];
    for (const robot of disturbedRobots({ ...calm, weather: 'stormy' })) {
      robots.push(robot);
      yield {};
    }
    const { same, of } = steadinessFrom(robots, 'stormy');
    next.push({ kind: 'storm', same, of });
    yield { next: [...next] };
  }
}

function spareMark(challenge: Challenge, design: Design): string | null {
  const { marks } = design.drawing;
  const spare = marks.find(({ id }) => judge(challenge, without(design, id), 'live').verdict.met);
  return spare?.id ?? null;
}
