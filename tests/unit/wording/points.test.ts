import { describe, expect, test } from 'vitest';
import { wording } from '../../../shared/wording/wording.ts';
import { SHEET } from '../goals/hand-made.ts';

const { points } = wording('en');
const challenge = {
  sheet: SHEET,
  goals: [{ id: 'end', formula: { kind: 'finish' as const }, must: true, weight: 1 }],
};

describe('lines of points', () => {
  test('a goal is named, and its margin says why', () => {
    const line = { reason: 'goal:end', got: 60, of: 60 };
    expect(points.reason(line, challenge)).toBe('Reach the Lighthouse');
    expect(points.because(line)).toBeUndefined();
  });
  test('steadiness says how many robots made it', () => {
    const line = { reason: 'steadiness', got: 18, of: 20, measured: 18, allowed: 20 };
    expect(points.reason(line, challenge)).toBe('robots that make it');
    expect(points.because(line)).toBe('18 of 20 slightly different robots do as the undisturbed one.');
    expect(points.got(line)).toBe('18 of 20');
  });
  test('thrift says what the drawing costs beside the best', () => {
    const line = { reason: 'thrift', got: 15, of: 20, measured: 400.4, allowed: 300 };
    expect(points.reason(line, challenge)).toBe('little ink');
    expect(points.because(line)).toBe(
      'The drawing costs 400 (mm of line, and 20 a mark); the best we know costs 300.',
    );
    expect(points.because({ ...line, measured: 280 })).toBe(
      'The drawing costs 280 (mm of line, and 20 a mark); the best we knew cost 300.',
    );
    expect(points.because({ ...line, measured: 300 })).toBe(
      'The drawing costs 300 (mm of line, and 20 a mark), as the best we know.',
    );
    // Before the goals are met a cheap drawing is no record.
    expect(points.because({ ...line, measured: 280, withheld: true })).toMatch(
      /; the best we know costs 300\. It/,
    );
  });
  test('what is withheld says when it counts', () => {
    const line = { reason: 'steadiness', got: 0, of: 20, measured: 20, allowed: 20, withheld: true as const };
    expect(points.because(line)).toMatch(/ It counts once every goal that must be met is met/);
  });
  test('a reason that this page does not know is said as it is', () => {
    expect(points.reason({ reason: 'weather', got: 1, of: 2 }, challenge)).toBe('weather');
  });
});
