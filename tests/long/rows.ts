import type { Ambient } from '../../shared/run/world.ts';
import { afterMark, crossing, leftBranch, twoCrossings } from '../sweeps/junctions.ts';
import {
  corner,
  cornerByHand,
  halfTurn,
  lineGap,
  lineWidth,
  parallel,
  sBend,
  twoCorners,
} from '../sweeps/lines.ts';
import { marks } from '../sweeps/marks.ts';
import type { Shares } from '../sweeps/shares.ts';

/**
 * Every row of the table in the model's description, 200 robots at each of creep, steady and fast, seeds
 * 1000 and up. Stated are percents from a separate, older program; a range where that gives one.
 *
 * Eight rows sit on the flank of a step from all to nothing, where a tenth of a millimetre or a degree is
 * worth ten percent. They have the tolerance that matters, in the row's own quantity: the stated shares come out
 * within `flank` of the stated value. Both programs follow the same description; here two things are
 * done more exactly, and the model is kept. The older program painted bands one after another with a
 * blurred edge each, which left a dark seam between neighbours; here the blur is of the finished ink,
 * also over a gap of white. And here a line counts as lost only when all readings together are faint,
 * which is 0.2 mm later and lets more robots over a gap of 10 mm at creep. Corners drawn by hand came from
 * four drawings only there, whose angles are off by a degree or two each.
 */
interface Row {
  readonly name: string;
  readonly value: number;
  readonly found: (value: number) => Shares;
  readonly stated: Stated;
  readonly flank: number;
}

/** At creep, steady and fast; or from the least to the most of all three. */
type Stated = Shares | { readonly from: number; readonly to: number };

/** Two samples of 200 around one half differ by less in 997 of 1000 cases. */
const NEAR = 15;
/**
 * Rows in which more robots come through than in the older program. There a robot that kept to the line
 * while creeping, and so went round a wide corner or a tight curve, then took what it followed for the
 * straight arm of a junction; here it notices that it has turned. So corners of 110 degrees, too, are
 * always passed. At corners 12 to 14 mm apart the bar, 11 mm ahead of the axle, meets the line behind the
 * second corner while it turns at the first: the older program's robot then took the corner's own line for
 * an arm, and the second corner for a junction.
 */
const BETTER = new Set([
  'corner passed 30',
  'half-turn radius 6',
  's-bend radius 12',
  'two corners apart 12',
  'two corners apart 14',
]);

/** Beside a step nearly all or nearly none is no further from the stated. */
const NEARLY = 3;

const all = (share: number): Shares => [share, share, share];
const light = (change: number): Ambient => ({
  calibrated: 1,
  now: 1 + change,
  tint: { red: 1, green: 1, blue: 1 },
});
const warmLamp = (change: number): Ambient => ({
  calibrated: 0.3,
  now: 0.3 + change,
  tint: { red: 2, green: 1, blue: 0.3 },
});

const range = (from: number, to: number): Stated => ({ from, to });

/** One row a value: `stated` pairs a value with its shares, and on a flank with its tolerance. */
function rows(
  name: string,
  found: (value: number) => Shares,
  stated: readonly (readonly [value: number, shares: Stated, flank?: number])[],
): Row[] {
  return stated.map(([value, shares, flank = 0]) => ({ name, value, found, stated: shares, flank }));
}

const ofLines: Row[] = [
  ...rows('corner clean', (angle) => corner(angle).clean, [
    [120, [100, 100, 99]],
    [110, [100, 93, 100]],
    [90, all(100)],
    [60, all(100)],
    [50, all(100)],
    [45, [40, 66, 81]],
    [42, all(2)],
    [40, all(0)],
  ]),
  ...rows('corner passed', (angle) => corner(angle).passed, [
    [42, all(100)],
    [40, all(99)],
    [35, [89, 83, 62]],
    [30, [46, 40, 52]],
    [20, [27, 34, 27]],
  ]),
  ...rows('corner clean, by hand', cornerByHand, [
    [50, [89, 97, 97]],
    [45, [18, 29, 43], 2],
  ]),
  ...rows('half-turn radius', halfTurn, [
    [4, all(0)],
    [6, [96, 92, 49]],
    [8, [94, 100, 100]],
    [10, all(100)],
  ]),
  ...rows('s-bend radius', sBend, [
    [6, [100, 100, 1]],
    [12, [100, 90, 76]],
    [15, all(100)],
  ]),
  ...rows('line width', lineWidth, [
    [2, all(100)],
    [7, all(100)],
    [8, [1, 3, 90]],
    [9, all(0)],
  ]),
  ...rows('parallel line', parallel, [
    [7, all(0)],
    [10, all(0)],
    [11, all(100)],
  ]),
  ...rows('gap in the line', lineGap, [
    [9, all(100)],
    [10, [4, 99, 100], 0.5],
    [12, [0, 0, 86]],
    [15, all(0)],
  ]),
  ...rows('two corners apart', twoCorners, [
    [12, [68, 79, 88]],
    [14, [60, 30, 4]],
    [16, [99, 100, 100]],
  ]),
];

