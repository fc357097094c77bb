import type { Mm } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const { length, list } = numbers;

/** On paper: what robots are timed on, and what finds their limits. */
export const fitPaper = {
  lineTitle: 'Línea con reloj',
  lineHow:
    'Poner un robot en una flecha y arrancar el reloj cuando su frente pase el primer trazo; pararlo cuando la misma parte pase el segundo. Medir cada robot tres veces o más a cada paso. Después de pegar las hojas, medir: 500 mm de trazo a trazo. A un palmo del borde de la mesa.',
  noMark: (paces: readonly string[]) =>
    `Esta tabla no tiene marca para ir ${list(paces)}: medir eso como diga la hoja del fabricante.`,
  at: (pace: string) => `${pace}`,
  start: 'salida',
  stop: 'llegada',
  circleTitle: 'Círculo con reloj',
  circleHow: (pace: string) =>
    `Poner un robot en la línea, detrás del trazo, mirando hacia donde va la flecha. Da vueltas ${pace}. Arrancar el reloj cuando su frente pase el trazo y pararlo tras cinco vueltas, en el trazo. Medir cada robot dos veces o más.`,
  radius: (r: Mm) => `radio ${length(r)}`,
  lap: 'aquí acaba una vuelta',
  cornersTitle: 'Límites: esquinas',
  cornersHow:
    'Poner un robot al principio de una línea y mirar si pasa la esquina y sigue en la línea. Empezar por la esquina más abierta. Apuntar en cada esquina cuántos robots la pasan y escribirlo en la mesa.',
  bandsTitle: 'Límites: bandas',
  bandsHow: (does: string) =>
    `Todas las líneas tienen la misma marca: «${does}». Sus bandas son más cortas de línea en línea. Poner un robot al principio de una línea y mirar si lo hace. Apuntar con cada largo cuántos robots lo hacen y escribirlo en la mesa.`,
};
