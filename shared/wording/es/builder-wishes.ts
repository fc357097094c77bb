import type { MomentWish, Operator, RunWish } from '../en/builder-wishes.ts';
import { numbers } from './numbers.ts';

/** Para docentes: las listas de las que se elige un deseo. La frase que sale es `goals.sentence`. */

const RUN: Readonly<Record<RunWish, string>> = {
  finish: 'llegar al final',
  park: 'estacionar en un lugar',
  stretches: 'tramos a un paso',
  'pace-at-end': 'paso al final',
  gates: 'cruzar puertas',
  'every-gate': 'cruzar todas las puertas',
  'keep-out': 'no entrar en lo prohibido',
  'stay-on-paper': 'no salirse del papel',
  time: 'llegar en un margen de tiempo',
  'turn-back': 'dar media vuelta tantas veces',
  'read-marks': 'leer marcas distintas',
  'act-in': 'esperar o llamar en una zona',
  way: 'longitud del camino recorrido',
  'mark-limit': 'como mucho tantas marcas',
  'ink-limit': 'como mucho tanta línea',
  decided: 'nada al azar',
  steadiness: 'tantos de 20 robots lo logran',
};

const MOMENT: Readonly<Record<MomentWish, string>> = {
  finish: 'en el final',
  stretches: 'tramos a un paso hasta ahora',
  gates: 'puertas cruzadas hasta ahora',
  'every-gate': 'todas las puertas cruzadas hasta ahora',
  'keep-out': 'fuera de lo prohibido',
  'stay-on-paper': 'sobre el papel',
  'turn-back': 'medias vueltas hasta ahora',
  'read-marks': 'marcas leídas hasta ahora',
  'act-in': 'ha esperado o llamado en una zona',
  way: 'camino recorrido hasta ahora',
  'in-area': 'en una zona',
  pace: 'a un paso',
};

const OPERATORS: Readonly<Record<Operator, string>> = {
  not: 'lo contrario de',
  and: 'todo esto',
  or: 'una de estas cosas, o más',
  always: 'en todo momento',
  eventually: 'en algún momento',
  until: 'una cosa hasta otra',
  lasting: 'durante tanto tiempo en total',
};

const HOW = { exactly: 'exactamente', 'at-least': 'al menos', 'at-most': 'como mucho' } as const;

const CHOICES = {
  pace: 'Paso',
  how: 'Cuántos',
  'how-much': 'Cuánto',
  act: 'Qué hace',
  area: 'Zona',
  'area-or-finish': 'Dónde',
} as const;

const NUMBERS: Readonly<Record<string, string>> = {
  'stretches count': 'Tramos',
  'stretches length': 'Cada uno de',
  'time from': 'Después de',
  'time to': 'Antes de',
  'turn-back count': 'Veces',
  'read-marks count': 'Marcas',
  'way length': 'Longitud',
  'mark-limit most': 'Marcas',
  'ink-limit most': 'Línea',
  'steadiness least': 'Al menos',
};

export const wish = {
  which: 'Qué se desea',
  whichMoment: 'Qué se cumple en ese momento',
  plain: 'Una cosa',
  together: 'Compuesto',
  run: (kind: string): string => RUN[kind as RunWish] ?? kind,
  moment: (kind: string): string => MOMENT[kind as MomentWish] ?? kind,
  operator: (kind: Operator): string => OPERATORS[kind],
  part: (kind: string, at: number): string => {
    if (kind === 'until') return at === 0 ? 'se cumple' : 'hasta que';
    if (kind === 'and' || kind === 'or') return numbers.short(at + 1, 0);
    return kind === 'not' ? 'de qué' : 'qué se cumple';
  },
  more: 'Uno más',
  less: 'Quitar',
  lessOf: (n: number): string => `Quitar la parte ${n}`,
  seconds: 's',
  within: 'A más tardar después de (vacío: sin límite)',
  howLong: 'Cuánto tiempo',
  inAll: 'en total',
  from: 'Desde',
  to: 'Hasta (vacío: el final)',
  ordered: 'en este orden',
  number: (kind: string, key: string): string => NUMBERS[`${kind} ${key}`] ?? key,
  ofRobots: (n: number): string => `de ${n} robots`,
  choice: (of: keyof typeof CHOICES): string => CHOICES[of],
  how: (how: keyof typeof HOW): string => HOW[how],
  act: (act: 'wait' | 'signal'): string => (act === 'wait' ? 'esperar' : 'llamar'),
  inFinish: 'en el amarre final',
  noPlace: 'todavía no está en la hoja',
  gate: (n: number): string => `Puerta ${n}`,
  lessGate: (n: number): string => `Quitar la puerta ${n}`,
  moreGates: 'Una puerta más',
};
