import type { Kit } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { Pen } from './pen.ts';
import { atEachPace, type Pace, percentOf, RUNS, SEED, type Shares, STRAIGHT_ON, speedOf } from './shares.ts';
import { outcomes, passes, SET_UP } from './trial.ts';

/** Straight over a crossing at an angle, counted once. */
export function crossing(angle: number, pause: Mm = 0): Shares {
  const pen = new Pen().to(140, 105, angle);
  const from = pen.ahead(-70);
  pen.lines.length = 0;
  pen.to(30, 105).straight(220).to(from.x, from.y, angle).straight(140);
  return atEachPace((pace) => percentOf(countedTo(pen, pace, 1, pause), 'right'));
}

/** Straight over two crossings, both counted. */
export function twoCrossings(apart: Mm): Shares {
  const pen = new Pen().to(30, 105).straight(220).to(130, 70, 90).straight(70);
  pen.to(130 + apart, 70, 90).straight(70);
  return atEachPace((pace) => percentOf(countedTo(pen, pace, 2, 0), 'right'));
}

const countedTo = (pen: Pen, pace: Pace, count: number, pause: Mm): Map<string, number> =>
  outcomes(
    {
      ...SET_UP,
      kit: STRAIGHT_ON,
      drawing: pen.drawing(),
      pace,
      pause,
      start: { x: 50, y: 105, heading: 0 },
      seconds: 240 / speedOf(pace) + 8,
      outcome: (seen) => {
        if (!passes(seen.robot, { x: 225, y: 105 }, 0)) return undefined;
        return seen.junctions === count ? 'right' : 'miscounted';
      },
    },
    RUNS,
    SEED,
  );

/** A branch to the left, leaving at an angle from ahead, and a mark that chose it. */
export function leftBranch(angle: number): Shares {
  const pen = new Pen().to(30, 105).straight(220).to(130, 105, -angle);
  const place = pen.ahead(60);
  pen.straight(80);
  return atEachPace((pace) =>
    percentOf(
      outcomes(
        {
          ...SET_UP,
          drawing: pen.drawing(),
          pace,
          start: { x: 50, y: 105, heading: 0 },
          seconds: 240 / speedOf(pace) + 8,
          outcome: (seen) => {
            // The choice waits from the beginning and comes back: only the first junction matters here.
            if (seen.junctions === 0) seen.robot.pending = 'left';
            if (passes(seen.robot, place, -angle)) return seen.junctions === 1 ? 'right' : 'miscounted';
            return seen.robot.x > 225 ? 'straight' : undefined;
          },
        },
        RUNS,
        SEED,
      ),
      'right',
    ),
  );
}

/** Black between a mark and the crossing at which its choice must act, to the left. */
export function afterMark(after: Mm): Shares {
  const kit: Kit = {
    ...STRAIGHT_ON,
    chart: [{ word: 'CA', action: { kind: 'choose', way: 'left' } }],
  };
  const x = 30 + 50 + 11 + after + 2.5;
  const pen = new Pen().to(x, 165, -90).straight(120);
  pen
    .to(30, 105)
    .straight(50 + 11 + after + 2.5 + 60)
    .mark(50, 'CA', [5.5, 5.5]);
  return atEachPace((pace) =>
    percentOf(
      outcomes(
        {
          ...SET_UP,
          kit,
          drawing: pen.drawing(),
          pace,
          rolling: 1,
          start: { x: 50, y: 105, heading: 0 },
          seconds: 260 / speedOf(pace) + 8,
          outcome: ({ robot }) => {
            if (passes(robot, { x, y: 65 }, -90)) return 'left';
            if (robot.x > x + 30) return 'straight';
            return robot.y > 140 ? 'right' : undefined;
          },
        },
        RUNS,
        SEED,
      ),
      'left',
    ),
  );
}
