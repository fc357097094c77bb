import { describe, expect, it } from 'vitest';
import { wording } from '../../../shared/wording/wording.ts';

describe('numbers in English', () => {
  const { numbers } = wording('en');
  it('says lengths in mm, from 100 mm on in cm', () => {
    expect([0, 7.25, 42.4, 99.4, 100, 154].map((mm) => numbers.length(mm))).toEqual([
      '0 mm',
      '7.3 mm',
      '42 mm',
      '99 mm',
      '10 cm',
      '15.4 cm',
    ]);
  });
  it('never says "-0"', () => expect(numbers.short(-0.04, 1)).toBe('0'));
  it('tells a value from another with as many places as that takes', () => {
    expect(numbers.beside(19.96, 20, numbers.length)).toBe('19.96 mm');
    expect(numbers.beside(12, 20, numbers.length)).toBe('12 mm');
  });
  it('lists with "and" and "or"', () => {
    expect(numbers.list([])).toBe('');
    expect(numbers.list(['a'])).toBe('a');
    expect(numbers.list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(numbers.list(['a', 'b', 'c'], 'or')).toBe('a, b or c');
  });
  it('counts one as one, all else as many', () => {
    expect([0, 1, 2].map((n) => numbers.counted(n, 'mark', 'marks'))).toEqual([
      '0 marks',
      '1 mark',
      '2 marks',
    ]);
  });
});

// An inch is 25.4 mm (international yard and pound agreement, 1959).
describe('numbers in inches', () => {
  const { numbers, print } = wording('en', 'in');
  it('says lengths in inches, short ones to a hundredth', () => {
    expect([25.4, 6.35, 120.65, 254].map((mm) => numbers.length(mm))).toEqual([
      '1 in',
      '0.25 in',
      '4.8 in',
      '10 in',
    ]);
    expect(numbers.beside(25.3, 25.4, numbers.length)).toBe('0.996 in');
  });
  it('leaves no unit set behind', () => {
    numbers.length(10);
    expect(wording('en').numbers.length(254)).toBe('25.4 cm');
  });
  it('leaves words without lengths as they are', () =>
    expect(print.slips).toEqual(wording('en').print.slips));
});
