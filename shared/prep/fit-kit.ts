import { type Kit, PACES, type Pace } from '../documents/kit.ts';
import { radians } from '../geometry/exact-math.ts';
import type { Mm } from '../geometry/units.ts';
import type { RobotFit } from './fit.ts';

/** What was found out about a class's own robots, as far as it was. */
export interface Found {
  readonly fit: RobotFit | null;
  /** Degrees. */
  readonly corner: number | null;
  readonly band: Mm | null;
}

/** Files keep hundredths of a millimetre, and nobody times better than to a tenth of one. */
const tenth = (value: number): number => Math.round(value * 10) / 10;

/**
 * The kit with what was found: paces and wheel track where runs tell how sure they are, and the limits as
 * numbers of its drawing rules. What nothing was found out about stays.
 */
export function fittedKit(kit: Kit, { fit, corner, band }: Found): Kit {
  const told = fit?.paces.filter(({ spread }) => spread !== null) ?? [];
  const paces = Object.fromEntries(
    PACES.map((pace) => [
      pace,
      tenth(told.find((each) => each.pace === pace)?.value ?? kit.robot.paces[pace]),
    ]),
  ) as Record<Pace, number>;
  const { wheelTrack, width } = kit.robot;
  const track = fit?.track.kind === 'told' ? Math.min(width, tenth(fit.track.value)) : wheelTrack;
  const robot = { ...kit.robot, paces, wheelTrack: track };
  return { ...kit, robot, rules: withLimits(kit.rules, corner, band) };
}

/** Every robot of the class made these, so nothing that is milder stops one; what is untidy stays at least as mild. */
function withLimits(rules: Kit['rules'], corner: number | null, band: Mm | null): Kit['rules'] {
  const mayStopBelow = corner === null ? rules.corner.mayStopBelow : radians(corner);
  const shortest = band ?? rules.bands.shortest;
  return {
    ...rules,
    corner: { mayStopBelow, untidyBelow: Math.max(rules.corner.untidyBelow, mayStopBelow) },
    bands: { ...rules.bands, shortest, tidyShortest: Math.max(rules.bands.tidyShortest, shortest) },
  };
}

/** The kit whose paces are so many times as slow: `times` is measured over foretold time. */
export function slowedKit(kit: Kit, times: number): Kit {
  const paces = Object.fromEntries(
    PACES.map((pace) => [pace, tenth(kit.robot.paces[pace] / times)]),
  ) as Record<Pace, number>;
  return { ...kit, robot: { ...kit.robot, paces } };
}

/** One number of a kit, before and after; angles in rad. */
export interface KitChange {
  readonly what: Pace | 'wheelTrack' | 'corner' | 'untidy' | 'band' | 'tidy-band';
  readonly before: number;
  readonly after: number;
}

/** The numbers in which two versions of a kit differ, of those that robots tell about. */
export function changesOf(before: Kit, after: Kit): KitChange[] {
  const numbersOf = ({ robot, rules: { corner, bands } }: Kit): [KitChange['what'], number][] => [
    ...PACES.map((pace): [Pace, number] => [pace, robot.paces[pace]]),
    ['wheelTrack', robot.wheelTrack],
    ['corner', corner.mayStopBelow],
    ['untidy', corner.untidyBelow],
    ['band', bands.shortest],
    ['tidy-band', bands.tidyShortest],
  ];
  const later = new Map(numbersOf(after));
  return numbersOf(before).flatMap(([what, was]) => {
    const is = later.get(what)!;
    return is === was ? [] : [{ what, before: was, after: is }];
  });
}
