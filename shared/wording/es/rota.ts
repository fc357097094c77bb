import type { Rota, RotaRefusal, Watched } from '../../prep/rota.ts';
import { clock, lasting } from '../clock.ts';
import { numbers } from './numbers.ts';

const { list } = numbers;

const hours = ({ from, to }: Pick<Watched, 'from' | 'to'>): string => `de ${clock(from)} a ${clock(to)}`;

const REFUSALS: {
  readonly [C in RotaRefusal['code']]: (refusal: Extract<RotaRefusal, { code: C }>) => string;
} = {
  'nobody-watches': () =>
    'Los robots solo se cargan mientras alguien vigila, y antes de que hagan falta no hay horas así. Hay que añadir horas en las que alguien se quede con el cargador.',
  'at-night': ({ watched }) =>
    `El horario ${hours(watched)} entra en la noche. Nada se carga de noche ni sin vigilancia: un fallo que nadie ve puede acabar en incendio. Hay que dar horas entre las 06:00 y las 22:00 en las que alguien se quede en la sala.`,
  'hours-overlap': ({ watched }) =>
    `El horario ${hours(watched)} se solapa con otro del mismo día. Hay que unirlos o acortar uno.`,
  'hours-backwards': ({ watched }) =>
    `El horario ${hours(watched)} acaba antes de empezar. No se planean horas que pasen de medianoche: nada se carga de noche.`,
  'too-many-robots': ({ most }) =>
    `En un plan caben ${most} robots como mucho. Hay que hacer un plan para cada juego de clase.`,
  'bad-number': ({ robot }) =>
    robot === null
      ? 'Las tomas, la capacidad y la corriente deben ser números mayores que 0.'
      : `La carga del robot ${robot} debe estar entre 0 y 100 %.`,
};

function proof({ length, bound, optimal }: Rota): string {
  if (optimal) return 'Ningún plan es más corto.';
  return `No está demostrado que sea el plan más corto; se podrían ganar como mucho ${lasting(length - bound)}.`;
}

const robotsNumbered = (robots: readonly string[]): string =>
  `${robots.length === 1 ? 'el robot' : 'los robots'} ${list(robots)}`;

export const rota = {
  title: 'Plan de carga',
  first:
    'Quién se carga dónde y cuándo, solo mientras alguien se queda con el cargador. Primero van las instrucciones del fabricante y las normas del lugar; la luz del propio robot dice cuándo está lleno.',
  robots: 'Robots',
  count: 'Cuántos robots',
  capacity: 'Capacidad de uno (mAh)',
  ports: 'Tomas de carga',
  current: 'Una toma da (mA)',
  charge: (robot: number) => `Robot ${robot}, carga en %`,
  charges: 'Cuánta carga tiene ahora cada uno (%)',
  watched: 'Alguien se queda con el cargador',
  date: 'Fecha',
  from: 'Desde',
  to: 'Hasta',
  hoursOf: (number: number) => `Horario ${number}`,
  addHours: 'Más horas',
  removeHours: (number: number) => `Quitar el horario ${number}`,
  needed: 'Los robots hacen falta',
  neededAt: 'Hora',
  result: 'El plan',
  refusal: (refusal: RotaRefusal): string =>
    (REFUSALS[refusal.code] as (refusal: RotaRefusal) => string)(refusal),
  summary: (rota: Rota, day: (date: string) => string): string => {
    const { turns, finish } = rota;
    if (!finish) return 'Ningún robot tiene que cargarse en estas horas, o ninguno estaría lleno a tiempo.';
    const n = turns.length;
    const robots = `${n} ${numbers.plural(n, 'robot está lleno', 'robots están llenos')}`;
    return `${robots} el ${day(finish.date)} a las ${clock(finish.minute)}, tras ${lasting(rota.length)} de carga. ${proof(rota)}`;
  },
  notReady: (robots: readonly { readonly robot: number; readonly minutes: number }[]): string =>
    `No se llenan a tiempo: ${robotsNumbered(robots.map(({ robot, minutes }) => `${robot} (le ${numbers.lacking(lasting(minutes))})`))}. Hay que añadir horas o tomas, o dar la clase con menos robots.`,
  fullAlready: (robots: readonly number[]): string =>
    `Con la carga completa: ${robotsNumbered(robots.map(String))}.`,
  when: 'Cuándo',
  port: 'Toma',
  robot: 'Robot',
  plugged: 'Conecta (iniciales)',
  unplugged: 'Desconecta (iniciales)',
  goesOn: 'sigue más tarde',
  hours,
  print: 'Imprimir el plan',
  assumed:
    'Se supone: corriente constante hasta el 85 %, luego tensión constante hasta que la corriente baja al 3 %, como suelen hacer los cargadores de pilas de iones de litio; todas las tomas iguales; una carga interrumpida sigue donde quedó. Son planes, no promesas.',
  stopSigns: {
    text: 'Parar si hay calor, hinchazón, olor o ruido. Entre 0 y 40 °C, sobre una superficie dura y despejada, con el cable del fabricante, sin encadenar alargadores, nunca en el camino de salida.',
    by: 'US Fire Administration; NFPA; West Yorkshire and Avon Fire & Rescue',
  },
};
