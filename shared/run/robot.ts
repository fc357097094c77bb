import type { Action, Pace } from '../documents/kit.ts';
import type { RunEventOf } from '../documents/trace.ts';
import type { Mm, MmPerSecond } from '../geometry/units.ts';
import { SENSORS } from './model.ts';
import type { Rolling } from './plant.ts';
import type { Sfc32 } from './random.ts';

/** What the controller is at. */
export const MODE = {
  follow: 0,
  /** Straight on over what may be a corner or a junction. */
  creep: 1,
  turn: 2,
  /** Straight on over white. */
  gap: 3,
  search: 4,
  /** Searching on the other side. */
  searchBack: 5,
  stopped: 6,
} as const;

export type Arm = RunEventOf<'junction'>['took'];

/** What the robot itself knows of an event; the recorder adds where it was. */
export type Note =
  | { readonly kind: 'read'; readonly word: string; readonly action?: Action; readonly already: boolean }
  | { readonly kind: 'act'; readonly action: Action; readonly reading: number }
  | {
      readonly kind: 'junction';
      readonly took: Arm;
      readonly by: RunEventOf<'junction'>['by'];
      readonly arms: Arm[];
    }
  | { readonly kind: 'corner'; readonly took: 'left' | 'right' }
  | { readonly kind: 'pace'; readonly from: Pace }
  | { readonly kind: 'wait' | 'signal'; readonly untilStep: number }
  | { readonly kind: 'turn-back' }
  | { readonly kind: 'parked' }
  /** The search found nothing. `turning`: the robot goes back by itself. */
  | { readonly kind: 'line-lost'; readonly turning: boolean };

/** An action that waits for its time. */
export interface QueuedAction {
  readonly dueStep: number;
  readonly action: Action;
  /** Which reading asked for it; −1 for the end of a pace for a time. */
  readonly reading: number;
}

/** No action is due before the run is over. */
export const NEVER = 0x7fffffff;

/** Everything that changes while a robot drives. Numbers only in the hot part, lists for rare things. */
export interface RobotState extends Rolling {
  stepCount: number;
  mode: number;
  /** The pace as commanded, as an index into PACES, and the speed that is on its way to it. */
  pace: number;
  speed: MmPerSecond;
  /** Where the line lies along the bar, positive to the left, and how fast it moves. */
  offset: Mm;
  offsetRate: MmPerSecond;
  /** What the bar sees: dark sensors, 16 being the leftmost; how much line counts, and its moment about the middle. */
  pattern: number;
  weight: number;
  moment: number;
  /** Steps in a row in which an arm was seen. */
  sightings: number;
  sawLeft: number;
  sawRight: number;
  /** 1 to the left, −1 to the right: of a turn or a search. */
  side: number;
  leastTurn: number;
  /** Whether the last turn was made at a corner, and whether the present creep began right behind it. */
  atCorner: boolean;
  withinCorner: boolean;
  /** Odometer where the present mode began, where the last turn at a corner ended, and where the last junction was passed. */
  modeFrom: Mm;
  cornerAt: Mm;
  junctionAt: Mm;
  /** Whether it has ever been on a line. */
  followed: boolean;
  heldUntilStep: number;
  dueStep: number;
  /** The arm that a mark chose for the next junction. */
  pending: Arm | undefined;
  readonly queue: QueuedAction[];

  // The band reader: the run of one class that is under way, and the class that may end it.
  runClass: number;
  runFrom: Mm;
  nextClass: number;
  nextFrom: Mm;
  inWord: boolean;
  bandCount: number;
  readonly bands: Int32Array;
  readings: number;

  /**
   * Gain, base, white and one over the span of each channel, side by side: the five grey channels, then
   * red, green and blue of the middle sensor.
   */
  readonly optics: Float64Array;
  /**
   * What no noise changes (`certain.ts`): the grey sensors (1 being the leftmost) to which bare paper is never
   * line, and what tells pixels that are nothing but black to the colour channels.
   */
  surePaper: number;
  sureBlack: number;
  greyNoise: number;
  colorNoise: number;
  noisePlace: number;

  // Hand-drawn ink: what its tolerance is multiplied by and which ink it is; how far it lies off under the
  // bar, and how that changes from a sensor to the one on its right (pixels of the field); half of what a
  // line is wider than it was meant to be, and how much narrower the bar has to be for it to look so.
  wobble: number;
  wobbleSeed: number;
  strayU: number;
  strayV: number;
  skewU: number;
  skewV: number;
  widen: Mm;
  barScale: number;

