import { describe, expect, test } from 'vitest';
import { oddsLines, steadinessLines } from '../../../../server/commands/outlook-report.ts';
import { wording } from '../../../../shared/wording/wording.ts';

const words = wording('en');
const at = { x: 160.4, y: 104.6 };

describe('oddsLines', () => {
  test('says endings, what is left open, arrival in time, and where that comes from', () => {
    const arms = [
      { way: 'left', chance: 0.5, finish: 1 },
      { way: 'right', chance: 0.5, finish: 0 },
    ] as const;
    const lines = oddsLines(
      [
        {
          start: 'start',
          basis: 'runs',
          endings: [
            { ending: 'finished', at, probability: 0.5 },
            { ending: 'lost', at, probability: 0.5 },
          ],
          finish: 0.5,
          endless: 0,
          inTime: { limit: 60, finish: 0.5, meanTime: 6.24 },
          open: [{ at, heading: { x: 1, y: 0 }, met: 1, arms: [...arms] }],
        },
      ],
      words,
    );
    expect(lines).toEqual([
      'Odds from the start: 50 % arrived and 50 % lost the line',
      '  At 160, 105 it decides by itself (100 % come there): left 50 % (all of them arrive) and right 50 % (none of them arrives)',
      '  50 % arrive within 60 s, after 6.2 s on average',
      '  Found by driving: the robot does not do what lines and marks say.',
    ]);
  });
});

describe('steadinessLines', () => {
  test('gathers robots that stray for one reason at one mark', () => {
    const stray = { start: 'start', cause: 'mark-missed', at, mark: 'park' } as const;
    const lines = steadinessLines(
      {
        weather: 'stormy',
        same: 17,
        of: 20,
        interval: { low: 0.64, high: 0.948 },
        strays: [
          { seed: 3, ...stray },
          { seed: 5, start: 'start', cause: 'lost', at: { x: 20, y: 30 } },
          { seed: 9, ...stray },
        ],
      },
      words,
    );
    expect(lines).toEqual([
      'Steadiness: 17 of 20 robots do as the undisturbed one in a storm; of many, 64 to 95 % would',
      '  2 robots overlooked a mark (mark park) near 160, 105',
      '  1 robot lost the line near 20, 30',
    ]);
  });
});
