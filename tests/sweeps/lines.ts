import type { Kit } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { TOLERANCES } from '../../shared/run/model.ts';
import { Pen } from './pen.ts';
import {
  atEachPace,
  merged,
  OTHER_SEED,
  type Pace,
  passedOrMistaken,
  percentOf,
  RUNS,
  SEED,
  type Shares,
  sharesOf,
  speedOf,
} from './shares.ts';
import { outcomes, passes, SET_UP, type SetUp, SWEEP_KIT, SWEEP_PACES } from './trial.ts';

/** Passed without mistaking the corner for a junction, and passed at all. */
export function corner(interior: number, pause: Mm = 0): { clean: Shares; passed: Shares } {
  const found = SWEEP_PACES.map((pace) =>
    merged([-1, 1].map((side) => cornerRuns(interior, pause, side, pace))),
  );
  return { clean: sharesOf(found, 'clean'), passed: sharesOf(found, 'clean', 'junction') };
}

/** The robot that was driven over corners drawn by hand. */
const BY_HAND: Kit = {
  ...SWEEP_KIT,
  robot: { ...SWEEP_KIT.robot, paces: { creep: 15, steady: 35, brisk: 60, fast: 85 } },
};

/** Passed clean with a wobble of 0.35 mm and lines up to 0.45 mm wider or narrower, at 15, 35 and 85 mm/s. */
export function cornerByHand(interior: number): Shares {
  const change = { kit: BY_HAND, ink: 0.35 / TOLERANCES.inkWobble };
  return atEachPace((pace) =>
    percentOf(merged([-1, 1].map((side) => cornerRuns(interior, 0, side, pace, change))), 'clean'),
  );
}

function cornerRuns(
  interior: number,
  pause: Mm,
  side: number,
  pace: Pace,
  change: Partial<SetUp> = {},
): Map<string, number> {
  const pen = new Pen()
    .to(40, 125)
    .straight(100)
    .turn(side * (180 - interior));
  const place = pen.ahead(48);
  const heading = pen.heading;
  const drawing = pen.straight(75).drawing();
  return outcomes(
    {
      ...SET_UP,
      drawing,
      pace,
      pause,
      ...change,
      start: { x: 60, y: 125, heading: 0 },
      seconds: 160 / Math.min(speedOf(pace), BY_HAND.robot.paces[pace]) + 8,
      outcome: (seen) => {
        if (passes(seen.robot, place, heading)) return passedOrMistaken(seen);
        return seen.robot.x < 60 && seen.robot.cos < -0.5 ? 'back' : undefined;
      },
    },
    RUNS / 2,
    side > 0 ? SEED : OTHER_SEED,
  );
}

/** Follows a line to near its end. */
function cleanTo(pen: Pen, start: SetUp['start'], length: Mm, pace: Pace, runs = RUNS, seed = SEED) {
  const place = pen.ahead(-12);
  const { heading } = pen;
  return outcomes(
    {
      ...SET_UP,
      drawing: pen.drawing(),
      pace,
      start,
      seconds: length / speedOf(pace) + 8,
      outcome: (seen) => (passes(seen.robot, place, heading) ? passedOrMistaken(seen) : undefined),
    },
    runs,
    seed,
  );
}

export function halfTurn(radius: Mm): Shares {
  return atEachPace((pace) => {
    const sides = [-1, 1].map((side) => {
      const pen = new Pen()
        .to(40, 130)
        .straight(100)
        .arc(radius, side * 180)
        .straight(80);
      return cleanTo(pen, { x: 60, y: 130, heading: 0 }, 180 + 6 * radius, pace, RUNS / 2);
    });
    return percentOf(merged(sides), 'clean');
  });
}

export function sBend(radius: Mm): Shares {
  const pen = new Pen().to(20, 130).straight(60).arc(radius, 60).arc(radius, -120);
  pen.arc(radius, 120).arc(radius, -60).straight(60);
  const start = { x: 40, y: 130, heading: 0 };
  return atEachPace((pace) => percentOf(cleanTo(pen, start, 300, pace), 'clean'));
}

export function lineWidth(width: Mm): Shares {
  const pen = new Pen(width).to(30, 40).straight(100).turn(90).straight(60).arc(20, 180).straight(40);
  const start = { x: 50, y: 40, heading: 0 };
  return atEachPace((pace) => percentOf(cleanTo(pen, start, 280, pace), 'clean'));
}

export function parallel(apart: Mm): Shares {
  const pen = new Pen().to(30, 100).straight(200);
  pen.to(80, 100 + apart).straight(100);
  return atEachPace((pace) => percentOf(cleanPast(pen, { x: 210, y: 100 }, pace), 'clean'));
}

export function lineGap(gap: Mm): Shares {
  const pen = new Pen().to(30, 100).straight(80);
  // Round ends stick out by half the width.
  pen.to(110 + gap + 5, 100).straight(110);
  return atEachPace((pace) => percentOf(cleanPast(pen, { x: 190, y: 100 }, pace), 'clean'));
}

const cleanPast = (pen: Pen, place: { x: Mm; y: Mm }, pace: Pace): Map<string, number> =>
  outcomes(
    {
      ...SET_UP,
      drawing: pen.drawing(),
      pace,
      start: { x: 50, y: 100, heading: 0 },
      seconds: 200 / speedOf(pace) + 8,
      outcome: (seen) => (passes(seen.robot, place, 0) ? passedOrMistaken(seen) : undefined),
    },
    RUNS,
    SEED,
  );

export function twoCorners(apart: Mm): Shares {
  const pen = new Pen().to(30, 80).straight(100).turn(90).straight(apart).turn(-90).straight(90);
  const start = { x: 50, y: 80, heading: 0 };
  return atEachPace((pace) => percentOf(cleanTo(pen, start, 240, pace), 'clean'));
}
