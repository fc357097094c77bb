import type { Cause, Weather } from '../../documents/outlook.ts';
import type { BoardScene, BoardSetting } from '../../room/board.ts';
import type { Hindrance } from '../en/scenes.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

/** The board's scenes: their names at the desk, and what those that are no step of the lesson say. */

const { counted, plural } = numbers;

const NAMES: Readonly<Record<BoardScene, string>> = {
  wall: 'Malecón',
  brief: 'Reto',
  building: 'Dibujo',
  stage: 'Escena',
  gallery: 'Galería',
  fleet: 'Flota',
  forecast: 'Manos',
  closing: 'Juntos',
};

const SETTINGS: Readonly<Record<BoardSetting, string>> = {
  dark: 'Oscuro',
  sound: 'Sonido',
  still: 'Quieta',
};

const SETTING_NOTES: Readonly<Record<BoardSetting, string>> = {
  dark: 'Tinta clara sobre fondo oscuro, para una sala con mucha luz; las hojas siguen blancas',
  sound: 'Tonos cortos y suaves: se lee una marca, llega un robot',
  still: 'La pizarra se queda quieta tal como está ahora',
};

const HINDERED: Readonly<Record<Hindrance, string>> = {
  building: 'No mientras los equipos dibujan.',
  'no-challenge': 'Hay que elegir antes un reto.',
  'no-drawings': 'Aún no se ha entregado ningún dibujo para este reto.',
  'no-marks': 'Este reto no da marcas. Elegir uno que se predice o se arregla, o esperar un dibujo.',
  step: 'Llega con su paso de la clase.',
};

export const scenes = {
  title: 'Pizarra',
  lesson: 'Clase',
  lessonNote: 'Lo que toca en este paso de la clase',
  name: (scene: BoardScene): string => NAMES[scene],
  setting: (setting: BoardSetting): string => SETTINGS[setting],
  settingNote: (setting: BoardSetting): string => SETTING_NOTES[setting],
  still: 'Una imagen quieta',
  soundWaits: 'Pulsa aquí una tecla una vez para que esta página pueda sonar.',
  gallery: (n: number): string => counted(n, 'dibujo', 'dibujos'),
  drawingOf: (name: string, n: number): string => `El dibujo de ${name}, entrega ${n}`,
  hindered: (why: Hindrance): string => HINDERED[why],
  drawing: 'Dibujo',
  weather: 'Tiempo',
  page: (n: number, of: number): string => `Página ${n} de ${of}`,
  nextPage: 'Página siguiente',
  again: 'Otra vez',
  choose: 'Elegir una escena: primero la letra, luego el número',
  goOn: 'Seguir con la escena: la marca, página o salida siguiente',
  fleet: {
    title: (weather: Weather): string => `Veinte robots con ${outlook.weather(weather)}`,
    ready: (n: number, of: number): string =>
      `${n} de ${counted(of, 'robot', 'robots')} ${plural(n, 'está listo', 'están listos')}`,
    soFar: (same: number, of: number): string =>
      `${same} de ${of} ${plural(same, 'sigue', 'siguen')} según el plan`,
    made: (same: number, of: number, met: boolean): string =>
      `${same} de ${of} ${met ? plural(same, 'lo consigue', 'lo consiguen') : plural(same, 'cumple el plan', 'cumplen el plan')}`,
    /** Under how many make it: so many others, and why. */
    cause: (n: number, cause: Cause): string => `${n} ${outlook.cause(cause)}`,
    none: 'Ningún robot puede salir aquí.',
  },
  foretell: {
    title: '¿Qué pasa ahora?',
    mark: (n: number, of: number): string => `marca ${n} de ${of}`,
    ask: 'Mano arriba: ¿qué dice esta marca?',
    says: 'Esta marca dice',
    begins: 'El robot para antes de cada marca. Entonces se levanta la mano.',
    noMarks: 'No hay marcas en su camino.',
    label: 'El robot en su camino',
    right: (n: number, of: number): string =>
      `${n} de ${counted(of, 'mano', 'manos')} ${plural(n, 'acierta', 'aciertan')}`,
    /** At the desk. */
    given: 'lo que da el reto',
    hands: (letter: string, answer: string): string => `Manos para ${letter}: ${answer}`,
    inkMistaken: 'Tomó un color por otro.',
    isRight: 'correcta',
    driveOn: 'Seguir',
    driving: 'El robot va hacia la marca siguiente.',
    over: 'El recorrido ha terminado.',
  },
  closing: {
    robots: (there: number, of: number): string =>
      there >= of
        ? `${counted(of, 'robot ha vuelto', 'robots han vuelto')}${of > 1 ? ': están todos' : ''}`
        : `${there} de ${counted(of, 'robot ha vuelto', 'robots han vuelto')}`,
    caps: (there: number, of: number): string =>
      there >= of
        ? `${counted(of, 'tapón puesto', 'tapones puestos')}${of > 1 ? ': están todos' : ''}`
        : `${there} de ${counted(of, 'tapón puesto', 'tapones puestos')}`,
    growth: 'Desde el primer dibujo',
    grown: (points: number): string => counted(points, 'punto más', 'puntos más'),
    met: 'todo cumplido',
    /** Where a whole hall has room for a word a team. */
    grownShort: (points: number): string => `+${points}`,
    metShort: 'cumplido',
    drawings: (n: number): string => counted(n, 'dibujo', 'dibujos'),
    here: 'ha venido',
    /** At the desk. */
    count: { robots: 'Robots en sus amarres', caps: 'Tapones puestos' },
    of: 'de',
  },
};
