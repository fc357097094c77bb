import { describe, expect, it } from 'vitest';
import { inkReflectance } from '../../../shared/run/reflectance.ts';

describe('inkReflectance', () => {
  // Source: IEC 61966-2-1, the sRGB transfer function, here by Math.pow; light becomes 0.04 + 0.81 · light.
  it('follows the sRGB transfer function at every channel value', () => {
    for (let value = 0; value < 256; value++) {
      const s = value / 255;
      const linear = s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
      const hex = value.toString(16).padStart(2, '0');
      const [red, green, blue] = inkReflectance(`#${hex}00ff`);
      expect(red).toBeCloseTo(0.04 + 0.81 * linear, 12);
      expect(green).toBe(0.04);
      expect(blue).toBeCloseTo(0.85, 12);
    }
  });
});
