import type { Variant } from '../../documents/challenge.ts';
import type { Difficulty, FreshMarks, FreshTopic } from '../../documents/fresh.ts';
import type { Misread, Misreading } from '../../documents/misread.ts';
import type { Ask } from '../../documents/question.ts';
import type { Units } from '../../documents/values.ts';
import { wish } from './builder-wishes.ts';
import { numbers } from './numbers.ts';

/** For teachers: building a challenge of one’s own. */

const marks = (n: number): string => `${numbers.words(n)} ${n === 1 ? 'mark' : 'marks'}`;

export type PlaceKind = 'start' | 'finish' | 'gate' | 'area' | 'keep-out' | 'box';
const PLACES: Readonly<Record<PlaceKind, string>> = {
  start: 'start berth',
  finish: 'finish berth',
  gate: 'gate',
  area: 'area',
  'keep-out': 'keep-out',
  box: 'box for marks',
};

const cornerOf = (kind: PlaceKind, n: number): string =>
  kind === 'gate' ? `end ${n}, ` : kind === 'area' || kind === 'keep-out' ? `corner ${n}, ` : '';

const places = {
  title: 'The sheet',
  paper: 'Paper',
  otherPaper: 'another size',
  width: 'Width',
  height: 'Height',
  listed: 'Berths, gates, areas and boxes',
  how: 'Pull them on the sheet, or choose one and set its numbers. On the sheet arrows move by 5 mm, with Shift by 1 mm.',
  picture: 'The sheet that is being built',
  kind: (kind: PlaceKind): string => PLACES[kind],
  name: 'Name',
  across: (kind: PlaceKind, n: number): string => numbers.capital(`${cornerOf(kind, n)}from the left`),
  down: (kind: PlaceKind, n: number): string => numbers.capital(`${cornerOf(kind, n)}from the top`),
  heading: 'Robot faces',
  reach: 'Reached within',
  startOnly: 'Robots only set out from here',
  boxWidth: 'Width of the box',
  boxHeight: 'Height of the box',
  boxes: 'Where a sheet has boxes, teams put marks only into them.',
  moreCorners: 'One corner more',
  lessCorners: 'One corner less',
  remove: 'Take it away',
  handle: (name: string, part: 'all' | 'heading' | 'corner', n: number): string =>
    part === 'all' ? `Move ${name}` : part === 'heading' ? `Turn ${name}` : `Corner ${n} of ${name}`,
};

const lines = {
  title: 'Lines and marks',
  which: 'What is being drawn',
  layer: (layer: 'given' | 'begin' | 'own'): string =>
    ({ given: 'Given to all', begin: 'The fault to mend', own: 'Your own solution' })[layer],
  note: (layer: 'given' | 'begin' | 'own'): string =>
    ({
      given: 'What every team finds on its sheet.',
      begin: 'What a team’s drawing begins with.',
      own: 'Never shown to teams. It shows that the challenge can be met, and at what cost.',
    })[layer],
  sheet: 'The sheet to draw on',
};

const goals = {
  title: 'Goals',
  none: 'No goal yet. Add the first one.',
  add: 'Add a goal',
  open: (id: string): string => `Change goal ${id}`,
  shut: 'Done',
  remove: 'Take away',
  removeThis: (id: string): string => `Take goal ${id} away`,
  must: 'a must',
  weight: 'Weight',
  whose: 'For the robot',
  who: (who: 'both' | 'start' | 'finish'): string =>
    ({ both: 'from either berth', start: 'from the start', finish: 'from the finish' })[who],
};

const asking = {
  title: 'Questions',
  none: 'No question yet. Add the first one.',
  add: 'Add a question',
  what: 'Ask',
  kind: (kind: Ask['kind']): string =>
    ({
      end: 'where it ends',
      marks: 'what each mark says',
      pace: 'how it drives over an area',
      'how-many': 'how many robots get there',
    })[kind],
  where: 'Where',
  robots: 'Of how many robots',
  remove: 'Take away',
  removeThis: (n: number): string => `Take question ${n} away`,
};

const rules = {
  title: 'How it is played',
  sentence: 'The sentence that children read',
  fromGoals: 'Write it from the goals',
  play: 'Way to play',
  time: 'Time for a run',
  marks: 'Marks at most',
  ink: 'Line at most',
  starts: 'Robots set out',
  from: (who: 'both' | 'start' | 'finish'): string =>
    ({ both: 'from both berths', start: 'from the start', finish: 'from the finish' })[who],
  weather: 'Weather',
  variants: 'For neighbouring tables',
  variantsNote: 'Where the class gets varied sheets, every second and third berth gets these.',
  variant: (variant: Variant): string => (variant === 'mirrored' ? 'mirrored' : 'turned'),
  noVariant: 'The chart can’t say left for right here, so this sheet is not mirrored.',
  mirrored: 'Sentence on the mirrored sheet, if it speaks of left or right',
  notes: 'For whoever teaches it',
};

