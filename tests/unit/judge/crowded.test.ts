import { describe, expect, it } from 'vitest';
import { readyChallenge } from '../../../server/rooms/ready.ts';
import { Design } from '../../../shared/documents/design.ts';
import { parseDocument } from '../../../shared/documents/values.ts';
import { CROWD_LIMITS } from '../../../shared/judge/crowded.ts';
import { judging } from '../../../shared/judge/judge.ts';
import { RUN_RULES } from '../../../shared/run/model.ts';

/** Drawings that the schema accepts and that are made to keep the judge busy. Files are in 0.01 mm. */

type Place = readonly [x: number, y: number];
const CHALLENGE = readyChallenge('first-line')!;
const [RIGHT, DOWN] = [CHALLENGE.sheet.w * 100, CHALLENGE.sheet.h * 100];
const FURTHEST = 800_000;

const line = (id: string, [from, ...to]: readonly Place[], { bulge = 0, width = 500 } = {}) => ({
  id,
  width,
  from: { x: from![0], y: from![1] },
  pieces: to.map(([x, y]) => ({ to: { x, y }, bulge })),
});
const lines = (count: number, make: (i: number) => object) =>
  Array.from({ length: count }, (_, i) => make(i));
const zigzag = (pieces: number, [left, right]: Place, [top, bottom]: Place) =>
  line(
    'z',
    lines(pieces + 1, (i) => [
      i % 2 ? right : left,
      Math.round(top + ((bottom - top) * i) / pieces),
    ]) as unknown as Place[],
  );
/** `n` lines across and `n` down. */
const grid = (n: number) =>
  lines(n, (i) => {
    const y = Math.round(1000 + ((DOWN - 2000) * i) / (n - 1));
    return line(`h${i}`, [
      [1000, y],
      [RIGHT - 1000, y],
    ]);
  }).concat(
    lines(n, (i) => {
      const x = Math.round(1000 + ((RIGHT - 2000) * i) / (n - 1));
      return line(`v${i}`, [
        [x, 1000],
        [x, DOWN - 1000],
      ]);
    }),
  );
const judged = (drawn: object[], marks: object[] = []) => {
  const design = parseDocument(Design, { version: 1, drawing: { lines: drawn, marks } });
  if (!design.ok) throw new Error(JSON.stringify(design.problems));
  const steps = judging(CHALLENGE, design.value, 'entry');
  for (let robots = 0, done = 0; ; done++) {
    const step = steps.next();
    if (step.done) return { ...step.value, robots, steps: done };
    if (step.value === 'robot') robots++;
  }
};

describe('the largest drawings that the schema accepts', () => {
  it.each([
    ['100 lines across and 100 down', grid(100), 'too-much-line'],
    ['12 lines across and 12 down', grid(12), 'too-many-meetings'],
    ['a zigzag of 500 pieces over the sheet', [zigzag(500, [1000, RIGHT], [1000, DOWN])], 'too-much-line'],
    ['one far beyond it', [zigzag(500, [-FURTHEST, FURTHEST], [-FURTHEST, FURTHEST])], 'too-much-line'],
    [
      '200 lines of 8 m width',
      lines(200, (i) =>
        line(
          `w${i}`,
          [
            [0, i],
            [RIGHT, i],
          ],
          { width: FURTHEST },
        ),
      ),
      'too-much-line',
    ],
    [
      '200 lines on one another',
      lines(200, (i) =>
        line(`o${i}`, [
          [4000, 9000],
          [6000, 9000 + (i % 2)],
        ]),
      ),
      'too-many-meetings',
    ],
    [
      '200 circles in one point',
      lines(200, (i) =>
        line(
          `c${i}`,
          [
            [9000 + i, 9000],
            [9001 + i, 9000],
            [9000 + i, 9001],
          ],
          { bulge: 12 },
        ),
      ),
      'too-many-meetings',
    ],
    [
      '200 curves around one another',
      lines(200, (i) =>
        line(
          `a${i}`,
          [
            [4000 + i, 9000],
            [6000 - i, 9001],
          ],
          { bulge: 1 },
        ),
      ),
      'too-many-meetings',
    ],
  ])('%s are refused before anything is driven', (_, drawn, code) => {
    const { refusal, steps, verdict } = judged(drawn);
    expect([refusal?.code, steps, verdict.total]).toEqual([code, 0, 0]);
  });

  it('near the limits are driven no more often than any other', () => {
    const n = Math.floor(Math.sqrt(CROWD_LIMITS.meetings));
    const { refusal, robots, traces } = judged(grid(n - 1));
    expect(refusal).toBeUndefined();
    expect(robots).toBeLessThanOrEqual(20);
    expect(traces.length).toBeLessThanOrEqual(RUN_RULES.mostIdealRuns);
    expect(traces.every((trace) => (trace.events.at(-1)?.t ?? 0) <= CHALLENGE.limits.time)).toBe(true);
  });

  it('of 500 tiny pieces on one line is one that is driven', () => {
    expect(judged([zigzag(500, [9000, 9001], [9000, 9500])]).refusal).toBeUndefined();
  });

  it('of 150 strokes end to end, back to the first, is no more refused than in one stroke', () => {
    const corner = (i: number): Place => {
      const along = Math.min(i % 150, 150 - (i % 150));
      return [9000 + 20 * along, i % 150 < 75 ? 9000 : 9000 + 10 * along];
    };
    const strokes = lines(150, (i) => line(`s${i}`, [corner(i), corner(i + 1)]));
    expect(judged(strokes).refusal).toBeUndefined();
  });
});
