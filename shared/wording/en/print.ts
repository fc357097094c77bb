import type { LineLook, MarkLook, PaperName, PrintKind } from '../../wire/print.ts';
import { fitPaper } from './fit.ts';
import { numbers } from './numbers.ts';

const { capital } = numbers;

/** The poster of the chart. */
const chart = {
  title: 'What the marks say',
  how: 'The robot reads the band that it meets first. The words stand at the side that it comes from.',
  foot: (inks: readonly string[], kit: string) =>
    `${capital(inks.join(' · '))}. ${kit}. Marks that are not here say nothing to this robot.`,
};

const gauge = {
  title: 'Gauge cards',
  how: 'Cut along the dashed lines and along the notch. Hold a card against a drawing before a robot does.',
  width: (length: string, which: 'least' | 'nominal' | 'most') =>
    `line ${length}${which === 'nominal' ? ': draw like this' : which === 'least' ? ': no thinner' : ': no thicker'}`,
  band: (length: string) => `one band, ${length} long`,
  plain: (length: string) => `${length} plain line before and after a mark`,
  corner: ['a corner that fills', 'this notch, or is wider,', 'is wide enough'],
};

const patch = {
  title: 'Calibration patches',
  how: 'Calibrate each robot where it will drive, in the light of the lesson, as the maker’s sheet says: on the dark patch, or on the dark patch and on the bare paper beside it. Calibrate again when the light changes.',
  paper: 'bare paper',
};

const strip = {
  title: 'Test strip',
  how: 'Printer and marker colours differ. Drive over this strip first: set a robot at the arrow, on the beginning of the line, and see whether it does what stands there. If it does not, print sheets with empty marks and paint them with the markers that came with your robots. Tape the sheet down flat, 10 cm from the table’s edge.',
  should: (does: string) => `should: ${does}`,
};

const slips = {
  columns: ['we think', 'it did', 'because'],
  challenge: 'challenge:',
};

const QUESTION_TITLES = {
  predict: 'What will the robot do?',
  'two-travellers': 'Two travellers',
  mend: 'Find the fault and mend it',
} as const;

const questions = {
  title: (kind: keyof typeof QUESTION_TITLES): string => QUESTION_TITLES[kind],
  how: {
    predict: 'The picture is smaller than the sheet. Decide together, then write.',
    'two-travellers':
      'Two robots come over the same marks, from one end and from the other. What does each mark say to each?',
    mend: 'The robot does not do what it should on this drawing. Mend it in the picture; change as little as you can.',
  },
  mark: (number: number, ask: string) => `Mark ${number}: ${ask.charAt(0).toLowerCase()}${ask.slice(1)}`,
  choose: 'Choose from:',
  should: 'The robot should:',
  wrong: 'What is wrong, and where?',
  mended: 'How did you mend it?',
  key: (title: string) => `Key: ${title}`,
  keyNote:
    'Worked out by the engine. It drives a model: a real robot may do otherwise, and then the reason is worth finding.',
  robots: (n: number, of: number) => `${n} of ${of} robots`,
  found: 'What the drawing rules say of the faulty drawing',
  missed: 'Goals that it misses',
  sound: 'A sound drawing',
  nothingFound: 'No drawing rule is broken: the marks say something else than was meant.',
};

const packs = {
  title: (word: string) => `Class pack of the room ${word}`,
  team: (name: string) => `Pack of team ${name}`,
  contents: 'In this file',
  first: 'Before you hand it out',
  steps: [
    'Print at 100 %, not “fit to page”. The ruler on every sheet must measure 100 mm; within half a millimetre is fine.',
    'Calibrate the robots on the patch, in the room’s own light.',
    'Drive over the test strip: printer and marker colours differ.',
    'Tape sheets down flat, 10 cm from the table’s edge; let ink dry before a robot drives over it.',
    'Keep to the maker’s instructions and your school’s own rules first.',
  ],
  lines: {
    chart: 'the chart for the wall',
    patch: 'calibration patches',
    strip: 'the test strip',
    gauge: 'gauge cards to cut',
    teams: (n: number) => `${numbers.counted(n, 'team', 'teams')}: a drawing or sheet to drive on, and slips`,
    noTeams: 'no team is in the room yet: the sheet to drive on stands alone',
  },
};

const KINDS: Readonly<Record<PrintKind, string>> = {
  sheet: 'Sheet of a challenge',
  drawing: 'A team’s drawing',
  chart: 'Chart for the wall',
  gauge: 'Gauge cards',
  patch: 'Calibration patches',
  strip: 'Test strip',
  'timed-line': 'Timed line',
  'timed-circle': 'Timed circle',
  limits: 'Limits of the robots',
  slips: 'Slips',
  predict: 'Questions: predict',
  'two-travellers': 'Questions: two travellers',
  mend: 'Questions: mend',
  supplies: 'Supplies',
  'lesson-plan': 'Lesson plan',
  closing: 'Closing check',
  evidence: 'Evidence',
  picture: 'Class picture',
  pack: 'Pack of a team',
  class: 'Pack of the class',
};

