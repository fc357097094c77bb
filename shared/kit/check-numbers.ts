import { type Kit, PACES } from '../documents/kit.ts';
import { radians } from '../geometry/exact-math.ts';
import type { Found, KitPath, KitProblem } from './kit-problem.ts';

/** Lengths that the robot's motion and its reader divide by or wait for. */
const SIZES = [
  'width',
  'length',
  'wheelTrack',
  'barAhead',
  'sensorPitch',
  'topWheelSpeed',
  'bandUnit',
] as const;

const RULE_LENGTHS = ['curveRadius', 'clearance', 'sheetMargin', 'beforeMark', 'afterMark'] as const;
const BAND_LENGTHS = [
  'shortest',
  'tidyShortest',
  'tidyLongest',
  'longest',
  'unknownFrom',
  'colouredFrom',
] as const;

const wrong = (found: Found, path: KitPath): KitProblem => ({ ...found, path, severity: 'wrong' });

/** The value at a path; a kit that has been read has numbers there, or nothing where it may be absent. */
const valueAt = (kit: Kit, path: KitPath): number | undefined =>
  path.reduce<unknown>(
    (value, step) => (value as Record<string | number, unknown> | undefined)?.[step],
    kit,
  ) as number | undefined;

const zeros = (kit: Kit, paths: readonly KitPath[]): KitProblem[] =>
  paths.filter((path) => (valueAt(kit, path) ?? 1) <= 0).map((path) => wrong({ code: 'size-zero' }, path));

/** Sizes and speeds of the robot that are 0, which no robot has and nothing can be driven with. */
export const sizeProblems = (kit: Kit): KitProblem[] =>
  zeros(kit, [...SIZES.map((size) => ['robot', size]), ...PACES.map((pace) => ['robot', 'paces', pace])]);

/** Of a rule that asks for no length at all nobody could say what it wants. Gap and overlap may be 0: edge to edge. */
const RULE_PATHS: readonly KitPath[] = [
  ...(['least', 'nominal', 'most'] as const).map((each) => ['rules', 'lineWidth', each]),
  ...RULE_LENGTHS.map((each) => ['rules', each]),
  ['rules', 'endFromEdge'],
  ['rules', 'straightFrom'],
  ...PACES.map((pace) => ['rules', 'actionReady', pace]),
  ...BAND_LENGTHS.map((each) => ['rules', 'bands', each]),
  ['rules', 'junction', 'armLength'],
  ['rules', 'junction', 'snap'],
];

/** Values that grow from one to the next, or stay the same. */
const ORDERS: readonly (readonly KitPath[])[] = [
  [...PACES.map((pace) => ['robot', 'paces', pace]), ['robot', 'topWheelSpeed']],
  [
    ['robot', 'axleToRear'],
    ['robot', 'length'],
  ],
  (['least', 'nominal', 'most'] as const).map((each) => ['rules', 'lineWidth', each]),
  (['mayStopBelow', 'untidyBelow'] as const).map((each) => ['rules', 'corner', each]),
  PACES.map((pace) => ['rules', 'actionReady', pace]),
  (['least', 'most'] as const).map((each) => ['rules', 'bands', each]),
  BAND_LENGTHS.slice(0, 4).map((each) => ['rules', 'bands', each]),
  BAND_LENGTHS.slice(4).map((each) => ['rules', 'bands', each]),
];

const orderProblems = (kit: Kit): KitProblem[] =>
  ORDERS.flatMap((order) =>
    order.slice(1).flatMap((path, i) => {
      const than = order[i]!;
      return valueAt(kit, path)! < valueAt(kit, than)! ? [wrong({ code: 'out-of-order', than }, path)] : [];
    }),
  );

const SHARES = ['sensorGain', 'sensorOffset', 'calibration', 'wheelMismatch', 'commonSpeed'] as const;

/** A word has one letter a band, eight at most; an angle between two arms is at most half a turn. */
const RANGES: readonly (readonly [KitPath, least: number, most: number])[] = [
  [['rules', 'corner', 'untidyBelow'], 0, radians(180)],
  [['rules', 'corner', 'mayStopBelow'], 0, radians(180)],
  [['rules', 'junction', 'armsApart'], 0, radians(180)],
  [['rules', 'bands', 'least'], 1, 8],
  [['rules', 'bands', 'most'], 1, 8],
  [['rules', 'bands', 'equalWithin'], 0, 1],
  // Chosen: robots that differ more are not of one kind.
  [['robot', 'tolerances', 'aside'], 0, 10],
  [['robot', 'tolerances', 'heading'], 0, radians(30)],
  ...SHARES.map((share) => [['robot', 'tolerances', share], 0, 0.3] as const),
  // WCAG 2.2: from the same to black on white.
  [['rules', 'inkLighter'], 1, 21],
];

const rangeProblems = (kit: Kit): KitProblem[] =>
  RANGES.flatMap(([path, least, most]) => {
    const value = valueAt(kit, path) ?? least;
    return value < least || value > most ? [wrong({ code: 'out-of-range', least, most }, path)] : [];
  });

/** Numbers of the robot and of the drawing rules that can't be as they are; of each the first thing that is wrong. */
export function numberProblems(kit: Kit): KitProblem[] {
  const all = [...sizeProblems(kit), ...zeros(kit, RULE_PATHS), ...orderProblems(kit), ...rangeProblems(kit)];
  const places = all.map(({ path }) => path.join('.'));
  return all.filter((_, i) => places.indexOf(places[i]!) === i);
}
