import { notes } from './notes.ts';
import { numbers } from './numbers.ts';
import { playing } from './playing.ts';

/** What teams read on their tablet. Children from seven on: short sentences, plain words. */

export type Tool = 'straight' | 'curve' | 'freehand' | 'mark' | 'bands' | 'move' | 'rub';

const TOOLS: Readonly<Record<Tool, string>> = {
  straight: 'Straight',
  curve: 'Curve',
  freehand: 'Freehand',
  mark: 'Mark',
  bands: 'Bands',
  move: 'Move',
  rub: 'Rub out',
};

const HOW: Readonly<Record<Tool, string>> = {
  straight: 'Tap where the line begins, then where it ends.',
  curve: 'Take a line by its middle and pull it round. A corner can be pulled round too.',
  freehand: 'Draw on the paper. The line is tidied when you lift your finger.',
  mark: 'Choose a mark, then tap the line. Slide it along; tap it to flip it.',
  bands: 'Choose an ink, stroke along a line.',
  move: 'Pull an end, a corner, a mark or a line. Pull across the paper to choose several.',
  rub: 'Tap or stroke what should go.',
};

const HOW_WITH_MARKS: Readonly<Partial<Record<Tool, string>>> = {
  move: 'Pull a mark along the line.',
  rub: 'Tap the mark that should go.',
};

export type EditRefusalCode =
  | 'only-marks'
  | 'given'
  | 'no-marks-left'
  | 'too-short'
  | 'line-too-short-for-mark'
  | 'too-many-bands'
  | 'drawing-full'
  | 'not-there';

const NOT_DONE: Readonly<Record<EditRefusalCode, (most: number) => string>> = {
  'only-marks': () => 'The lines are given here. Only marks are yours.',
  given: () => 'This belongs to the sheet and stays as it is.',
  'no-marks-left': (most) =>
    `Only ${numbers.counted(most, 'mark', 'marks')} here. Rub one out or slide one first.`,
  'too-short': () => 'That would leave no line. Try a longer one.',
  'line-too-short-for-mark': () => 'This line is too short for that mark.',
  'too-many-bands': () => 'That is too many bands for one mark. Leave some white between two marks.',
  'drawing-full': () => 'The sheet is full. Rub something out first.',
  'not-there': () => 'That is not there any more.',
};

export type CaughtWhy = 'end' | 'berth' | 'line' | 'tangent' | 'angle' | 'parallel' | 'grid' | 'free';

const CAUGHT: Readonly<Record<Exclude<CaughtWhy, 'berth' | 'angle'>, string | null>> = {
  end: 'on the end of a line',
  line: 'on a line',
  tangent: 'straight on from the line',
  parallel: 'beside that line',
  grid: 'on the grid',
  free: null,
};

const joining = {
  title: 'Come aboard',
  label: 'Room word',
  hint: 'It stands on the board: a word, a dash and a number. A code from the desk fits here too.',
  go: 'Go in',
  busy: 'One moment',
  empty: 'Type the word from the board first.',
};

const waiting = {
  looking: 'Looking for the room',
  lookingLong: 'The teacher’s computer does not answer yet. This page keeps trying.',
  youAre: 'You are',
  berth: (n: number) => `Berth ${n} on the harbour wall`,
  soon: 'Find your emblem on the board. It starts soon.',
  swap: 'Another emblem',
  swapTitle: 'Which emblem shall be yours?',
  swapHow: 'Those that are here are still free.',
  swapClose: 'Keep ours',
};

const briefing = {
  listen: 'Listen first. The sheet opens when the teacher starts the building time.',
  goals: 'This must come true',
};

const quiet = {
  title: 'Open in a newer tab',
  sentence: 'Your team goes on there. Your drawing is safe.',
  here: 'Go on here instead',
};

