import { describe, expect, it } from 'vitest';
import { datesIn, dateTag } from '../../../../client/parts/dates.ts';

describe('dateTag', () => {
  it('takes the region that the browser asks for in the language of the page', () => {
    expect(dateTag('en', ['es-MX', 'en-GB', 'en-US'])).toBe('en-GB');
    expect(dateTag('es', ['en-GB', 'es-MX'])).toBe('es-MX');
  });
  it('is the language alone where the browser does not ask for it', () =>
    expect(dateTag('es', ['en-GB'])).toBe('es'));
});

// CLDR's medium date: day first in en-GB and es, month first in en-US.
describe('datesIn', () => {
  const noon = Date.UTC(2026, 2, 4, 12);
  it('writes a day in the order of the region', () => {
    expect(datesIn('en-GB').day(noon)).toBe('4 Mar 2026');
    expect(datesIn('en-US').day(noon)).toBe('Mar 4, 2026');
    expect(datesIn('es').day(noon)).toBe('4 mar 2026');
  });
  it('keeps a named day wherever the device is, and what is no date as it is', () => {
    expect(datesIn('en-GB').dayOf('2026-03-04')).toMatch(/4 Mar/);
    expect(datesIn('es').dayOf('2026-03-04')).toMatch(/4 mar/);
    expect(datesIn('es').dayOf('soon')).toBe('soon');
  });
});
