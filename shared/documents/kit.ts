import * as z from 'zod/mini';
import { Angle, Duration, Id, Length, Ratio, ShortText, Texts } from './values.ts';

/** The four speeds, slowest first. */
export const PACES = ['creep', 'steady', 'brisk', 'fast'] as const;
export const Pace = z.enum(PACES);
export type Pace = (typeof PACES)[number];

export const Way = z.enum(['left', 'straight', 'right']);
export type Way = z.output<typeof Way>;

/** What a mark makes the robot do: a closed set with parameters. */
export const Action = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pace-by'), steps: z.int().check(z.gte(-3), z.lte(3)) }),
  z.strictObject({ kind: z.literal('pace-to'), pace: Pace }),
  z.strictObject({ kind: z.literal('pace-for'), pace: Pace, time: Duration }),
  z.strictObject({ kind: z.literal('choose'), way: Way }),
  z.strictObject({ kind: z.literal('turn-back') }),
  z.strictObject({ kind: z.literal('wait'), time: Duration }),
  z.strictObject({ kind: z.literal('signal'), time: Duration }),
  z.strictObject({ kind: z.literal('park') }),
  z.strictObject({ kind: z.literal('nothing') }),
]);

/** A word is the inks in the order in which the robot meets the bands: `CA`, `AVA`. */
export const Word = z.string().check(z.regex(/^[A-Z]{1,8}$/));

export const ChartRow = z.strictObject({ word: Word, action: Action });

export const HATCHES = ['diagonal', 'cross', 'dots', 'along'] as const;
export const Ink = z.strictObject({
  /** One capital letter, used in words and beside every band that a person must tell apart. */
  id: z.string().check(z.regex(/^[A-Z]$/)),
  name: Texts,
  color: z.string().check(z.regex(/^#[0-9A-Fa-f]{6}$/)),
  hatch: z.enum(HATCHES),
});

/** Speeds are stored like lengths, in 0.01 mm/s. */
const Speed = Length;

/** One standard deviation of each, in calm weather. */
export const Tolerances = z.strictObject({
  /** Of the start pose: beside the middle of the berth, and turned. */
  aside: Length,
  heading: Angle,
  /** Shares of a sensor's reading, and of the white level that it is calibrated on. */
  sensorGain: Ratio,
  sensorOffset: Ratio,
  calibration: Ratio,
  /** One wheel's share over, the other's under. */
  wheelMismatch: Ratio,
  commonSpeed: Ratio,
});

export const Robot = z.strictObject({
  name: ShortText,
  /** Outline: across the wheels, and front to back; the axle sits `axleToRear` before the rear end. */
  width: Length,
  length: Length,
  axleToRear: Length,
  wheelTrack: Length,
  /** The sensor bar's distance ahead of the axle, and the distance between its five sensors. */
  barAhead: Length,
  sensorPitch: Length,
  paces: z.strictObject({ creep: Speed, steady: Speed, brisk: Speed, fast: Speed }),
  startPace: Pace,
  topWheelSpeed: Speed,
  unmarkedJunction: z.enum(['any', 'straight']),
  looseEnd: z.enum(['stop', 'turn-back']),
  /** From a mark being understood to its action. */
  actsAfter: Duration,
  /** What the band reader takes for one band. */
  bandUnit: Length,
  /** How much robots of this kind differ: absent where it is the usual. */
  tolerances: z.optional(Tolerances),
});

/** The trade's rules of thumb, as numbers of this kit. All lengths between centre lines unless said. */
export const DrawingRules = z.strictObject({
  lineWidth: z.strictObject({ nominal: Length, least: Length, most: Length }),
  corner: z.strictObject({ untidyBelow: Angle, mayStopBelow: Angle }),
  curveRadius: Length,
  clearance: Length,
  sheetMargin: Length,
  /** Paper ahead of a loose end to which robots come at pace fast; absent where it is the room for an action. */
  endFromEdge: z.optional(Length),
  beforeMark: Length,
  afterMark: Length,
  /** A line that bends with this radius or more counts as straight where a mark wants straight line. */
  straightFrom: Length,
  /** Plain line after a mark until its action must be ready, by the fastest pace possible there. */
  actionReady: z.strictObject({ creep: Length, steady: Length, brisk: Length, fast: Length }),
  bands: z.strictObject({
    least: z.int(),
    most: z.int(),
    shortest: Length,
    longest: Length,
    tidyShortest: Length,
    tidyLongest: Length,
    equalWithin: Ratio,
    gap: Length,
    overlap: Length,
    /** A single ink from `unknownFrom` to `colouredFrom` is an unknown mark; longer is a coloured stretch. */
    unknownFrom: Length,
    colouredFrom: Length,
  }),
  junction: z.strictObject({ armsApart: Angle, armLength: Length, snap: Length }),
  /** How many times as light as the line every ink is; absent where the usual does. */
  inkLighter: z.optional(Ratio),
});

export const Kit = z.strictObject({
  version: z.literal(1),
  id: Id,
  name: ShortText,
  robot: Robot,
  line: z.strictObject({ color: z.string().check(z.regex(/^#[0-9A-Fa-f]{6}$/)) }),
  /** What its robots are calibrated on, beside bare paper; absent where it is the usual square. */
  patch: z.optional(
    z.strictObject({ shape: z.enum(['square', 'round']), size: Length, note: z.optional(ShortText) }),
  ),
  inks: z.array(Ink).check(z.minLength(1), z.maxLength(8)),
  equalNeighbours: z.boolean(),
  chart: z.array(ChartRow).check(z.maxLength(200)),
  rules: DrawingRules,
});

export type Action = z.output<typeof Action>;
export type ChartRow = z.output<typeof ChartRow>;
export type Hatch = (typeof HATCHES)[number];
export type Ink = z.output<typeof Ink>;
export type Tolerances = z.output<typeof Tolerances>;
export type Robot = z.output<typeof Robot>;
export type DrawingRules = z.output<typeof DrawingRules>;
export type Kit = z.output<typeof Kit>;

/** Chosen: on a line of black marker, inks from a deep violet on. */
const USUAL_INK_LIGHTER = 2;
export const inkLighterOf = ({ inkLighter = USUAL_INK_LIGHTER }: DrawingRules): number => inkLighter;

/** All chosen. */
export const USUAL_TOLERANCES: Tolerances = {
  aside: 0.8,
  heading: (2.5 * Math.PI) / 180,
  sensorGain: 0.06,
  sensorOffset: 0.015,
  calibration: 0.015,
  wheelMismatch: 0.012,
  commonSpeed: 0.03,
};
export const tolerancesOf = ({ tolerances = USUAL_TOLERANCES }: Robot): Tolerances => tolerances;

export type Patch = NonNullable<Kit['patch']>;

/** Chosen: a square that covers a small robot's whole sensor bar at any angle. */
const USUAL_PATCH: Patch = { shape: 'square', size: 45 };
export const patchOf = ({ patch = USUAL_PATCH }: Kit): Patch => patch;

export const endFromEdgeOf = ({ endFromEdge, actionReady }: DrawingRules): number =>
  endFromEdge ?? actionReady.fast;

/** What the robot does on reading `word`, or undefined where the chart has no such word. */
export function actionOf(kit: Kit, word: string): Action | undefined {
  return kit.chart.find((row) => row.word === word)?.action;
}

/** The same bands met from the other side. */
export function reversed(word: string): string {
  return [...word].reverse().join('');
}
