import type { Cause, Weather } from '../../documents/outlook.ts';
import type { Guess, NextKind } from '../../documents/reason.ts';
import type { RobotsDo } from '../en/foretelling.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

/** What a tablet asks before a run and after it. For children: one or two taps. */

const GUESS: Readonly<Record<Guess, string>> = {
  'makes-it': 'Lo consigue',
  fails: 'No lo consigue',
  'not-sure': 'No lo sé',
};

const NEXT: Readonly<Record<NextKind, string>> = {
  'fewer-marks': '¿Funciona también con una marca menos?',
  'other-end': '¿Lo consigue también un robot desde el otro lado?',
  storm: '¿Lo consigue la mayoría de los robots en una tormenta?',
};

const robots = (same: number, of: number): string => `${same} de ${numbers.counted(of, 'robot', 'robots')}`;

const ROBOTS_DO: Readonly<Record<RobotsDo, string>> = {
  'make-it': 'lo consiguen',
  'the-same': 'hacen lo mismo',
  'one-of-its-ways': 'van por uno de estos caminos',
};

export const foretelling = {
  ask: '¿Qué hará el robot?',
  askWhere: '¿Dónde sale mal? Toca el sitio.',
  where: 'La hoja: toca donde sale mal',
  noIdea: 'No sabemos dónde',
  guess: (guess: Guess): string => GUESS[guess],
  differs: (guess: Guess, made: boolean): string =>
    `Dijiste: ${GUESS[guess].toLowerCase()}. ${made ? 'Lo consiguió.' : 'No lo consiguió.'} ¿Por qué?`,
  right: 'Sí, es eso.',
  wrong: (but: string): string => `Eso no. ${but}`,
  truth: (reason: string): string => `Es esto: ${reason}`,
  show: 'Enséñamelo',
  trouble: 'Al problema',
  log: 'Qué pasó',
  bar: 'Sensores',
  barSees: (seen: string): string => `El sensor del medio ve ${seen}`,
  seenLine: 'línea',
  seenPaper: 'papel',
  seenOther: 'algo intermedio',
  robots: (same: number, of: number, weather: Weather, does: RobotsDo): string =>
    `${robots(same, of)} ${ROBOTS_DO[does]} con ${outlook.weather(weather)}`,
  drivenIn: (weather: Weather): string => `Veinte robots irán por el dibujo con ${outlook.weather(weather)}.`,
  counting: 'Veinte robots en marcha',
  frays: (left: number, of: number, cause: Cause): string =>
    `Donde la línea se deshilacha se fueron ${numbers.counted(left, 'robot', 'robots')} de ${of}: ${outlook.cause(cause)}.`,
  noFray: (of: number): string => `Ninguno de ${of} robots deja la línea.`,
  chance: (chance: number): string => `${numbers.short(chance * 20, 1)} de 20`,
  chooseWay: (way: string, chance: string): string => `${way}: ${chance}`,
  next: 'La pregunta siguiente',
  nextAsk: (kind: NextKind): string => NEXT[kind],
  yes: 'Sí',
  no: 'No',
  seeIt: 'Verlo',
  another: 'Otra pregunta',
  ownRun: 'Volver a nuestro recorrido',
  youSaid: (right: boolean): string => (right ? 'Así es.' : 'No.'),
  spare: 'Este dibujo tiene una marca que no le hace falta.',
  noSpare: 'Necesita todas sus marcas. ¿Hay otro dibujo con una marca menos?',
  otherEnd: (met: boolean): string =>
    met ? 'Desde el otro lado también llega.' : 'Desde el otro lado no lo consigue.',
  storm: (same: number, of: number): string => `En una tormenta lo consiguen ${robots(same, of)}.`,
};
