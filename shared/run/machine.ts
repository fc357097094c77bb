import { type Action, actionOf, type Kit, PACES, type Tolerances, tolerancesOf } from '../documents/kit.ts';
import { expMinus } from '../geometry/exact-math.ts';
import type { Mm, MmPerSecond, Seconds } from '../geometry/units.ts';
import { MODEL, STEP } from './model.ts';
import { BLACK, kitReflectances, WHITE } from './reflectance.ts';

/** How a pair of motors answers and rolls; what `roll` needs. */
export interface Drivetrain {
  readonly step: Seconds;
  /** Share of a speed error that is left after one step, and its travel a unit of error, s. */
  readonly lagLeft: number;
  readonly lagTravel: Seconds;
  /** One over the distance between the wheels. */
  readonly perTrack: number;
}

/** A kit's robot, worked out for the simulation step. */
export interface Machine extends Drivetrain {
  readonly halfTrack: Mm;
  readonly barAhead: Mm;
  readonly pitch: Mm;
  readonly topWheelSpeed: MmPerSecond;
  /** Speeds of PACES. */
  readonly paces: Float64Array;
  readonly startPace: number;
  /** How far to creep over a corner or junction: geometry, until the axle stands where the bar saw it. */
  readonly creep: Mm;
  /** How far after a junction further ones are ignored. */
  readonly pause: Mm;
  readonly straightAtJunctions: boolean;
  readonly turnsBackAtEnds: boolean;
  readonly actsAfterSteps: number;
  readonly bandUnit: Mm;
  readonly mostBands: number;
  readonly equalNeighbours: boolean;
  /** Letters of the inks, and calibrated colours of black, white and each ink, three a class. */
  readonly letters: readonly string[];
  readonly classes: Float64Array;
  /** Square of the distance from black within which nothing else can be nearer. */
  readonly surelyBlack: number;
  readonly tolerances: Tolerances;
  actionOf(word: string): Action | undefined;
}

/** Classes of the band reader: what the middle sensor sees. Inks follow in the kit's order. */
export const CLASS = { unknown: -1, black: 0, white: 1, firstInk: 2 } as const;

/** Works out a motor pair with first-order lag. */
export function drivetrain(step: Seconds, lag: Seconds, track: Mm): Drivetrain {
  const lagLeft = lag === 0 ? 0 : expMinus(step / lag);
  return { step, lagLeft, lagTravel: lag * (1 - lagLeft), perTrack: 1 / track };
}

/** Works out a kit's robot for the simulation. */
export function machineOf(kit: Kit): Machine {
  const { robot } = kit;
  const classes = classColors(kit);
  const { step, lagLeft, lagTravel, perTrack } = drivetrain(STEP, MODEL.motorLag, robot.wheelTrack);
  // One literal with all fields: an object that grows by spreading halves the speed of the step.
  return {
    step,
    lagLeft,
    lagTravel,
    perTrack,
    halfTrack: robot.wheelTrack / 2,
    barAhead: robot.barAhead,
    pitch: robot.sensorPitch,
    topWheelSpeed: robot.topWheelSpeed,
    paces: Float64Array.from(PACES.map((pace) => robot.paces[pace])),
    startPace: PACES.indexOf(robot.startPace),
    creep: robot.barAhead + kit.rules.lineWidth.nominal / 2,
    pause: MODEL.pause,
    straightAtJunctions: robot.unmarkedJunction === 'straight',
    turnsBackAtEnds: robot.looseEnd === 'turn-back',
    actsAfterSteps: Math.round(robot.actsAfter / STEP),
    bandUnit: robot.bandUnit,
    mostBands: kit.rules.bands.most,
    equalNeighbours: kit.equalNeighbours,
    letters: kit.inks.map((ink) => ink.id),
    classes,
    surelyBlack: nearestToBlack(classes) / 4,
    tolerances: tolerancesOf(robot),
    actionOf: (word) => actionOf(kit, word),
  };
}

/** In calibrated readings black is 0 and white is 1 in each channel. */
function classColors(kit: Kit): Float64Array {
  const calibrated = (reflectance: number): number => (reflectance - BLACK) / (WHITE - BLACK);
  const inks = kitReflectances(kit).flatMap((ink) => ink.map(calibrated));
  return Float64Array.from([0, 0, 0, 1, 1, 1, ...inks]);
}

/** Square of the distance from black to the nearest other class. */
function nearestToBlack(classes: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 3; i < classes.length; i += 3) {
    const [red, green, blue] = [classes[i]!, classes[i + 1]!, classes[i + 2]!];
    least = Math.min(least, red * red + green * green + blue * blue);
  }
  return least;
}
