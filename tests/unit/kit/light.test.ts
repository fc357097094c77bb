import { expect, test } from 'vitest';
import { luminance, timesAsLight } from '../../../shared/kit/light.ts';

// Source: WCAG 2.2, relative luminance and contrast ratio: black to white is 1 to 21.
test('luminance goes from 0 for black to 1 for white, by the weights of the three primaries', () => {
  expect(luminance('#000000')).toBe(0);
  expect(luminance('#FFFFFF')).toBeCloseTo(1, 12);
  expect(['#FF0000', '#00FF00', '#0000FF'].map((color) => luminance(color))).toEqual([
    expect.closeTo(0.2126, 12),
    expect.closeTo(0.7152, 12),
    expect.closeTo(0.0722, 12),
  ]);
});

test('timesAsLight is the contrast ratio, below 1 the other way round', () => {
  expect(timesAsLight('#FFFFFF', '#000000')).toBeCloseTo(21, 12);
  expect(timesAsLight('#000000', '#FFFFFF')).toBeCloseTo(1 / 21, 12);
  // Common practice: #767676 is the darkest grey called readable on white, at 4.54 to 1.
  expect(timesAsLight('#FFFFFF', '#767676')).toBeCloseTo(4.54, 2);
});
