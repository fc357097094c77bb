import type { Cause, Weather } from '../../documents/outlook.ts';
import type { BoardScene, BoardSetting } from '../../room/board.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

/** The board's scenes: their names at the desk, and what those that are no step of the lesson say. */

const { counted } = numbers;

const NAMES: Readonly<Record<BoardScene, string>> = {
  wall: 'Wall',
  brief: 'Brief',
  building: 'Building',
  stage: 'Stage',
  gallery: 'Gallery',
  fleet: 'Fleet',
  forecast: 'Hands up',
  closing: 'Together',
};

const SETTINGS: Readonly<Record<BoardSetting, string>> = {
  dark: 'Dark',
  sound: 'Sound',
  still: 'Still',
};

const SETTING_NOTES: Readonly<Record<BoardSetting, string>> = {
  dark: 'Light ink on a dark ground, for a bright room; sheets stay white',
  sound: 'Short quiet tones: a mark is read, a robot arrives',
  still: 'The board stands still as it is now',
};

/** Why a scene can't be chosen now. */
export type Hindrance = 'building' | 'no-challenge' | 'no-drawings' | 'no-marks' | 'step';

const HINDERED: Readonly<Record<Hindrance, string>> = {
  building: 'Not while teams draw.',
  'no-challenge': 'Choose a challenge first.',
  'no-drawings': 'No drawing has been handed in for this challenge yet.',
  'no-marks': 'This challenge gives no marks. Choose one that is predicted or mended, or wait for a drawing.',
  step: 'It comes with its step of the lesson.',
};

export const scenes = {
  title: 'Board',
  lesson: 'Lesson',
  lessonNote: 'What belongs to the step of the lesson',
  name: (scene: BoardScene): string => NAMES[scene],
  setting: (setting: BoardSetting): string => SETTINGS[setting],
  settingNote: (setting: BoardSetting): string => SETTING_NOTES[setting],
  still: 'A still picture',
  soundWaits: 'Press any key here once, so that this page may sound.',
  gallery: (n: number): string => counted(n, 'drawing', 'drawings'),
  drawingOf: (name: string, n: number): string => `The drawing of ${name}, entry ${n}`,
  hindered: (why: Hindrance): string => HINDERED[why],
  drawing: 'Drawing',
  weather: 'Weather',
  page: (n: number, of: number): string => `Page ${n} of ${of}`,
  nextPage: 'Next page',
  again: 'Once more',
  choose: 'Choose a scene: first the letter, then the number',
  goOn: 'Go on with the scene: the next mark, page or run',
  fleet: {
    title: (weather: Weather): string => `Twenty robots in ${outlook.weather(weather)}`,
    ready: (n: number, of: number): string => `${n} of ${of} robots are ready`,
    soFar: (same: number, of: number): string => `${same} of ${of} still do as planned`,
    made: (same: number, of: number, met: boolean): string =>
      `${same} of ${of} ${met ? 'make it' : 'do as planned'}`,
    /** Under how many make it: so many others, and why. */
    cause: (n: number, cause: Cause): string => `${n} ${outlook.cause(cause)}`,
    none: 'No robot can start here.',
  },
  foretell: {
    title: 'What comes next?',
    mark: (n: number, of: number): string => `mark ${n} of ${of}`,
    ask: 'Hands up: what does this mark say?',
    says: 'This mark says',
    begins: 'The robot stops before each mark. Then hands go up.',
    noMarks: 'It meets no mark on its way.',
    label: 'The robot on its way',
    right: (n: number, of: number): string => `${n} of ${counted(of, 'hand was', 'hands were')} right`,
    /** At the desk. */
    given: 'what the challenge gives',
    hands: (letter: string, answer: string): string => `Hands for ${letter}: ${answer}`,
    inkMistaken: 'It took one colour for another.',
    isRight: 'right',
    driveOn: 'Drive on',
    driving: 'The robot drives to the next mark.',
    over: 'The drive is over.',
  },
  closing: {
    robots: (there: number, of: number): string =>
      there >= of
        ? `${of > 1 ? 'all ' : ''}${counted(of, 'robot is', 'robots are')} back`
        : `${there} of ${counted(of, 'robot is', 'robots are')} back`,
    caps: (there: number, of: number): string =>
      there >= of
        ? `${of > 1 ? 'all ' : ''}${counted(of, 'cap is', 'caps are')} on`
        : `${there} of ${counted(of, 'cap is', 'caps are')} on`,
    growth: 'Since the first drawing',
    grown: (points: number): string => `${counted(points, 'point', 'points')} more`,
    met: 'every goal met',
    /** Where a whole hall has room for a word a team. */
    grownShort: (points: number): string => `+${points}`,
    metShort: 'all met',
    drawings: (n: number): string => counted(n, 'drawing', 'drawings'),
    here: 'was here',
    /** At the desk. */
    count: { robots: 'Robots in their berths', caps: 'Caps on the markers' },
    of: 'of',
  },
};