const KIND_NOTES: Readonly<Record<PrintKind, string>> = {
  sheet: 'True to size, for robots to drive on: berths, gates and given lines.',
  drawing: 'An entry, or what is on the tablet now, true to size.',
  chart: 'One row a mark, both of its ends named.',
  gauge: 'Line width, plain line, one band and a corner, to hold against a drawing.',
  patch: 'What robots are calibrated on, beside bare paper.',
  strip: 'Whether robots read this printer’s colours. Drive it before you print sheets with colours.',
  'timed-line': '500 mm between two strokes at each pace, for a stopwatch. Over several pages, to be taped.',
  'timed-circle': 'A circle of stated radius for a stopwatch.',
  limits: 'Corners that get sharper and bands that get shorter: what all robots make.',
  slips: 'We think · it did · because: four or more on a sheet of paper.',
  predict: 'All is given; teams write what will happen.',
  'two-travellers': 'The same marks, met from both ends.',
  mend: 'A faulty drawing, and a key that says what is wrong.',
  supplies: 'What the tables need, counted for the teams, with its cautions.',
  'lesson-plan': 'Phase by phase: what to do, to say and to heed, also for a substitute.',
  closing:
    'The last questions, about drawings of this class, to be ticked; the engine makes the key. Ask them first: only then are they made.',
  evidence: 'What the class and each team have shown, a page each, with pointers into published frameworks.',
  picture:
    'Which drawing rules trip how many teams, where runs failed, points and times: a page for each challenge.',
  pack: 'The team’s drawing, or the sheet where nothing is drawn yet, and slips.',
  class: 'Cautions, chart, patches, test strip, gauge cards, and a pack for each team, in one file.',
};

const LINES: Readonly<Record<LineLook, string>> = {
  ink: 'as full lines',
  dots: 'as dots to draw over',
};
const MARKS: Readonly<Record<MarkLook, string>> = {
  colour: 'in colour',
  paint: 'empty, to be painted',
};

/** The desk's and the tablet's part about paper. */
const page = {
  open: 'Paper',
  title: 'To paper, true to size',
  what: 'What to print',
  groups: {
    drive: 'To drive on',
    fit: 'To fit the kit by',
    room: 'For the room',
    write: 'To write on',
    plan: 'To plan with',
    all: 'All together',
  },
  kind: (kind: PrintKind) => KINDS[kind],
  note: (kind: PrintKind) => KIND_NOTES[kind],
  paper: 'Paper',
  paperName: (paper: PaperName): string => paper,
  challenge: 'Challenge',
  playing: (title: string) => `${title} (being played)`,
  team: 'Team',
  drawing: 'Drawing',
  newest: 'the newest',
  lines: 'Lines',
  line: (look: LineLook) => LINES[look],
  marks: 'Marks',
  mark: (look: MarkLook) => MARKS[look],
  dotsNote: 'Dots come with empty marks: there is no line yet for colours to lie on.',
  key: 'With the key',
  pdf: 'Save as PDF',
  svg: 'Save as SVG',
  making: (done: number, of: number) =>
    of === 1 ? 'Making the file' : `Making the file: part ${done} of ${of}`,
  stop: 'Stop',
  preview: 'First look',
  previewOf: (page: number, of: number) => `Page ${page} of ${of}`,
  before: 'Page before',
  next: 'Next page',
  looking: 'Drawing the page',
  noTeams: 'No team is in the room yet. Its drawings can be printed once it is.',
  scale: 'Print at 100 %, not “fit to page”, then measure the ruler on the sheet: it must be 100 mm.',
  colours:
    'Printer and marker colours differ. Print the test strip first and drive over it; where robots don’t read it, print empty marks and paint them.',
  toStrip: 'Test strip first',
};

/** What stands on printed pages, and what the pages say about printing. */
export const print = {
  measure: 'must measure 100 mm: print at 100 %',
  inksDiffer: 'Printed colours are not marker colours: drive the test strip first.',
  entry: (number: number) => `entry ${number}`,
  about: (title: string) => `Belongs to the sheet “${title}”`,
  tile: (number: number, of: number, row: number, column: number) =>
    `Part ${number} of ${of}: row ${row}, column ${column}`,
  joining: (left: boolean, above: boolean) => {
    const sides = [...(left ? ['left'] : []), ...(above ? ['upper'] : [])];
    return sides.length === 0
      ? 'Cut its neighbours at the corner strokes, lay cross on cross, and tape from behind.'
      : `Cut the ${sides.join(' and the ')} edge at the corner strokes, lay cross on cross, and tape from behind.`;
  },
  chart,
  gauge,
  patch,
  strip,
  fit: fitPaper,
  slips,
  questions,
  packs,
  page,
};
