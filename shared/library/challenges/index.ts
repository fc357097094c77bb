import type { Recipe } from '../recipe.ts';
import { bakeryAndBack } from './bakery-and-back.ts';
import { endOfTheLine } from './end-of-the-line.ts';
import { ferryJunction } from './ferry-junction.ts';
import { firstLine } from './first-line.ts';
import { fromTheOtherEnd } from './from-the-other-end.ts';
import { inTimeForTheFerry } from './in-time-for-the-ferry.ts';
import { lateChoice } from './late-choice.ts';
import { longPier } from './long-pier.ts';
import { noMarkAtTheJunction } from './no-mark-at-the-junction.ts';
import { oneFastStretch } from './one-fast-stretch.ts';
import { oneMarkTwoJunctions } from './one-mark-two-junctions.ts';
import { overlookedMark } from './overlooked-mark.ts';
import { paintedInAHurry } from './painted-in-a-hurry.ts';
import { parkOnTheLanding } from './park-on-the-landing.ts';
import { pastTheNest } from './past-the-nest.ts';
import { railCrossing } from './rail-crossing.ts';
import { roundTheHarbour } from './round-the-harbour.ts';
import { roundTheSandbank } from './round-the-sandbank.ts';
import { sharpCorner } from './sharp-corner.ts';
import { shortAndSound } from './short-and-sound.ts';
import { threeCalls } from './three-calls.ts';
import { twoJobs } from './two-jobs.ts';
import { twoTravellers } from './two-travellers.ts';
import { waitAtTheLanding } from './wait-at-the-landing.ts';

/** In the order of the course. A new one is a file and a line here. */
export const RECIPES: readonly Recipe[] = [
  endOfTheLine,
  firstLine,
  sharpCorner,
  roundTheSandbank,
  shortAndSound,
  parkOnTheLanding,
  overlookedMark,
  twoTravellers,
  longPier,
  fromTheOtherEnd,
  paintedInAHurry,
  noMarkAtTheJunction,
  ferryJunction,
  railCrossing,
  oneMarkTwoJunctions,
  threeCalls,
  lateChoice,
  oneFastStretch,
  inTimeForTheFerry,
  pastTheNest,
  waitAtTheLanding,
  bakeryAndBack,
  twoJobs,
  roundTheHarbour,
];
