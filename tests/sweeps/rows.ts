import type { Kit } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { Ambient } from '../../shared/run/world.ts';
import { Pen } from './pen.ts';
import { outcomes, passes, SET_UP, type Seen, type SetUp, SWEEP_KIT, SWEEP_PACES } from './trial.ts';

/**
 * Sweeps of one quantity, 200 robots a pace. A sweep gives for every value the shares, in percent, at
 * creep, steady and fast.
 */
export type Shares = readonly [creep: number, steady: number, fast: number];

type Pace = SetUp['pace'];

const RUNS = 200;
const SEED = 1000;
const OTHER_SEED = 5000;

/** Share of robots, in percent, for each pace. */
function atEachPace(share: (pace: Pace) => number): Shares {
  const [creep, steady, fast] = SWEEP_PACES.map(share);
  return [creep!, steady!, fast!];
}

const percentOf = (found: ReadonlyMap<string, number>, ...outcome: string[]): number => {
  const all = [...found.values()].reduce((sum, n) => sum + n, 0);
  return (100 * outcome.reduce((sum, name) => sum + (found.get(name) ?? 0), 0)) / all;
};

const merged = (maps: readonly ReadonlyMap<string, number>[]): Map<string, number> => {
  const sum = new Map<string, number>();
  for (const map of maps) for (const [name, n] of map) sum.set(name, (sum.get(name) ?? 0) + n);
  return sum;
};

/** The same robot, going straight on at junctions that no mark decides. */
const STRAIGHT_ON: Kit = {
  ...SWEEP_KIT,
  robot: { ...SWEEP_KIT.robot, unmarkedJunction: 'straight' },
};

const speedOf = (pace: Pace): number => SWEEP_KIT.robot.paces[pace];
const passedOrMistaken = (seen: Seen): string => (seen.junctions > 0 ? 'junction' : 'clean');

/** Passed without mistaking the corner for a junction, and passed at all. */
export function corner(interior: number, pause: Mm = 0): { clean: Shares; passed: Shares } {
  const found = SWEEP_PACES.map((pace) =>
    merged([-1, 1].map((side) => cornerRuns(interior, pause, side, pace))),
  );
  const [creep, steady, fast] = found;
  const of = (...names: string[]): Shares => [
    percentOf(creep!, ...names),
    percentOf(steady!, ...names),
    percentOf(fast!, ...names),
  ];
  return { clean: of('clean'), passed: of('clean', 'junction') };
}

function cornerRuns(interior: number, pause: Mm, side: number, pace: Pace): Map<string, number> {
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
      start: { x: 60, y: 125, heading: 0 },
      seconds: 160 / speedOf(pace) + 8,
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

export function twoCorners(apart: Mm): Shares {
  const pen = new Pen().to(30, 80).straight(100).turn(90).straight(apart).turn(-90).straight(90);
  const start = { x: 50, y: 80, heading: 0 };
  return atEachPace((pace) => percentOf(cleanTo(pen, start, 240, pace), 'clean'));
}

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

const WORDS = ['CA', 'AVC', 'CCV', 'VAAC'];

interface MarkSetUp {
  /** Plain line before the mark. */
  readonly before: Mm;
  readonly feature: 'corner' | 'arc';
  readonly length: (index: number) => Mm;
  readonly gap: Mm;
  readonly width: Mm;
  readonly ambient: Ambient;
}

const PLAIN_MARK: MarkSetUp = {
  before: 40,
  feature: 'corner',
  length: () => 5.5,
  gap: 0,
  width: 5,
  ambient: SET_UP.ambient,
};

/** `read`: exactly this word, once. `tracked`: got to the end whatever was read. */
export function marks(change: Partial<MarkSetUp>): { read: Shares; tracked: Shares } {
  const setUp = { ...PLAIN_MARK, ...change };
  const [creep, steady, fast] = SWEEP_PACES.map((pace) =>
    merged(WORDS.map((word) => markRuns(word, setUp, pace))),
  );
  const of = (...names: string[]): Shares => [
    percentOf(creep!, ...names),
    percentOf(steady!, ...names),
    percentOf(fast!, ...names),
  ];
  return { read: of('right'), tracked: of('right', 'missed', 'wrong') };
}

function markRuns(word: string, setUp: MarkSetUp, pace: Pace): Map<string, number> {
  const lengths = [...word].map((_, i) => setUp.length(i));
  const extent = lengths.reduce((sum, length) => sum + length, 0) + setUp.gap * (word.length - 1);
  const pen = new Pen(setUp.width).to(40, 40);
  const lead = setUp.feature === 'corner' ? 90 : 60 + (20 * Math.PI) / 2;
  if (setUp.feature === 'corner') pen.straight(90).turn(90);
  else pen.straight(60).arc(20, 90);
  pen.straight(setUp.before + extent + 60).mark(lead + setUp.before, word, lengths, setUp.gap);
  const place = pen.ahead(-14);
  return outcomes(
    {
      ...SET_UP,
      drawing: pen.drawing(),
      pace,
      ambient: setUp.ambient,
      start: { x: 60, y: 40, heading: 0 },
      seconds: 260 / speedOf(pace) + 8,
      outcome: (seen) => {
        if (!passes(seen.robot, place, 90)) return undefined;
        if (seen.words.length === 0) return 'missed';
        return seen.words.length === 1 && seen.words[0] === word ? 'right' : 'wrong';
      },
    },
    RUNS / WORDS.length,
    SEED,
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