  // Chance: arms settled beforehand, and the die for the rest. The undisturbed robot has no die.
  readonly choices: readonly number[];
  choicesMade: number;
  readonly die: Sfc32 | undefined;

  /** Which way is the sheet's middle is asked only where nothing else decides a side. */
  readonly sheetMiddle: { readonly x: Mm; readonly y: Mm };
  readonly notes: Note[];
}

/** Lifts every byte but 0 to 128 or more: no pixels are surely black. */
export const NOT_SURE = 0x7f7f7f7f;

/** Channels of the optics. */
export const CHANNELS = SENSORS + 3;
/** Numbers a channel in `optics`. */
export const OPTICS = 4;
/** As long as a chart's longest word. */
const MOST_BANDS = 8;
/** mm: further back than any pause. */
const LONG_AGO = 1e6;

export interface RobotSetting {
  readonly choices: readonly number[];
  readonly die: Sfc32 | undefined;
  readonly sheetMiddle: { readonly x: Mm; readonly y: Mm };
  readonly pace: number;
}

/** Measured quantities begin as a fraction, so that engines keep them as floating-point fields from the start. */
const FRACTION = 0.5;

/** A robot with perfect sensors, not yet placed. */
export function newRobot(setting: RobotSetting): RobotState {
  return {
    x: FRACTION,
    y: FRACTION,
    cos: FRACTION,
    sin: FRACTION,
    speedLeft: FRACTION,
    speedRight: FRACTION,
    commandLeft: FRACTION,
    commandRight: FRACTION,
    scaleLeft: FRACTION,
    scaleRight: FRACTION,
    odometer: FRACTION,
    turned: FRACTION,
    stepCount: 0,
    mode: MODE.gap,
    pace: setting.pace,
    speed: FRACTION,
    offset: FRACTION,
    offsetRate: FRACTION,
    pattern: 0,
    weight: FRACTION,
    moment: FRACTION,
    sightings: 0,
    sawLeft: 0,
    sawRight: 0,
    side: 0,
    leastTurn: FRACTION,
    atCorner: false,
    withinCorner: false,
    modeFrom: FRACTION,
    cornerAt: FRACTION,
    junctionAt: FRACTION,
    followed: false,
    heldUntilStep: 0,
    dueStep: NEVER,
    pending: undefined,
    queue: [],
    runClass: -1,
    runFrom: FRACTION,
    nextClass: -1,
    nextFrom: FRACTION,
    inWord: false,
    bandCount: 0,
    bands: new Int32Array(MOST_BANDS),
    readings: 0,
    optics: new Float64Array(CHANNELS * OPTICS),
    surePaper: 0,
    sureBlack: NOT_SURE,
    greyNoise: FRACTION,
    colorNoise: FRACTION,
    noisePlace: 0,
    wobble: FRACTION,
    wobbleSeed: 0,
    strayU: FRACTION,
    strayV: FRACTION,
    skewU: FRACTION,
    skewV: FRACTION,
    widen: FRACTION,
    barScale: FRACTION,
    choices: setting.choices,
    choicesMade: 0,
    die: setting.die,
    sheetMiddle: setting.sheetMiddle,
    notes: [],
  };
}

/** Puts every measured quantity of a robot at rest. */
export function putAtRest(r: RobotState): void {
  r.speedLeft = 0;
  r.speedRight = 0;
  r.commandLeft = 0;
  r.commandRight = 0;
  r.scaleLeft = 1;
  r.scaleRight = 1;
  r.odometer = 0;
  r.turned = 0;
  r.speed = 0;
  r.offset = 0;
  r.offsetRate = 0;
  r.weight = 0;
  r.moment = 0;
  r.leastTurn = 0;
  r.modeFrom = 0;
  r.junctionAt = -LONG_AGO;
  r.cornerAt = -LONG_AGO;
  r.runFrom = 0;
  r.nextFrom = 0;
  r.greyNoise = 0;
  r.colorNoise = 0;
  r.wobble = 0;
  r.strayU = 0;
  r.strayV = 0;
  r.skewU = 0;
  r.skewV = 0;
  r.widen = 0;
  r.barScale = 1;
}
