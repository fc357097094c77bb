import { describe, expect, it } from 'vitest';
import { CARD, holdsAt } from '../../../../client/parts/glass.ts';

describe('glass', () => {
  it('has a card of the size ID-1 (ISO/IEC 7810)', () => expect(CARD).toEqual({ w: 85.6, h: 53.98 }));

  it('holdsAt: at the ratio of the card, not at a zoom of 110 % or on another screen', () => {
    const glass = { pxPerMm: 5, ratio: 2 };
    expect(holdsAt(glass, 2)).toBe(true);
    expect(holdsAt(glass, 2.2)).toBe(false);
    expect(holdsAt(glass, 1)).toBe(false);
    // A tenth of a millimetre in 100 mm is one part in a thousand.
    expect(holdsAt(glass, 2.001)).toBe(true);
    expect(holdsAt(glass, 2.003)).toBe(false);
  });
});
