import type { Choice, Question } from '../../documents/question.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { actions } from './actions.ts';
import { places } from './goal-clauses.ts';
import { of } from './names.ts';
import { numbers } from './numbers.ts';

type QuestionOf<K extends Question['kind']> = Extract<Question, { kind: K }>;
type PerQuestion = { readonly [K in Question['kind']]: (question: QuestionOf<K>, sheet: Sheet) => string };

const robotFrom = (sheet: Sheet, { start }: Question): string => `el robot ${of(places.berth(sheet, start))}`;

const placeOf = (sheet: Sheet, place: QuestionOf<'how-many'>['place']): string =>
  place.kind === 'berth' ? places.berth(sheet, place.berth) : places.area(sheet, place.area);

const ASKED: PerQuestion = {
  end: (q, sheet) => `¿Dónde acaba ${robotFrom(sheet, q)}?`,
  mark: (q, sheet) => `¿Qué le dice esta marca ${robotFrom(sheet, q).replace(/^el /, 'al ')}?`,
  pace: (q, sheet) => `¿Cómo pasa ${robotFrom(sheet, q)} por ${places.area(sheet, q.area)}?`,
  'how-many': (q, sheet) =>
    `${numbers.capital(numbers.words(q.of))} robots salen ${of(places.berth(sheet, q.start))}. ¿Cuántos crees que acaban en ${placeOf(sheet, q.place)}?`,
};

/** For the wall, where a question stands beside its answer and the sheet. */
const SHORT: PerQuestion = {
  end: (q, sheet) => `Desde ${places.berth(sheet, q.start)} acaba`,
  mark: (q, sheet) => `La marca dice, desde ${places.berth(sheet, q.start)}`,
  pace: (q, sheet) => `Por ${places.area(sheet, q.area)}, desde ${places.berth(sheet, q.start)}`,
  'how-many': (q, sheet) => `En ${placeOf(sheet, q.place)} esperamos`,
};

type ChoiceOf<K extends Choice['kind']> = Extract<Choice, { kind: K }>;
type PerChoice = { readonly [K in Choice['kind']]: (choice: ChoiceOf<K>, sheet: Sheet) => string };

const CHOICES: PerChoice = {
  berth: (choice, sheet) => `en ${placeOf(sheet, choice)}`,
  area: (choice, sheet) => `en ${placeOf(sheet, choice)}`,
  'loose-end': (choice) => `en el cabo suelto ${choice.letter}`,
  action: (choice) => actions.name(choice.action),
  pace: (choice) => actions.pace(choice.pace),
  never: () => 'nada: no llega allí o no la lee',
  elsewhere: () => 'en otro sitio',
  chance: () => 'no se sabe: es cosa del azar',
};

export const questions = {
  right: 'bien',
  wrong: 'mal',
  notAnswered: 'sin respuesta',
  howMany: (n: number, of: number): string => `${n} de ${of} robots`,
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
    right === of ? (of === 1 ? 'Bien.' : `Las ${of} bien.`) : `${right} de ${of} bien.`,
};
