import type { Choice, Question } from '../../documents/question.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { actions } from './actions.ts';
import { places } from './goal-clauses.ts';
import { numbers } from './numbers.ts';

type QuestionOf<K extends Question['kind']> = Extract<Question, { kind: K }>;
type PerQuestion = { readonly [K in Question['kind']]: (question: QuestionOf<K>, sheet: Sheet) => string };

const robotFrom = (sheet: Sheet, { start }: Question): string =>
  `the robot from ${places.berth(sheet, start)}`;

const placeOf = (sheet: Sheet, place: QuestionOf<'how-many'>['place']): string =>
  place.kind === 'berth' ? places.berth(sheet, place.berth) : places.area(sheet, place.area);

const ASKED: PerQuestion = {
  end: (q, sheet) => `Where does ${robotFrom(sheet, q)} end?`,
  mark: (q, sheet) => `What does this mark say to ${robotFrom(sheet, q)}?`,
  pace: (q, sheet) => `How does ${robotFrom(sheet, q)} drive over ${places.area(sheet, q.area)}?`,
  'how-many': (q, sheet) =>
    `${numbers.capital(numbers.words(q.of))} robots start from ${places.berth(sheet, q.start)}. How many do you expect at ${placeOf(sheet, q.place)}?`,
};

/** For the wall, where a question stands beside its answer and the sheet. */
const SHORT: PerQuestion = {
  end: (q, sheet) => `From ${places.berth(sheet, q.start)} it ends`,
  mark: (q, sheet) => `The mark says, from ${places.berth(sheet, q.start)}`,
  pace: (q, sheet) => `Over ${places.area(sheet, q.area)}, from ${places.berth(sheet, q.start)}`,
  'how-many': (q, sheet) => `At ${placeOf(sheet, q.place)} we expect`,
};

type ChoiceOf<K extends Choice['kind']> = Extract<Choice, { kind: K }>;
type PerChoice = { readonly [K in Choice['kind']]: (choice: ChoiceOf<K>, sheet: Sheet) => string };

const CHOICES: PerChoice = {
  berth: (choice, sheet) => `at ${placeOf(sheet, choice)}`,
  area: (choice, sheet) => `at ${placeOf(sheet, choice)}`,
  'loose-end': (choice) => `where line end ${choice.letter} is`,
  action: (choice) => actions.name(choice.action),
  pace: (choice) => (choice.pace === 'creep' ? 'on tiptoe' : actions.pace(choice.pace)),
  never: () => 'nothing: it does not come there or does not read it',
  elsewhere: () => 'somewhere else',
  chance: () => 'nobody knows: it is left to chance',
};

export const questions = {
  right: 'right',
  wrong: 'not right',
  notAnswered: 'no answer yet',
  howMany: (n: number, of: number): string => `${n} of ${of} robots`,
  /** One plain question. The page points at the mark that it is about. */
  ask: (question: Question, sheet: Sheet): string =>
    (ASKED[question.kind] as (question: Question, sheet: Sheet) => string)(question, sheet),
  /** A few words for the same, that an answer follows. */
  short: (question: Question, sheet: Sheet): string =>
    `${(SHORT[question.kind] as (question: Question, sheet: Sheet) => string)(question, sheet)}:`,
  /** One answer to choose. */
  choice: (choice: Choice, sheet: Sheet): string =>
    (CHOICES[choice.kind] as (choice: Choice, sheet: Sheet) => string)(choice, sheet),
  result: (right: number, of: number): string =>
    right === of ? (of === 1 ? 'Right.' : `All ${of} right.`) : `${right} of ${of} right.`,
};
