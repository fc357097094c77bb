import { describe, expect, test } from 'vitest';
import { CAUSES, type Odds, WEATHERS } from '../../../shared/documents/outlook.ts';
import { wording } from '../../../shared/wording/wording.ts';

const { outlook } = wording('en');

const odds = (over: Partial<Odds>): Odds => ({
  start: 'start',
  basis: 'track',
  endings: [],
  finish: 0,
  endless: 0,
  inTime: { limit: 60, finish: 0 },
  open: [],
  ...over,
});
const at = { x: 0, y: 0 };

describe('chances', () => {
  test('in per cent, and never as sure as they are not', () => {
    expect([0, 1 / 3, 0.5, 1].map(outlook.percent)).toEqual(['0 %', '33.3 %', '50 %', '100 %']);
    expect(outlook.percent(0.0001)).toBe('less than 0.1 %');
    expect(outlook.percent(0.9999)).toBe('more than 99.9 %');
  });

  test('endings of one kind are said together, what is sure without a number', () => {
    const two = odds({
      endings: [
        { ending: 'stopped', at, probability: 0.25 },
        { ending: 'finished', at, probability: 0.5 },
        { ending: 'stopped', at, probability: 0.25 },
      ],
    });
    expect(outlook.endings(two)).toBe('50 % stopped where the line ends and 50 % arrived');
    expect(outlook.endings(odds({ endings: [{ ending: 'finished', at, probability: 1 }] }))).toBe('arrived');
    expect(outlook.endings(odds({ endless: 1 }))).toBe('goes round for ever');
  });

  test('a mean time is always said with its limit, and only where someone arrives', () => {
    expect(outlook.inTime(odds({ inTime: { limit: 60, finish: 0.5, meanTime: 6.24 } }))).toBe(
      '50 % arrive within 60 s, after 6.2 s on average',
    );
    expect(outlook.inTime(odds({ inTime: { limit: 90, finish: 1, meanTime: 8 } }))).toBe(
      'All arrive within 90 s, after 8 s on average',
    );
    expect(outlook.inTime(odds({}))).toBeUndefined();
  });

  test('a junction tells what each way is worth', () => {
    const arms = [
      { way: 'left', chance: 0.5, finish: 1 },
      { way: 'right', chance: 0.5, finish: 0 },
    ] as const;
    const said = outlook.arms({ at, heading: { x: 1, y: 0 }, met: 1, arms: [...arms] });
    expect(said).toBe('left 50 % (all of them arrive) and right 50 % (none of them arrives)');
  });
});

describe('robots', () => {
  test('so many make it, in this weather, and what that says of many', () => {
    const steadiness = {
      weather: 'breezy',
      same: 18,
      of: 20,
      interval: { low: 0.699, high: 0.972 },
    } as const;
    expect(outlook.steady({ ...steadiness, strays: [] })).toBe(
      '18 of 20 robots do as the undisturbed one in a breeze; of many, 70 to 97 % would',
    );
  });

  test('every cause and every weather has words of its own', () => {
    expect(new Set(CAUSES.map(outlook.cause)).size).toBe(CAUSES.length);
    expect(new Set(WEATHERS.map(outlook.weather)).size).toBe(WEATHERS.length);
  });
});
