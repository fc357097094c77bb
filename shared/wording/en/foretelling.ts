import type { Cause, Weather } from '../../documents/outlook.ts';
import type { Guess, NextKind } from '../../documents/reason.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

/** What a tablet asks before a run and after it. For children: one or two taps. */

const GUESS: Readonly<Record<Guess, string>> = {
  'makes-it': 'It makes it',
  fails: 'It doesn’t',
  'not-sure': 'Not sure',
};

const NEXT: Readonly<Record<NextKind, string>> = {
  'fewer-marks': 'Does it still work with one mark fewer?',
  'other-end': 'Does a robot from the other end make it too?',
  storm: 'Do most robots still make it in a storm?',
};

const robots = (same: number, of: number): string => `${same} of ${numbers.counted(of, 'robot', 'robots')}`;

/** What most of twenty robots do: meet the goals, drive as the one that is shown, or take one of its ways. */
export type RobotsDo = 'make-it' | 'the-same' | 'one-of-its-ways';

const ROBOTS_DO: Readonly<Record<RobotsDo, string>> = {
  'make-it': 'make it',
  'the-same': 'do the same',
  'one-of-its-ways': 'go one of these ways',
};

export const foretelling = {
  ask: 'What will the robot do?',
  askWhere: 'Where does it go wrong? Tap the place.',
  where: 'The sheet: tap where it goes wrong',
  noIdea: 'We can’t say where',
  guess: (guess: Guess): string => GUESS[guess],
  differs: (guess: Guess, made: boolean): string =>
    `You said: ${GUESS[guess].toLowerCase()}. ${made ? 'It made it.' : 'It did not make it.'} Why?`,
  right: 'Yes, that is it.',
  wrong: (but: string): string => `Not that. ${but}`,
  truth: (reason: string): string => `This is it: ${reason}`,
  show: 'Show me',
  trouble: 'To the trouble',
  log: 'What happened',
  bar: 'Sensors',
  barSees: (seen: string): string => `The middle sensor sees ${seen}`,
  seenLine: 'line',
  seenPaper: 'paper',
  seenOther: 'something between',
  robots: (same: number, of: number, weather: Weather, does: RobotsDo): string =>
    `${robots(same, of)} ${ROBOTS_DO[does]} in ${outlook.weather(weather)}`,
  drivenIn: (weather: Weather): string => `Twenty robots will drive it in ${outlook.weather(weather)}.`,
  counting: 'Driving twenty robots',
  frays: (left: number, of: number, cause: Cause): string =>
    `Where the line frays, ${numbers.counted(left, 'robot', 'robots')} of ${of} left: ${outlook.cause(cause)}.`,
  noFray: (of: number): string => `None of ${of} robots leaves the line.`,
  chance: (chance: number): string => `${numbers.short(chance * 20, 1)} of 20`,
  chooseWay: (way: string, chance: string): string => `${way}: ${chance}`,
  next: 'Next question',
  nextAsk: (kind: NextKind): string => NEXT[kind],
  yes: 'Yes',
  no: 'No',
  seeIt: 'See it',
  another: 'Another question',
  ownRun: 'Back to our run',
  youSaid: (right: boolean): string => (right ? 'Right.' : 'No.'),
  spare: 'This drawing has a mark that it can do without.',
  noSpare: 'It needs every mark that it has. Is there another drawing with one mark fewer?',
  otherEnd: (met: boolean): string =>
    met ? 'From the other end it arrives too.' : 'From the other end it does not make it.',
  storm: (same: number, of: number): string => `In a storm ${robots(same, of)} make it.`,
};
