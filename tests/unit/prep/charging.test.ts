import { expect, test } from 'vitest';
import { minutesToFull } from '../../../shared/prep/charging.ts';

/*
 * By hand, 600 mAh at 300 mA (two hours at constant current for all of it, 120 min): to 85 % 102 min; then
 * what is missing falls with e^(-t / 18 min) to 3 %: 18 ln(1/0.03) = 63.12 min. In all 165.12, 2.75 hours;
 * the trade says two to three (Battery University BU-409, table 2; from memory).
 */
test('an empty battery at half its capacity an hour takes two and three quarter hours', () => {
  expect(minutesToFull({ capacity: 600, charge: 0 }, 300)).toBe(166);
});

test('twice the current takes half the time', () => {
  expect(minutesToFull({ capacity: 600, charge: 0 }, 600)).toBe(83);
});

// By hand: from 50 % 42 minutes at constant current, then the same 63.12.
test('a half-full battery takes 105.12 minutes, rounded up', () => {
  expect(minutesToFull({ capacity: 600, charge: 0.5 }, 300)).toBe(106);
});

// By hand: at 92.5 % half of the last stage is missing; 18 ln(0.5/0.03) = 50.64.
test('a battery in the second stage takes only what is left of it', () => {
  expect(minutesToFull({ capacity: 600, charge: 0.925 }, 300)).toBe(51);
});

test('a full battery takes no time', () => {
  expect(minutesToFull({ capacity: 600, charge: 1 }, 300)).toBe(0);
});
