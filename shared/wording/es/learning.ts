import type { HelpStep } from '../../room/coaching.ts';
import type { WallWish } from '../../room/state.ts';
import { numbers } from './numbers.ts';

/** What the desk says of how teams learn: their help, what they foretold, what they wish. */

const STEPS: Readonly<Record<HelpStep, string>> = {
  'after-try': 'solo después de probar',
  place: 'el sitio',
  sentence: 'el sitio y la frase',
  mend: 'con «Arreglarlo» después de dos pruebas',
};

const WISHES: Readonly<Record<WallWish, string>> = {
  shown: '',
  'no-emblem': 'prefiere salir en la pared sin su emblema',
  'not-at-all': 'prefiere no salir en la pared',
};

export const learning = {
  help: 'Ayuda en las tabletas',
  teamHelp: 'Ayuda',
  step: (step: HelpStep): string => STEPS[step],
  asClass: (step: HelpStep): string => `como la clase: ${STEPS[step]}`,
  wish: (wish: WallWish): string => WISHES[wish],
  tries: (n: number, right: number): string =>
    `${numbers.counted(n, 'prueba', 'pruebas')}, ${right} con acierto`,
  tried: (guess: string, made: boolean): string => `«${guess}», y ${made ? 'lo logró' : 'no lo logró'}`,
  reasons: (n: number, right: number): string => `${right} de ${n} razones halladas`,
  mended: 'arreglado con ayuda',
};
