import { describe, expect, it } from 'vitest';
import { LEFT_ARM, RIGHT_ARM } from '../../../shared/run/junctions.ts';

/** Five sensors from the left, # dark. */
const pattern = (bar: string): number => Number.parseInt(bar.replaceAll('#', '1').replaceAll('.', '0'), 2);

describe('an arm to the left', () => {
  it.each([
    ['###..', 'three adjacent dark sensors'],
    ['#####', 'all of them'],
    ['#.#..', 'two clusters'],
    ['#..#.', 'two clusters, further apart'],
  ])('is seen at %s: %s', (bar) => {
    expect(LEFT_ARM[pattern(bar)]).toBe(1);
    expect(RIGHT_ARM[pattern([...bar].reverse().join(''))]).toBe(1);
  });

  it.each([
    ['.....', 'nothing'],
    ['#....', 'one line far to the left'],
    ['##...', 'one wide line to the left'],
    ['.###.', 'a wide line in the middle'],
    ['#...#', 'only the two outer sensors'],
  ])('is not seen at %s: %s', (bar) => {
    expect(LEFT_ARM[pattern(bar)]).toBe(0);
    expect(RIGHT_ARM[pattern([...bar].reverse().join(''))]).toBe(0);
  });
});