/** What a tablet says that has nothing to do now, and what to do about it. */
const resting = {
  paused: { title: 'A pause', sentence: 'Everything waits as it is. Time stands still too.' },
  removed: {
    title: 'This team is out of the room',
    sentence: 'Your drawings are kept. Ask at the teacher’s desk: there your team can be put back.',
  },
  freed: {
    title: 'This tablet rests',
    sentence: 'Your drawing is kept. Ask at the teacher’s desk which tablet your team goes on with.',
  },
  moved: {
    title: 'Your team is on another tablet now',
    sentence: 'Everything that you have drawn is there. You can put this one away.',
  },
  anew: 'Join as a new team',
};

const building = {
  tools: 'Tools',
  tool: (tool: Tool): string => TOOLS[tool],
  /** What a tool does; where the lines are given, only to marks. */
  how: (tool: Tool, lines: boolean): string => (lines ? HOW[tool] : (HOW_WITH_MARKS[tool] ?? HOW[tool])),
  howInBoxes: 'Choose a mark, then tap the line. Teams put marks into the boxes.',
  secondTap: 'Now tap where it ends.',
  undo: 'Undo',
  redo: 'Redo',
  again: 'Start again',
  againDone: 'Everything is back to the beginning. Undo brings your drawing back.',
  marks: 'Marks',
  flip: 'Flip',
  rubOut: 'Rub out',
  unknownWord: 'not in the chart',
  inks: 'Inks',
  noBand: 'No band',
  turn: 'Turn',
  mirror: 'Mirror',
  copy: 'Copy',
  free: 'Free',
  freeHow: 'Nothing catches while you hold this. Tap it to keep it so.',
  rubPiece: 'Piece',
  rubLine: 'Whole line',
  rubWhat: 'Rub out a piece or a whole line',
  larger: 'Larger',
  smaller: 'Smaller',
  wholeSheet: 'Whole sheet',
  fingersDraw: 'Draw with fingers again',
  sheet: (name: string) => `The sheet: ${name}`,
  notDone: (code: EditRefusalCode, most: number): string => NOT_DONE[code](most),
  caught: (why: CaughtWhy, berth: string, degrees: number): string | null => {
    if (why === 'berth') return `in the berth ${berth}`;
    if (why !== 'angle') return CAUGHT[why];
    return degrees === 45 ? 'slanting by 45°' : degrees === 90 ? 'straight up and down' : 'level';
  },
  bent: (how: 'straight' | 'quarter' | 'half'): string =>
    ({ straight: 'straight', quarter: 'a quarter of a circle', half: 'half a circle' })[how],
  things: (n: number): string => things(n),
  inkAndMarks: (ink: string, marks: number) => `${ink} of line · ${numbers.counted(marks, 'mark', 'marks')}`,
  marksOnly: (n: number) => numbers.counted(n, 'mark', 'marks'),
  nextThing: 'Next',
  oneOf: (n: number, of: number) => `${n} of ${of}`,
  close: 'Close',
  mend: 'Mend it',
  lookClosely: 'Look closely here',
  mendAfter: (tries: number) =>
    `After ${numbers.words(tries)} ${tries === 1 ? 'try' : 'tries'} of your own it can be mended for you.`,
  afterTry: 'Try it first. Then this page shows what it sees.',
  tryIt: 'Try it',
  handIn: 'Hand in',
  goals: 'Goals',
  open: 'open',
  met: 'met',
  timeLeft: (seconds: number): string =>
    seconds >= 60 ? `${Math.ceil(seconds / 60)} min` : `${Math.max(0, Math.ceil(seconds))} s`,
  timeOver: 'Time is over',
  timeOverNote: 'You can still hand in late',
  lookHere: 'Look at the board',
  lookHereNote: 'Your drawing waits here.',
  tooLarge: 'This drawing is too big to be kept or handed in. Take something away.',
  away: 'No connection. Go on drawing, nothing gets lost.',
};

const things = (n: number): string =>
  n === 0 ? 'The line is fine' : `${numbers.counted(n, 'thing', 'things')} to look at`;

