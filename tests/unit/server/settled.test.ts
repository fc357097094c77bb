import { expect, it } from 'vitest';
import { timeLeft } from '../../../server/settled.ts';

it('timeLeft gives what is left of one limit until a part of it has passed, never less than nothing', () => {
  let now = 5000;
  const left = timeLeft(1000, () => now);
  expect([left(0.4), left(1)]).toEqual([400, 1000]);
  now = 5100;
  expect([left(0.4), left(1)]).toEqual([300, 900]);
  now = 6200;
  expect([left(0.4), left(1)]).toEqual([0, 0]);
});
