import type { Predicate } from '../../documents/formula.ts';
import type { Pace } from '../../documents/kit.ts';
import { ROBOTS } from '../../documents/outlook.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { type Texts, textIn } from '../../documents/values.ts';
import { TOLERANCE } from '../../geometry/tolerances.ts';
import { actions } from './actions.ts';
import { the, to } from './names.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;
type PerKind<Said> = { readonly [K in Predicate['kind']]: (wish: WishOf<K>, sheet: Sheet) => Said };
type ForSome<Said> = {
  readonly [K in Predicate['kind']]?: (wish: WishOf<K>, sheet: Sheet) => Said | undefined;
};

interface Named {
  readonly id: string;
  readonly name: Texts;
}

const nameIn = (things: readonly Named[], id: string): string => {
  const found = things.find((thing) => thing.id === id);
  return found ? textIn(found.name, 'es') : id;
};
const named = ({ name }: { readonly name: Texts }): string => the(textIn(name, 'es'));

/** Places by the names that the sheet gives them: "la Panadería". */
export const places = {
  finish: (sheet: Sheet): string => (sheet.finish ? named(sheet.finish) : 'el final'),
  berth: (sheet: Sheet, berth: 'start' | 'finish'): string =>
    berth === 'start' ? named(sheet.start) : places.finish(sheet),
  area: (sheet: Sheet, id: string): string => the(nameIn(sheet.areas, id)),
  keepOut: (sheet: Sheet): string =>
    sheet.keepOut.length === 0 ? 'las zonas prohibidas' : numbers.list(sheet.keepOut.map(named)),
  gates: (sheet: Sheet, { gates, ordered }: WishOf<'gates'>): string => {
    const names = gates.map((id) => the(nameIn(sheet.gates, id)));
    if (names.length === 1) return names[0]!;
    return ordered ? inTurn(names) : `${numbers.list(names)}, en cualquier orden`;
  },
};

const HOW = { exactly: 'exactamente', 'at-least': 'al menos', 'at-most': 'como mucho' } as const;

const STRETCHES: Readonly<Record<Pace, readonly [one: string, many: string]>> = {
  creep: ['tramo de puntillas', 'tramos de puntillas'],
  steady: ['tramo normal', 'tramos normales'],
  brisk: ['tramo ligero', 'tramos ligeros'],
  fast: ['tramo rápido', 'tramos rápidos'],
};

const stretch = (count: number, pace: Pace): string => numbers.some(count, 'm', ...STRETCHES[pace]);

/** "al menos un tramo rápido de 15 cm o más" */
export const stretches = (wish: WishOf<'stretches'>): string =>
  `${HOW[wish.how]} ${stretch(wish.count, wish.pace)} de ${numbers.length(wish.length)} o más`;

const marks = (count: number): string => numbers.some(count, 'f', 'marca', 'marcas');

/** "una marca", "tres marcas distintas" */
export const differentMarks = (count: number): string =>
  count === 1 ? marks(1) : numbers.some(count, 'f', 'marca distinta', 'marcas distintas');

export const times = (count: number): string => numbers.some(count, 'f', 'vez', 'veces');

const inTurn = (names: readonly string[]): string =>
  names.map((name, i) => (i === 0 ? name : `luego ${name}`)).join(', ');

/** "18 de 20 robots" */
const ofRobots = ({ least }: WishOf<'steadiness'>): string =>
  `${Math.ceil(least * ROBOTS - TOLERANCE.shareOfRobots)} de ${ROBOTS} robots`;

