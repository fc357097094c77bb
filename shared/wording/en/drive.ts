import type { Seconds } from '../../geometry/units.ts';
import type { PaceOffer } from '../../prep/foretold.ts';
import type { Outcome } from '../../room/driving.ts';
import { onClock } from '../clock.ts';
import { numbers } from './numbers.ts';

const { counted, short, time } = numbers;

const OUTCOMES: Readonly<Record<Outcome['kind'], string>> = {
  'as-predicted': 'as predicted',
  lost: 'lost',
  'other-branch': 'other branch',
  'time-up': 'time was up',
};

const percent = (share: number): string => `${short(share * 100, 0)} %`;
const between = (low: number, high: number): string => `${percent(low)} to ${percent(high)}`;

function offer(found: PaceOffer, enough: { trials: number; robots: number }): string {
  const seen = `${counted(found.trials, 'timed trial', 'timed trials')} with ${counted(found.robots, 'robot', 'robots')}`;
  if (found.kind === 'few')
    return `${seen}, with the kit as it is now. From ${enough.trials} with ${enough.robots} robots on, other paces can be offered.`;
  const { times, spread } = found;
  const said = `${seen}: they take ${short(times, 3)} times as long as foretold (95 %: ${short(spread.low, 3)} to ${short(spread.high, 3)}).`;
  return found.kind === 'alike' ? `${said} The kit’s paces fit.` : `${said} The kit’s paces do not fit.`;
}

/** The desk's step with real robots. */
export const driving = {
  title: 'Robots on paper',
  robots: 'Robots that drive',
  robotsNote: 'The numbers on the robots. Tap one that rests; tap it again when it is back.',
  more: 'One more robot',
  noRobots: 'No robot drives. Tap the numbers of those that do.',
  noTeams: 'No team is in the room.',
  minutes: 'Minutes a turn',
  turn: (n: number) => `Turn ${n}`,
  now: 'now',
  inMinutes: (n: number) => `in ${n} min`,
  over: 'over',
  next: 'Next turn',
  before: 'Turn before',
  go: 'To driving',
  robot: (n: number) => `robot ${n}`,
  waits: 'to be noted',
  noEntry: 'nothing handed in',
  outcome: (kind: Outcome['kind']) => OUTCOMES[kind],
  timed: (seconds: Seconds) => time(seconds),
  noted: (team: string, robot: number, said: string) => `${team}, robot ${robot}: ${said}.`,
  tookBack: 'Note taken back.',
  takeBack: 'Take this note back',
  pick: 'Tap a team, then what its robot did.',
  whose: (team: string, robot: number) => `${team}, robot ${robot}`,
  whichEntry: 'Which drawing is on the paper',
  foretold: (same: number, of: number) => `Foretold: ${same} of ${of} robots do as the undisturbed one.`,
  arrives: (share: number) => `Chance of arriving: ${percent(share)}.`,
  takes: (seconds: Seconds) => `It should take ${time(seconds)}.`,
  nothingForetold: 'Nothing is foretold for this one.',
  lostHere: 'Lost: tap the place on the sheet',
  lostSomewhere: 'Lost, place not seen',
  setsOff: 'It sets off',
  running: (ms: number) => onClock(ms),
  stopClock: 'Stop the watch',
  sheet: (team: string) => `The sheet of ${team}. Tap where the robot was lost.`,
  views: { turns: 'Turns', beside: 'Prediction and trials' },
};

/** What was foretold beside what came. */
export const beside = {
  title: 'Prediction beside trial',
  none: 'No trial has been noted. With the first one the picture begins.',
  counted: (came: number, of: number, low: number, high: number) =>
    `As predicted: ${came} of ${counted(of, 'trial', 'trials')} (95 %: ${between(low, high)}).`,
  brier: (score: number, plain: number) =>
    `Brier score ${short(score, 3)}; 0 is perfect, and saying the class’s own share of every trial would give ${short(plain, 3)}.`,
  few: 'With so few trials chance alone makes large differences: look at the ranges.',
  bin: (from: number, to: number) => `${between(from, to)}`,
  heads: {
    foretold: 'Foretold steadiness',
    mean: 'Mean',
    came: 'As predicted',
    range: '95 % range',
  },
  came: (came: number, of: number) => `${came} of ${of}`,
  range: between,
  mean: percent,
  picture:
    'Each point: of the trials for which about so much was foretold, so many came. On the slanted line both are the same.',
  axes: { foretold: 'foretold', came: 'came' },
  pacesTitle: 'Paces from trials',
  offer,
  wholeClass: 'Trials of this room, also of earlier challenges.',
};

/** On a team's tablet meanwhile. */
export const onPaper = {
  title: 'Robots drive on paper',
  now: (robot: number) => `Your turn: take robot ${robot}.`,
  later: (turn: number, robot: number) => `Your turn is turn ${turn}, with robot ${robot}.`,
  noRobot: 'Watch the others drive.',
  look: 'Does it do what you said? Look where it leaves the line.',
};
