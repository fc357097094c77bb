import type { Variant } from '../../documents/challenge.ts';
import type { Weather } from '../../documents/outlook.ts';
import type { ReturnReason } from '../../room/coaching.ts';
import type { OwnSheet } from '../../room/conditions.ts';
import { onClock } from '../clock.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

const { counted } = numbers;

/** Lo que la mesa dice de cada equipo, de lo que viene y de toda la clase. */

const REASONS: Readonly<Record<ReturnReason, string>> = {
  'by-mistake': 'entregado sin querer',
  'not-finished': 'aún sin acabar',
  'goals-again': 'para leer otra vez los objetivos',
  'talk-first': 'para hablarlo antes',
};

export const coaching = {
  say: 'Decir algo',
  to: (team: string) => `Una nota para ${team}`,
  ready: 'Una pista ya hecha',
  own: 'O con palabras propias',
  noNames: 'Sin nombres, por favor: las notas se guardan con la sala.',
  left: (n: number) => `Quedan ${counted(n, 'letra', 'letras')}`,
  send: 'Enviar',
  said: 'Lo dicho hasta ahora',
  isAway: 'guardada',
  onTablet: 'en la tableta',
  gentler: 'Forma más fácil',
  gentlerHow: 'Las líneas están dadas, el equipo pone las marcas. Desde fuera parece como las demás.',
  gentlerNone: 'Este reto no tiene forma más fácil.',
  inGentler: 'en la forma más fácil',
  giveBack: 'Devolverla',
  because: 'Por qué se devuelve',
  reason: (reason: ReturnReason): string => REASONS[reason],
  accept: 'Aceptarla',
  returned: 'devuelta, no cuenta',
  tried: 'Lo que probó',
};

const SHEETS: Readonly<Record<OwnSheet, string>> = {
  'as-drawn': 'como se dibujó',
  mirrored: 'como en un espejo',
  turned: 'con media vuelta',
};

export const conditions = {
  weather: 'Tiempo de esta ronda',
  ofTeam: 'Tiempo y hoja',
  teamWeather: 'Tiempo para sus robots',
  asChallenge: (weather: Weather): string => `${outlook.weather(weather)}, como el reto`,
  asClass: (weather: Weather): string => `${outlook.weather(weather)}, como la clase`,
  from: 'Para «Probar» y para las entregas desde ahora. Lo entregado conserva el suyo.',
  teamSheet: 'Su hoja',
  sheet: (sheet: OwnSheet): string => SHEETS[sheet],
  asBerth: (variant: Variant | null): string => `${SHEETS[variant ?? 'as-drawn']}, como su amarre`,
  sheetHow: 'Lo dibujado va con la hoja, izquierda por derecha. En el escenario cada dibujo sale en su hoja.',
  judgedIn: (weather: Weather): string => `juzgada con ${outlook.weather(weather)}`,
};

const STUCK = {
  gone: 'Se borró, o se fue con el enlace de su mesa. Se salta; se puede quitar.',
  'not-playable': 'No con este kit, o aún sin acabar. Se salta hasta que valga.',
} as const;

export const queue = {
  title: 'Lo que viene',
  none: 'No espera nada. Lo que se pone aquí está a una tecla cuando acaba este reto.',
  add: 'Ponerlo en la cola',
  off: 'Quitarlo de la cola',
  takeOff: (title: string) => `Quitar «${title}» de la cola`,
  sooner: (title: string) => `«${title}» antes`,
  later: (title: string) => `«${title}» después`,
  gone: 'Un reto que ya no está',
  stuck: (why: 'gone' | 'not-playable'): string => STUCK[why],
  next: (title: string) => `Sigue: ${title}`,
};

export const picture = {
  title: 'Imagen de la clase',
  which: 'Reto',
  none: 'Aún no se ha entregado nada para este reto.',
  predicted: 'Aquí se entregan respuestas, así que en la hoja no hay nada que ver.',
  rules: 'Dónde tropiezan los equipos',
  noRules: 'Nadie ha tropezado con una regla de dibujo.',
  trips: (teams: number, entries: number) =>
    `${counted(teams, 'equipo', 'equipos')}, ${counted(entries, 'entrega', 'entregas')}`,
  /** Of the findings of a rule the one that is furthest off, and what it is about. */
  worst: (measure: string, sentence: string): string => `En el peor caso, ${measure}. ${sentence}`,
  where: 'Dónde fallaron los recorridos',
  nowhere: 'Ningún recorrido ha fallado.',
  failed: (n: number) => `${counted(n, 'sitio donde', 'sitios donde')} fallaron recorridos`,
  counted: 'Cada número dice cuántos equipos tuvieron allí un recorrido que falló.',
  pdf: 'Guardar la imagen de la clase (PDF)',
  times: 'Minutos',
  screen: 'en la pantalla',
  paper: 'en papel',
  clock: onClock,
  whole: 'Toda la clase',
  team: 'Equipo',
  points: 'Puntos',
  tries: 'Pruebas',
  entries: 'Entregas',
  onTask: 'Tiempo de trabajo',
  onTaskHow: 'Tiempo de dibujo hasta la primera entrega que cumple el reto, o si no hasta la última.',
};