const MISREADINGS: Readonly<Record<Misreading, string>> = {
  'sides-swapped': 'Who takes each mark for what it says from its other side',
  'acts-at-once': 'Who thinks that a mark acts where it stands',
  'ink-mistaken': 'Who takes one ink for another',
};

const found = {
  title: 'Can it be met?',
  notReady: 'Not ready to play yet:',
  goal: (n: number): string => `Goal ${n}:`,
  looking: 'Looking',
  stillLooking: 'Still looking',
  stop: 'Stop looking',
  stopped: 'The search was stopped.',
  goOn: 'Look again',
  /** With the drawing that the search found. */
  met: (count: number): string =>
    count === 0 ? 'It is met without drawing anything.' : `It can be met, with ${marks(count)}.`,
  metByInk: (ink: string, count: number): string =>
    count === 0
      ? `It can be met, with ${ink} of line.`
      : `It can be met, with ${ink} of line and ${marks(count)}.`,
  ownMeets: 'Your own solution meets it.',
  ownUnsteady: 'Your own solution meets it, but not with 19 of 20 robots.',
  ownFails: 'Your own solution does not meet it.',
  cannot: 'It can’t be met.',
  open: (searched: string): string =>
    `None was found among ${searched} drawings that were tried. That is no proof.`,
  needsOwn:
    'Where teams draw lines, only your own solution shows that it can be met. Draw one under “Lines and marks”.',
  lookLonger: 'Look longer',
  asks: 'Nothing is drawn: teams answer questions.',
  take: 'Take this drawing as your own',
  drawing: 'The cheapest drawing that was found',
  hard: 'How hard it is',
  score: (score: number): string => `Difficulty ${numbers.short(score, 0)}`,
  how: 'Two for a mark, one for each reading that depends on the side, one where less than a step is to spare.',
  counts: ({ marks: count, sided }: Difficulty): string =>
    `${numbers.capital(marks(count))}, ${sided === 0 ? 'none' : numbers.words(sided)} read otherwise from the other side.`,
  slack: ({ slack }: Difficulty): string =>
    `At the tightest ${numbers.short(slack, 1)} steps to spare (a step: 1 cm, 1 s or 5 %).`,
  searched: ({ searched }: Difficulty): string => `The search drove ${numbers.short(searched, 0)} drawings.`,
  mistakes: 'Does it show mistakes?',
  /** With the names of the two inks that are taken for one another. */
  misreading: (misreading: Misreading, inks?: readonly [string, string]): string =>
    inks ? `Who takes ${inks[0]} for ${inks[1]}` : MISREADINGS[misreading],
  misread: ({ design, met }: Misread): string => {
    if (!design) return 'finds no drawing.';
    return met
      ? 'draws this, and it does all the same: the mistake does not show.'
      : 'draws this, and it fails: the mistake shows.';
  },
};

const fresh = {
  title: 'A fresh challenge',
  open: 'Fresh one',
  note: 'A new sheet with given lines. Just so many marks solve it, and nothing is left to chance.',
  topic: 'About',
  about: (topic: FreshTopic): string =>
    ({
      park: 'parking',
      pace: 'pace',
      junction: 'junctions',
      crossing: 'crossings',
      'turn-back': 'turning back',
    })[topic],
  marks: 'Difficulty',
  hard: (count: FreshMarks): string => `${{ 1: 'easy', 2: 'middling', 3: 'hard' }[count]} (${marks(count)})`,
  seed: 'Number of the sheet',
  seedNote: 'The same number gives the same sheet again.',
  make: 'Make it',
  making: 'Making it',
  stop: 'Stop',
  none: 'None came out right. Take another number or topic; this kit’s chart may lack what it needs.',
};

const own = {
  title: 'Your own challenges',
  note: 'Kept on this server for your desk, for every room of yours.',
  none: 'None yet. Make one, copy a ready one, or read a file.',
  loading: 'Looking for your challenges',
  make: 'Make a challenge',
  change: 'Change it',
  copy: 'Copy and change',
  save: 'Save as a file',
  read: 'Read a file',
  erase: 'Erase it',
  erased: (title: string): string => `“${title}” is erased.`,
  yours: 'yours',
  notReady: 'Not ready to play: something is still missing.',
  notAFile: 'This file could not be read as a challenge. Choose one that was saved with “Save as a file”.',
  badValue: (place: string, problem: string): string =>
    `This challenge file has a mistake: ${place} ${problem}.`,
  copyOf: (title: string): string => `${title}, copy`,
};

export const builder = {
  wish,
  places,
  lines,
  goals,
  asking,
  rules,
  found,
  fresh,
  own,
  back: 'Back to the desk',
  unit: (units: Units): string => units,
  name: 'Name of the challenge',
  undo: 'Undo',
  redo: 'Redo',
  parts: 'What is being built',
  saved: 'saved',
  saving: 'saving',
  notSaved: 'Not saved yet; this browser keeps it meanwhile.',
  loading: 'Looking for the challenge',
};
