import type { Mm } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const { counted, short } = numbers;

const percent = (share: number): string => `${short(share * 100, 0)} %`;

/** Before the lesson: the kit's numbers from the class's own robots. */
export const fitting = {
  leaf: 'Fit to the robots',
  how: 'Print the timed line, the timed circle and the two pages of limits (at “Paper”, once a room is open). What is typed here stays in this browser until it is cleared.',
  first: 'Calibrate the robots first, on the paper they will drive on, as the maker’s sheet says.',
  runsTitle: 'Timed runs',
  robot: 'Robot',
  pace: 'Pace',
  over: 'Over',
  line: 'line, 500 mm',
  round: (radius: string) => `circle, radius ${radius}`,
  circle: (laps: number, radius: string) => `circle of radius ${radius}, ${counted(laps, 'lap', 'laps')}`,
  laps: 'Laps',
  seconds: 'Seconds',
  add: 'Add the run',
  remove: (n: number) => `Remove run ${n}`,
  removed: 'Run removed.',
  runs: (n: number) => counted(n, 'run', 'runs'),
  noRuns: 'No run has been typed in.',
  clear: 'Clear all',
  cleared: 'Runs and limits cleared.',
  result: 'What the runs say',
  heads: {
    what: 'Number',
    kit: 'Kit',
    found: 'Robots',
    error: 'Standard error',
    range: '95 % range',
    runs: 'Runs',
  },
  speed: (value: number) => `${short(value, 1)} mm/s`,
  paceNamed: (pace: string) => `pace ${pace}`,
  track: 'wheel track',
  wide: (value: Mm) => `${short(value, 1)} mm`,
  range: (low: string, high: string) => `${low} to ${high}`,
  tooFew: 'too few runs to say',
  from: (runs: number, robots: number) => `${runs} with ${counted(robots, 'robot', 'robots')}`,
  oneRobot: 'All runs are one robot’s: the class’s others may differ more than the range says.',
  trackOpen:
    'The wheel track needs laps at the starting pace, runs over the line at the same pace, and three runs of both together or more.',
  trackNot:
    'Laps do not tell this robot’s wheel track: in a bend its middle keeps the pace, not its outer wheel. Measure with a ruler from the middle of one tyre to the middle of the other.',
  limitsTitle: 'Limits',
  tried: 'Robots that tried',
  corners: 'How many got round each corner',
  bands: 'How many read each length of bands',
  cornerLimit: (degrees: number) => `Corners of ${degrees}° and wider: all robots get round.`,
  bandLimit: (length: string) => `Bands of ${length} and longer: all robots read them.`,
  allOf: (n: number, low: number) =>
    `All ${counted(n, 'robot', 'robots')}; of all robots of this kind that says at least ${percent(low)} (95 %).`,
  noLimit: 'Not even the easiest was made by all: check calibration, ink and light first.',
  further: 'The strip ends here: they may make more.',
  useTitle: 'Use these numbers',
  useNote: 'Nothing changes by itself. Rooms and entries keep the kit that they were judged with.',
  named: (kit: string) => `${kit}, fitted`,
  fromTo: (before: string, after: string) => `${before} → ${after}`,
  cornerRule: 'corner: the robot may stop below',
  untidyRule: 'corner: untidy below',
  bandRule: 'shortest band',
  tidyBandRule: 'shortest tidy band',
  save: 'Keep it as a kit of its own',
  saved: 'It is on the shelf of kits',
  play: 'Play with it from the next challenge on',
  plays: 'The next challenge is for the fitted kit.',
  changes: (n: number) => counted(n, 'number of the kit changes', 'numbers of the kit change'),
  noChanges: 'Nothing found so far differs from the kit.',
};
