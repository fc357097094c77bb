import type { Light } from '../../room/calibration.ts';
import { numbers } from './numbers.ts';

const LIGHTS: Readonly<Record<Light, string>> = {
  daylight: 'luz del día',
  sun: 'sol en la mesa',
  lamps: 'lámparas',
  mixed: 'luz del día y lámparas',
  dim: 'poca luz',
};

/** The desk's log of which robot was calibrated when, and in which light. */
export const calibration = {
  title: 'Los robots',
  teams: 'Equipos',
  leaves: 'En el malecón',
  how: 'Calibrar un robot en el parche, donde va a conducir y como diga su fabricante. Luego tocar su amarre: un robot tiene el número de su amarre.',
  light: 'La luz de ahora',
  lightIs: (light: Light): string => LIGHTS[light],
  robot: (n: number): string => `El robot ${n}`,
  not: 'sin calibrar',
  done: (light: Light, when: string): string => `${when}, ${LIGHTS[light]}`,
  due: 'otra vez',
  count: (n: number, of: number): string =>
    `${n} de ${numbers.counted(of, 'robot', 'robots')} ${numbers.plural(n, 'está calibrado', 'están calibrados')}`,
  changed: 'La luz ha cambiado',
  changedNote: 'Todos quedan pendientes: los robots leen los colores según la luz en la que se calibraron.',
  log: 'Registro de calibraciones',
  logNone: 'Aún no se ha calibrado ningún robot.',
  line: (robot: number, light: Light): string => `Robot ${robot} calibrado, ${LIGHTS[light]}`,
  lineChanged: 'La luz ha cambiado: todos pendientes',
  takeBack: (robot: number): string => `Quitar la última calibración del robot ${robot}`,
  undo: {
    calibrated: (robot: number, light: Light): string =>
      `El robot ${robot} está calibrado, ${LIGHTS[light]}.`,
    changed: 'La luz ha cambiado: todos los robots están pendientes.',
  },
};