const ofJunctions: Row[] = [
  ...rows('crossing', crossing, [
    [90, all(100)],
    [75, all(100)],
    [60, [6, 10, 27]],
    [45, all(0)],
  ]),
  ...rows('left branch', leftBranch, [
    [130, range(88, 100)],
    [60, range(88, 100)],
    [45, [100, 78, 1]],
    [30, [100, 51, 5]],
  ]),
  ...rows('two crossings apart', twoCrossings, [
    [8, range(0, 11)],
    [10, range(98, 100)],
  ]),
  ...rows('black after a mark', afterMark, [
    [10, [100, 0, 0]],
    [20, [100, 0, 0]],
    [25, [100, 100, 0]],
    [50, [100, 100, 39]],
    [63, all(100)],
  ]),
];

const ofMarks: Row[] = [
  ...rows('black before a mark', (before) => marks({ before }).read, [
    [20, all(0)],
    [22, [67, 56, 66], 0.5],
    [25, all(100)],
  ]),
  ...rows('after an arc', (before) => marks({ before, feature: 'arc' }).read, [
    [15, [13, 48, 93]],
    [20, all(100)],
  ]),
  ...rows('band length', (length) => marks({ length: () => length }).read, [
    [3, range(44, 50)],
    [3.5, range(44, 50)],
    [4, all(62), 0.25],
    [5, all(100)],
    [6, all(100)],
    [7, all(70)],
    [7.5, all(35)],
    [8.5, range(0, 4)],
  ]),
  ...rows('one band longer', (f) => marks({ length: (i) => (i === 1 ? 5.5 * f : 5.5) }).read, [
    [0.5, all(72), 0.06],
    [0.6, all(90)],
    [0.8, all(100)],
    [1.2, all(100)],
    [1.3, all(96)],
    [1.4, all(71)],
    [1.5, all(37)],
  ]),
  ...rows('white between bands', (gap) => marks({ gap }).read, [
    [0.6, all(100)],
    [0.8, all(97)],
    [1, [36, 44, 56], 0.1],
    [1.2, all(0)],
  ]),
  ...rows('overlap of bands', (overlap) => marks({ gap: -overlap }).read, [
    [1, all(100)],
    [1.5, range(88, 90)],
    [2, range(5, 14)],
    [2.5, all(0)],
  ]),
  ...rows('line width, read', (width) => marks({ width }).read, [
    [3.5, all(0)],
    [4, range(97, 99)],
    [5, all(100)],
    [7, all(100)],
    [8, [76, 77, 98]],
    [9, [9, 22, 56]],
  ]),
  ...rows('light, read', (change) => marks({ ambient: light(change) }).read, [
    [-0.8, all(0)],
    [-0.6, [52, 53, 63], 0.1],
    [-0.4, all(100)],
    [0.4, all(100)],
    [0.6, range(14, 63)],
    [0.8, all(0)],
  ]),
  ...rows('light, tracked', (change) => marks({ ambient: light(change) }).tracked, [
    [-0.8, all(100)],
    [0.8, all(100)],
    [1.5, range(25, 75)],
  ]),
  ...rows('warm lamp, read', (change) => marks({ ambient: warmLamp(change) }).read, [
    [0.3, all(100)],
    [0.4, range(83, 95)],
    [0.6, all(0), 0.1],
  ]),
];

const ofCalibration: Row[] = [
  ...rows('calibration, read', (calibration) => marks({ calibration }).read, [
    [0.08, all(100)],
    [0.12, all(90)],
    [0.2, all(52)],
  ]),
  ...rows('calibration, tracked', (calibration) => marks({ calibration }).tracked, [[0.2, all(96)]]),
];

const rangesOf = (stated: Stated): { from: number; to: number }[] =>
  'from' in stated ? [stated, stated, stated] : stated.map((share) => ({ from: share, to: share }));

const isNear = (found: Shares, stated: Stated): boolean =>
  rangesOf(stated).every(({ from, to }, i) => found[i]! >= from - NEAR && found[i]! <= to + NEAR);

/** Whether the stated shares lie between what comes out on both sides of the stated value. */
function isOnFlank({ value, flank, found, stated }: Row): boolean {
  if (flank === 0) return false;
  const sides = [found(value - flank), found(value + flank)];
  return rangesOf(stated).every(({ from, to }, i) => {
    const shares = sides.map((side) => side[i]!);
    return Math.min(...shares) - NEARLY <= from && to <= Math.max(...shares) + NEARLY;
  });
}

const isBetter = ({ name, value, stated }: Row, found: Shares): boolean =>
  BETTER.has(`${name} ${value}`) && rangesOf(stated).every(({ from }, i) => found[i]! >= from - NEARLY);

function resultOf(row: Row, found: Shares): 'near' | 'flank' | 'better' | 'off' {
  if (isNear(found, row.stated)) return 'near';
  if (isBetter(row, found)) return 'better';
  return isOnFlank(row) ? 'flank' : 'off';
}

const shown = (shares: readonly number[]): string => shares.map((share) => share.toFixed(0)).join('/');
const shownStated = (stated: Stated): string =>
  'from' in stated ? `${stated.from}..${stated.to}` : shown(stated);

/** Prints `rows NAME VALUE found stated near|flank|better|off`; well if none is off. */
export async function long(): Promise<boolean> {
  let off = 0;
  for (const row of [...ofLines, ...ofJunctions, ...ofMarks, ...ofCalibration]) {
    const found = row.found(row.value);
    const result = resultOf(row, found);
    if (result === 'off') off++;
    const parts = ['rows', row.name, row.value, shown(found), shownStated(row.stated), result];
    process.stdout.write(`${parts.join(' ')}\n`);
  }
  return off === 0;
}