/** Infinitives, so that "no" makes the opposite of most. */
const CLAUSES: PerKind<string> = {
  finish: (_, sheet) => `terminar en ${places.finish(sheet)}`,
  park: (wish, sheet) =>
    `estacionar en ${wish.area === undefined ? places.finish(sheet) : places.area(sheet, wish.area)}`,
  stretches: (wish) => `hacer ${stretches(wish)}`,
  'pace-at-end': (wish) => `ir ${actions.pace(wish.pace)} al final`,
  gates: (wish, sheet) => `pasar por ${places.gates(sheet, wish)}`,
  'every-gate': () => 'pasar por todas las puertas',
  'keep-out': (_, sheet) => `no tocar ${places.keepOut(sheet)}`,
  'stay-on-paper': () => 'no salir del papel',
  time: (wish) =>
    wish.from === 0
      ? `llegar en ${numbers.time(wish.to)} o menos`
      : `llegar después de ${numbers.time(wish.from)} y antes de ${numbers.time(wish.to)}`,
  'turn-back': (wish) =>
    wish.count === 0 ? 'no dar nunca media vuelta' : `dar media vuelta ${times(wish.count)}`,
  'read-marks': (wish) =>
    wish.count === 0 ? 'leer las marcas que quieras' : `leer al menos ${differentMarks(wish.count)}`,
  'act-in': (wish, sheet) =>
    `${wish.act === 'wait' ? 'esperar' : 'llamar'} en ${places.area(sheet, wish.area)}`,
  way: (wish) => `recorrer ${HOW[wish.how]} ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => (wish.most === 0 ? 'no usar marcas' : `usar como mucho ${marks(wish.most)}`),
  'ink-limit': (wish) => `dibujar como mucho ${numbers.length(wish.most)} de línea`,
  decided: () => 'no dejar nada al azar',
  steadiness: (wish) => `lograrlo con al menos ${ofRobots(wish)}`,
};

/** Opposites that read better than with "no" before them. */
const OPPOSITES: ForSome<string> = {
  stretches: (wish) => {
    if (wish.how === 'at-most')
      return `hacer ${stretches({ ...wish, how: 'at-least', count: wish.count + 1 })}`;
    if (wish.how === 'exactly' || wish.count === 0) return undefined;
    return `hacer ${stretches({ ...wish, how: 'at-most', count: wish.count - 1 })}`;
  },
  'keep-out': (_, sheet) => `tocar ${places.keepOut(sheet)}`,
  'stay-on-paper': () => 'salir del papel',
  'turn-back': (wish) => (wish.count === 0 ? 'dar media vuelta al menos una vez' : undefined),
  'read-marks': (wish) =>
    wish.count === 0 ? undefined : `leer como mucho ${differentMarks(wish.count - 1)}`,
  way: (wish) => `recorrer ${wish.how === 'at-least' ? 'menos' : 'más'} de ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => `usar al menos ${marks(wish.most + 1)}`,
  'ink-limit': (wish) => `dibujar más de ${numbers.length(wish.most)} de línea`,
  decided: () => 'dejar algo al azar',
  steadiness: (wish) => `lograrlo con menos de ${ofRobots(wish)}`,
};

/** For a narrow place: a few words, beside which the margin stands. */
const SHORT: PerKind<string> = {
  ...CLAUSES,
  finish: (_, sheet) => `llegar ${to(places.finish(sheet))}`,
  park: () => 'estacionar',
  stretches: (wish) => {
    const how = wish.how === 'exactly' ? '' : `${HOW[wish.how]} `;
    return `${how}${stretch(wish.count, wish.pace)} de ${numbers.length(wish.length)}`;
  },
  'pace-at-end': (wish) => `${actions.pace(wish.pace)} al final`,
  gates: (wish, sheet) => {
    const names = wish.gates.map((id) => nameIn(sheet.gates, id));
    return wish.ordered ? inTurn(names) : numbers.list(names);
  },
  'every-gate': () => 'todas las puertas',
  time: (wish) =>
    wish.from === 0
      ? `en ${numbers.time(wish.to)} o menos`
      : `de ${numbers.short(wish.from, 1)} a ${numbers.time(wish.to)}`,
  'turn-back': (wish) => (wish.count === 0 ? 'sin media vuelta' : `media vuelta ${times(wish.count)}`),
  'read-marks': (wish) => `leer ${differentMarks(wish.count)}`,
  way: (wish) => `${HOW[wish.how]} ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => (wish.most === 0 ? 'sin marcas' : `como mucho ${marks(wish.most)}`),
  'ink-limit': (wish) => `como mucho ${numbers.length(wish.most)} de línea`,
  decided: () => 'nada al azar',
  steadiness: ofRobots,
};

type Saying = (wish: Predicate, sheet: Sheet) => string | undefined;

/** What to do, as an infinitive. */
export const clauseOf = (wish: Predicate, sheet: Sheet): string =>
  (CLAUSES[wish.kind] as Saying)(wish, sheet)!;

/** The opposite, as an infinitive. */
export const oppositeOf = (wish: Predicate, sheet: Sheet): string =>
  (OPPOSITES[wish.kind] as Saying | undefined)?.(wish, sheet) ?? `no ${clauseOf(wish, sheet)}`;

/** A few words. */
export const shortOf = (wish: Predicate, sheet: Sheet): string => (SHORT[wish.kind] as Saying)(wish, sheet)!;
