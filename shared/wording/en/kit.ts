import { fields, tolerances } from './kit-fields.ts';
import { rules } from './kit-rules.ts';
import { library } from './library.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

export type KitSection = 'robot' | 'paces' | 'inks' | 'chart' | 'rules';
export type SightName = 'normal' | 'protan' | 'deutan' | 'tritan';
export type ConventionName = 'linear' | 'gamma';

const SECTIONS: Readonly<Record<KitSection, string>> = {
  robot: 'Robot',
  paces: 'Paces',
  inks: 'Inks',
  chart: 'Chart',
  rules: 'Drawing rules',
};

const SIGHTS: Readonly<Record<SightName, string>> = {
  normal: 'normal sight',
  protan: 'without red cones',
  deutan: 'without green cones',
  tritan: 'without blue cones',
};

const CONVENTIONS: Readonly<Record<ConventionName, string>> = {
  linear: 'in light',
  gamma: 'in screen values',
};

const lookOf = (sight: SightName, convention: ConventionName): string =>
  sight === 'normal' ? SIGHTS[sight] : `${SIGHTS[sight]}, ${CONVENTIONS[convention]}`;

const shelf = {
  title: 'Kit',
  first:
    'What the class owns: robots, pens and the chart of marks. What came with the robots says their sizes and speeds; a ruler says the rest.',
  loading: 'Looking for kits',
  none: 'No kit of your own yet. Copy the demo kit and change it, begin a new one, or open a kit file.',
  notKept:
    'This link is for one room. Kits can be changed and used here and saved as files, but are not kept for other rooms.',
  demo: 'comes with the program',
  saved: (when: string) => `saved ${when}`,
  sound: 'passes its checks',
  draft: (n: number) => `draft: ${counted(n, 'thing', 'things')} to mend`,
  used: 'this room plays with it',
  usedEarlier: 'this room plays with an earlier version',
  nowPlays: (name: string) => `This room plays with “${name}”.`,
  fromNext: 'A challenge that has been chosen already keeps the kit that it was chosen with.',
  use: 'Use in this room',
  chooseThis: (name: string) => `Use “${name}” in this room`,
  edit: 'Change',
  editThis: (name: string) => `Change “${name}”`,
  copy: 'Copy',
  copyThis: (name: string) => `Copy “${name}”`,
  copyOf: (name: string) => `Copy of ${name}`,
  file: 'Save as a file',
  fileThis: (name: string) => `Save “${name}” as a file`,
  remove: 'Remove',
  removeThis: (name: string) => `Remove “${name}”`,
  removed: (name: string) => `“${name}” is removed. Rooms that use it keep it.`,
  earlier: (n: number) => `Earlier versions (${n})`,
  lookAt: (when: string) => `Go on from ${when}`,
  make: 'New kit',
  newName: 'New kit',
  open: 'Open a kit file',
  notAKit: 'This file could not be read as a kit. Choose one that was saved with “Save as a file”.',
  tooLarge: 'This file is too large for a kit. Choose one that was saved with “Save as a file”.',
  unsaved: (name: string) => `“${name}” has changes that are not saved.`,
  goOn: 'Go on with them',
  throwAway: 'Throw them away',
  thrownAway: (name: string) => `The changes to “${name}” are thrown away.`,
  challenges: (playable: number, of: number) => `${playable} of ${of} ready challenges can be played`,
  standing: library.standing,
};

const editor = {
  name: 'Name of the kit',
  back: 'Back to the kits',
  save: 'Save',
  saving: 'Saving',
  saved: 'Saved.',
  undo: 'Undo',
  redo: 'Redo',
  sections: 'Parts of the kit',
  section: (section: KitSection): string => SECTIONS[section],
  problems: (n: number) => counted(n, 'problem', 'problems'),
  draft: (n: number) =>
    `${counted(n, 'thing keeps', 'things keep')} a room from playing with this kit. It can be saved as a draft.`,
  sound: 'This kit passes its checks.',
  between: (least: string, most: string) =>
    `A number from ${least} to ${most}. The last one stays until then.`,
};

const inks = {
  line: 'Line',
  paper: 'Paper',
  letter: 'Letter',
  letterOf: (n: number) => `Letter of ink ${n}`,
  name: 'Name',
  colour: 'Colour',
  colourOf: (what: string) => `Colour of ${what}`,
  codeOf: (what: string) => `Colour code of ${what}`,
  codeHow: 'A colour is written as # and six digits from 0 to F. The last one stays until then.',
  hatch: 'Hatch',
  hatches: { diagonal: 'slanted', cross: 'upright', dots: 'dots', along: 'along' },
  add: 'One more ink',
  newName: 'new ink',
  removeThis: (letter: string) => `Take ink ${letter} away`,
  equal: 'Two bands of one ink may stand side by side',
  equalNote: 'Only robots that measure how long a band is can tell two from one.',
  table: 'How far apart the colours are',
  how: 'CIEDE2000; from about 20 on nobody takes one for the other. Colour-deficient sight is simulated to its full extent by published matrices, which are applied to light or to screen values: which is right is disputed, so both are shown.',
  pair: 'Two colours',
  sight: (sight: SightName): string => SIGHTS[sight],
  look: lookOf,
  convention: (convention: ConventionName): string => CONVENTIONS[convention],
  least: (
    one: string,
    two: string,
    difference: number,
    sight: SightName,
    convention: ConventionName,
  ): string => `Nearest: ${one} and ${two}, ${numbers.fixed(difference, 1)}, ${lookOf(sight, convention)}.`,
  close: 'easily mixed up',
};

const chart = {
  how: 'One row a mark: its bands by their letters, what it means, and what it means from the other side. Enter goes to the next row; in a meaning a letter or two find it.',
  keys: 'An emptied mark takes its row away. Up and down change a meaning.',
  mark: 'Mark',
  markOf: (row: number) => `Mark ${row}`,
  picture: 'Bands',
  meaning: 'Means',
  meaningOf: (row: number) => `Meaning of mark ${row}`,
  back: 'From the other side',
  backOf: (row: number) => `Meaning of mark ${row} from the other side`,
  same: 'the same',
  noMeaning: 'no meaning yet',
  secondsOf: (row: number) => `Seconds of mark ${row}`,
  secondsBackOf: (row: number) => `Seconds of mark ${row} from the other side`,
  lasting: (name: string) => `${name} for a time`,
  removeThis: (word: string) => `Take mark ${word} away`,
  count: (marks: number, words: number) =>
    `${counted(marks, 'mark', 'marks')}, ${counted(words, 'word', 'words')}`,
  none: 'No mark yet. Type the first one.',
  csv: 'Save as CSV',
  json: 'Save as JSON',
  open: 'Open a chart file',
  opened: (marks: number) => `${counted(marks, 'mark', 'marks')} read. Undo brings the chart before back.`,
  trouble: {
    'no-chart': () => 'No marks were found in this file. Choose a CSV or JSON file that was saved here.',
    'too-long': ({ most }: { readonly most: number }) =>
      `A chart holds at most ${most} words. Take some rows out of the file.`,
    'no-word': ({ row, cell }: { readonly row: number; readonly cell: string }) =>
      `Line ${row}: “${cell}” is no mark. A mark has one to eight letters of inks.`,
    'no-meaning': ({ row, cell }: { readonly row: number; readonly cell: string }) =>
      `Line ${row}: “${cell}” is no meaning that the robots know. Write it as the chart on this page does.`,
  },
};

export const kit = { shelf, editor, fields, tolerances, rules, inks, chart };
