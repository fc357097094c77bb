import type {
  ChallengeProblemCode,
  DesignRefusal,
  DesignRefusalCode,
  DocumentPath,
  KitProblemCode,
} from '../../documents/refusal.ts';
import { numbers } from './numbers.ts';

type Sentences = {
  readonly [C in DesignRefusalCode]: (refusal: Extract<DesignRefusal, { code: C }>) => string;
};

const REFUSALS: Sentences = {
  'mark-without-line': () =>
    'A mark stands on a line that is not there any more. Take it away or move it to a line.',
  'mark-past-end': () => 'A mark stands past the end of its line. Move it back onto the line.',
  'id-already-given': () => 'A drawn line or mark has the same name as a given one. Draw it again.',
  'unknown-ink': (r) =>
    `A mark has a band in ink ${r.ink}, which this kit does not have. Choose one of its inks.`,
  'too-many-pieces': (r) =>
    `The drawing has ${r.measured} straights and curves, and at most ${r.allowed} fit. Take some lines away.`,
  'too-many-marks': (r) =>
    `There are ${r.measured} marks, and at most ${r.allowed} are allowed. Take some away.`,
  'too-much-line': (r) =>
    `There are ${metres(r.measured)} m of line, and this sheet holds at most ${metres(r.allowed)} m. Take some lines away.`,
  'too-many-meetings': (r) => `Lines cross or touch in more than ${r.allowed} places. Take some lines away.`,
  'finish-missing': () =>
    'A robot is to set out from a finish berth, and the sheet has none. Choose another challenge.',
  'start-missing': () =>
    'A goal is about a robot from a berth that none sets out from. Choose another challenge.',
  'size-zero': () => 'A size or speed of the robot is 0, so it cannot drive. Choose another kit.',
};

const metres = (mm: number) => numbers.fixed(mm / 1000, 1);

const PROBLEMS: Readonly<Record<Exclude<ChallengeProblemCode, DesignRefusalCode | KitProblemCode>, string>> =
  {
    'unknown-gate': 'A goal names a gate that the sheet does not have.',
    'unknown-area': 'A goal names an area that the sheet does not have.',
    'gates-missing': 'A goal asks for every gate, and the sheet has none.',
    'keep-out-missing': 'A goal asks to keep out, and the sheet has no area to keep out of.',
    'same-id-twice': 'Two things have the same id.',
    'sheet-too-large': 'The sheet is larger than 4 m × 2 m.',
    'off-the-sheet': 'Something lies off the sheet.',
    'box-too-small': 'A box for marks is smaller than the smallest mark.',
    'given-lines-missing': 'In “fill in” the lines are given, and the sheet has none.',
    'begin-missing': 'In “mend” the drawing begins with a fault, and there is no drawing to begin with.',
    'goals-missing': 'There is no goal.',
    'asks-missing': 'In “predict” there are questions to answer, and there is none.',
    'window-empty': 'The time window ends before it begins.',
    'window-unfair': 'The time window is narrower than robots differ in speed: give it 6 % to either side.',
    'too-much-ink': 'There is more line than allowed.',
  };

const DESIGN_PROBLEMS: Readonly<Record<Exclude<DesignRefusalCode, KitProblemCode>, string>> = {
  'mark-without-line': 'A mark stands on a line that is not there.',
  'mark-past-end': 'A mark stands past the end of its line.',
  'id-already-given': 'A drawn line or mark has the id of a given one.',
  'unknown-ink': 'A mark has a band in an ink that the kit does not have.',
  'too-many-pieces': 'There are more straights and curves than fit.',
  'too-many-marks': 'There are more marks than allowed.',
  'too-much-line': 'There is more line than the sheet can hold.',
  'too-many-meetings': 'Lines cross or touch in more places than allowed.',
  'finish-missing': 'A goal or a start needs a finish berth, and the sheet has none.',
  'start-missing': 'This is about a robot from a berth that none sets out from.',
};

const KIT_PROBLEMS: Readonly<Record<KitProblemCode, string>> = {
  'word-twice': 'The chart says twice what this word means.',
  'reverse-without-meaning': 'The same bands met from the other side have no meaning in the chart.',
  'equal-neighbours': 'Two bands of one ink stand side by side, which this kit cannot tell apart.',
  'two-way-turns-back':
    'This word reads the same from both sides and turns back: the robot would meet it again and again.',
  'ink-not-in-kit': 'A word of the chart has an ink that the kit does not have.',
  'too-few-bands': 'This word has fewer bands than the kit allows.',
  'too-many-bands': 'This word has more bands than the kit allows.',
  'ink-letter-twice': 'Two inks have the same letter.',
  'colours-too-close': 'This colour is easily taken for another one of the kit.',
  'size-zero': 'This length or speed is 0, and has to be more.',
  'out-of-order': 'This has to be at least as much as the number before it.',
  'out-of-range': 'This number is outside of what is possible here.',
};

/** Codes of the schemas and of values that are wrong in themselves. Others are said as they are. */
const FORM: Readonly<Record<string, string>> = {
  invalid_type: 'is missing or of the wrong kind',
  invalid_value: 'is none of the values that are possible here',
  invalid_union: 'is none of the forms that are possible here',
  invalid_format: 'is written in a form that is not possible here',
  too_big: 'is too large',
  too_small: 'is too small',
  unrecognized_keys: 'has entries that do not belong there',
  'line-of-length-zero': 'has a line whose two ends are the same point',
  'too-many-pieces': 'has more straights and curves than fit',
  'same-id-twice': 'uses the same id twice',
};

/** `drawing.marks[3].line`; the document itself where the path is empty. */
function place(path: DocumentPath): string {
  const text = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
  return text === '' ? 'the document' : text.replace(/^\./, '');
}

export const judging = {
  /** Why a drawing is not judged, and what to do. */
  refusal: (refusal: DesignRefusal): string =>
    (REFUSALS[refusal.code] as (r: DesignRefusal) => string)(refusal),
  /** What is wrong with a challenge, or with a kit. */
  challengeProblem: (code: ChallengeProblemCode): string =>
    ({ ...DESIGN_PROBLEMS, ...KIT_PROBLEMS, ...PROBLEMS })[code],
  /** What is wrong with a value of a document, after its place: "is too large". */
  form: (code: string): string => FORM[code] ?? code,
  place,
  severity: { stops: 'stops the robot', 'may-stop': 'may stop the robot', untidy: 'untidy' },
  /** How a goal stands, and what it gave. */
  stands: {
    outOf: (got: number, of: number) => `${got} of ${of}`,
    met: 'met',
    notMet: 'not met',
    luck: 'left to luck',
  },
};
