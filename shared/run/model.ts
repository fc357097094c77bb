import type { Mm, Seconds } from '../geometry/units.ts';

/**
 * The constants of the model that are not the kit's. Behind each: chosen (a plausible free choice),
 * geometry (follows from other lengths) or fitted (tuned until one rule of the trade comes out).
 * None of them is validated against a real robot; a kit's trials are there to improve them.
 */

/** Chosen. From 0.5 to 5 ms the answers are alike except at tipping points. */
export const STEP: Seconds = 0.002;
/** 50 samples a second. */
export const STEPS_A_SAMPLE = 10;
export const STEPS_A_HASH = 50;

/** On the bar, counted from the left; the middle one also sees colour. */
export const SENSORS = 5;

export const MODEL = Object.freeze({
  // Motion: all chosen.
  /** s, of the first-order motors. */
  motorLag: 0.04,
  /** mm/s². */
  paceChange: 220,
  /** rad/s, of a turn on the spot. */
  spin: 3.6,

  // Following: all chosen.
  /** Turn rate over speed, a mm that the line lies off the middle: 1/mm². */
  steer: 0.022,
  /** The same for the speed at which the line moves along the bar: s/mm². */
  steerRate: 0.0002,
  /** Share of each new rate that the filter takes, a step. */
  rateShare: 0.25,
  /** Below this speed the robot steers as if it went this fast. */
  steerSlowest: 12,
  /** Share of the pace that is given up when the line lies at an outer sensor. */
  slowing: 0.35,
  /** Readings (0 paper, 1 line): what counts towards the line's place, as dark, and as a line at all. */
  faint: 0.08,
  dark: 0.5,
  enough: 0.35,
  // Places on the bar, as shares of the pitch between sensors.
  /** Only sensors this near to the line's last place count towards the next: 6.5 mm at a pitch of 4. */
  window: 1.625,
  /** A line last seen further out than this has left to that side: 3 mm. */
  sideLoss: 0.75,
  /** Bands are read only while the line is this near to the middle: 2 mm. */
  readWithin: 0.5,
  /** While creeping the robot keeps to a line that is this near: 5 mm. */
  centring: 1.25,
  /** A side counts as last seen from this far out: 0.3 mm. */
  leaning: 0.075,

  // Corners and junctions. Fitted: a crossing at 60 degrees is counted once, arms of 25 mm suffice.
  /** mm after a junction in which further ones are ignored. */
  pause: 16,
  /** Chosen: steps in a row in which the bar must see an arm. */
  sightings: 2,
  /** Chosen, rad: having turned so far towards the only arm while creeping, the robot has rounded a corner. */
  rounded: 0.5,
  /** Chosen, mm: what looks like arms within so much behind a turn at a corner is seen from within that corner. */
  cornerReach: 0.2,
  /** Chosen, rad: a turn goes on at least so far, so that it leaves the line that it came on, and at most so far. */
  leastTurn: 0.6,
  leastHalfTurn: 2.2,
  leastTurnAtEnd: 0.5,
  mostTurn: 3.9,
  /** Chosen: 100 degrees to either side, after going on for the gap. */
  search: 1.75,
  /** mm, over white. */
  gap: 6,
  /** Chosen: share of the pace at which the robot leaves a turn. */
  afterSpin: 0.3,

  // Optics: all chosen. Raw readings are shares of the paper's in a dark room.
  greyNoise: 0.012,
  colorNoise: 0.015,
  clip: 1.4,
  lightGain: 0.25,
  lightOffset: 0.12,

  // Band reader: mm unless said.
  /** Chosen. A run of one class counts from here. */
  debounce: 1,
  /** Fitted: gives 25 mm of plain line before a mark. */
  blackBefore: 10,
  /** Chosen: so much black ends a word. */
  blackAfter: 8,
  /** Chosen: a run as short as this still counts as one band. */
  shortestBand: 2.2,
  /** Fitted: in a kit without equal neighbours a run longer than this many bands is no mark. */
  longestRun: 1.6,
  /** Chosen: a colour further than this from every known one is unknown; black to white is √3. */
  unlike: 0.3,
});

/**
 * What differs from robot to robot in calm weather beside the kit's own tolerances: all chosen. One standard
 * deviation, unless said.
 */
export const TOLERANCES = Object.freeze({
  /** Black is taken with this share of the error that white is taken with. */
  calibrationOfBlack: 0.3,
  /** mm, root mean square on each axis, of ink beside where it was meant to be. */
  inkWobble: 0.3,
  /** mm, the most by which a line is wider or narrower; any value up to it is as likely. */
  inkWidth: 0.45,
});

/** How the run's record is closed. */
export const RUN_RULES = Object.freeze({
  /** The run goes on after arrival, so that margins of arriving are not nearly zero. */
  afterFinish: 0.5 as Seconds,
  /** Time to come to rest after parking or stopping. */
  atRest: 0.5 as Seconds,
  /** Where start and finish share a place, the finish counts after having left it by this much. */
  leaveStart: 30 as Mm,
  mostIdealRuns: 16,
});
