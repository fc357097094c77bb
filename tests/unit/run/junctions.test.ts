import { describe, expect, it } from 'vitest';
import { drive } from '../../../shared/run/drive.ts';
import { LEFT_ARM, RIGHT_ARM } from '../../../shared/run/junctions.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import { world } from './worlds.ts';

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

describe('passing two corners that are close to one another', () => {
  const afterCorner = (apart: number): Pen => new Pen().to(20, 105).straight(110).turn(90).straight(apart);
  const seen = (pen: Pen) =>
    drive(world(pen.drawing()), { ...UNDISTURBED, start: 'start', limit: 8 }).events.flatMap((event) =>
      event.kind === 'corner' || event.kind === 'junction' ? [`${event.kind} ${event.took}`] : [],
    );

  it.each([12, 13, 14, 15])('%i mm apart sees two corners and no junction', (apart) => {
    expect(seen(afterCorner(apart).turn(-90).straight(90))).toEqual(['corner right', 'corner left']);
  });

  it('that turn the same way sees both as well', () => {
    expect(seen(afterCorner(30).turn(90).straight(90))).toEqual(['corner right', 'corner right']);
  });

  it('still sees the junction where the line ends on another one 25 mm on', () => {
    const [first, second] = seen(afterCorner(25).to(70, 130).straight(120));
    expect(first).toBe('corner right');
    expect(second).toMatch(/^junction/);
  });
});