const trying = {
  title: 'Try it',
  back: 'Back to the drawing',
  play: 'Play',
  pause: 'Pause',
  restart: 'Again',
  speed: 'Speed',
  times: (speed: number) => `${speed}×`,
  at: 'Time in the run',
  seconds: (t: number, of: number) => `${numbers.fixed(t, 1)} of ${numbers.fixed(of, 1)} s`,
  pace: 'Pace',
  ending: 'At the end',
  now: 'The robot',
  driving: 'is driving',
  goals: 'What comes of it',
  ways: 'Ways it can go',
  way: (n: number, chance: string) => `Way ${n}: ${chance}`,
  wayFrom: (n: number, from: string, chance: string) => `Way ${n} from ${from}: ${chance}`,
  chance: (probability: number) => `${numbers.short(probability * 20, 1)} of 20 robots`,
  luck: 'At a junction without a mark the robot chooses by itself.',
  everyWay: 'A goal is met only when every way meets it.',
  decides: (ways: readonly number[]) =>
    ways.length === 0
      ? ''
      : `${ways.length === 1 ? 'Way' : 'Ways'} ${numbers.list(ways.map(String))} ${ways.length === 1 ? 'misses' : 'miss'} one.`,
  acts: 'A blue tick shows where a mark acts.',
  working: 'Working out the run',
  noRun: 'The robot never starts. Its berth needs a line under it.',
  robot: (label: string) => `The robot drives over the drawing: ${label}`,
};

const handing = {
  title: 'Hand in this drawing?',
  scored: (must: string) => `It is scored for its goals, up to 100 points. ${must}`,
  mustAll: 'All of them must be met for the challenge to count as done.',
  asItIs: 'As it stands now:',
  best: 'You may hand in again. Your best one counts.',
  late: 'The building time is over, so this one is kept as late. It counts when your teacher says so.',
  yes: 'Hand in',
  no: 'Not yet',
  empty: 'There is nothing on the sheet yet.',
  waiting: 'Waiting to be sent. It goes as soon as the connection is back.',
  sending: 'On its way',
  judging: 'Handed in. The robot is driving it.',
  unjudged: 'It is handed in, but it could not be judged. Tell your teacher.',
  entries: 'Handed in',
  entriesTitle: 'Your handed-in drawings',
  none: 'Nothing handed in yet.',
  entry: (n: number) => `Drawing ${n}`,
  points: (n: number) => numbers.counted(n, 'point', 'points'),
  best1: 'your best',
  late1: (taken: boolean): string => (taken ? 'late, counts' : 'late, does not count yet'),
  done: 'Challenge done',
  notDone: 'Not done yet',
  mended: 'Something in it was mended with help.',
  takeUp: 'Go on from this one',
  takenUp: 'It is on your sheet again. Undo brings back what was there.',
  close: 'Back to the drawing',
};

const predicting = {
  questions: 'Questions',
  which: (n: number, of: number) => `Question ${n} of ${of}`,
  before: 'Back',
  next: 'Next',
  robots: 'How many robots',
  fewer: 'One fewer',
  more: 'One more',
  chart: 'What marks mean',
  answered: (n: number, of: number) => `${n} of ${of} answered`,
  away: 'No connection. Go on, your answers are kept here.',
  handInTitle: 'Hand in these answers?',
  scored: 'Each right answer counts the same, up to 100 points in all.',
  empty: 'Nothing is answered yet.',
  asked: 'You will be asked',
  own: 'Your best answers',
  entriesTitle: 'Your handed-in answers',
  back: 'Back to the questions',
};

const showing = {
  title: 'Look at the board',
  own: 'Your best drawing',
  ownNone: 'You handed nothing in this time. Your drawing is kept.',
  points: (n: number) => `${numbers.counted(n, 'point', 'points')} so far`,
};

const closing = {
  points: (n: number) => numbers.counted(n, 'point', 'points'),
  title: 'Well done',
  robots: 'Bring the robot back to its berth.',
  caps: 'Put the caps on the markers.',
  tablet: 'Give the tablet back.',
};

export const tablet = {
  joining,
  waiting,
  briefing,
  quiet,
  resting,
  building,
  trying,
  predicting,
  playing,
  handing,
  notes,
  showing,
  closing,
};
