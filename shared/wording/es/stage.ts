import type { Weather } from '../../documents/outlook.ts';
import type { Ending } from '../../documents/trace.ts';
import type { Replayed } from '../../documents/verdict.ts';
import type { OtherLight, WhatIf } from '../../documents/what-if.ts';
import type { SupposedOf } from '../en/stage.ts';
import { actions } from './actions.ts';
import { of as from } from './names.ts';
import { numbers } from './numbers.ts';

/** What is said of the stage at the desk and on the board. */

const LIGHT: Readonly<Record<OtherLight, string>> = {
  brighter: 'hay mucha más luz',
  darker: 'hay mucha menos luz',
  warmer: 'la luz es de una lámpara amarilla',
};

const WEATHER: Readonly<Record<Weather, string>> = {
  calm: 'con calma',
  breezy: 'con brisa',
  stormy: 'en una tormenta',
};

function supposed(whatIf: WhatIf, { from: berth, word }: SupposedOf): string {
  switch (whatIf.kind) {
    case 'light':
      return `¿Y si ${LIGHT[whatIf.light]}?`;
    case 'start':
      return `¿Y si el robot sale del otro lado, ${from(berth)}?`;
    case 'weather':
      return `¿Y si va el robot ${whatIf.robot} ${WEATHER[whatIf.weather]}?`;
    case 'band':
      return `¿Y si una marca es ${[...word].join(' ')}?`;
  }
}

const ORDINALS = ['primero', 'segundo', 'tercero', 'cuarto'] as const;
const REPLAYED: Readonly<Record<Exclude<Replayed, 'same'>, string>> = {
  'other-engine':
    'El resultado es de otra versión del motor, que lo condujo de otro modo: no se puede ver el mismo recorrido. Los puntos valen.',
  otherwise:
    'Este aparato lo conduce de otro modo que el juez: no se puede ver el mismo recorrido. Los puntos valen.',
};

const speed = (n: number): string => (n === 0.25 ? '¼×' : n === 0.5 ? '½×' : `${n}×`);

export const stage = {
  supposed,
  untouched: 'El dibujo se queda como se entregó.',
  replayed: (how: Exclude<Replayed, 'same'>): string => REPLAYED[how],
  speed,
  slow: (n: number): string => `cámara lenta, ${speed(n)}`,
  finished: (place: number, t: number): string => `${ORDINALS[place - 1] ?? place}, a los ${numbers.time(t)}`,
  notThere: (ending: Ending | null): string => actions.ending(ending ?? 'never-started'),
  order: 'Quién ha llegado',
  goalsMet: (met: number, of: number): string => `${met} de ${numbers.counted(of, 'objetivo', 'objetivos')}`,
  onTop: 'Uno sobre otro',
  controls: {
    before: 'Lectura anterior',
    after: 'Lectura siguiente',
    loop: 'Repetir',
    loopFrom: 'El tramo empieza',
    loopTo: 'El tramo acaba',
    sensors: 'Sensores',
    whole: 'Recorrido entero',
    onTop: 'Superpuestos',
    notOnTop: 'Solo se pueden superponer dibujos de la misma hoja.',
    whatIf: '¿Y si…?',
    ways: 'Caminos posibles',
    way: (n: number, chance: number): string => `Camino ${n}: ${numbers.short(chance * 20, 1)} de 20 robots`,
  },
  whatIf: {
    asIs: 'Como se entregó',
    light: 'Otra luz',
    lights: { brighter: 'Mucha más', darker: 'Mucha menos', warmer: 'Lámpara amarilla' } satisfies Record<
      OtherLight,
      string
    >,
    start: 'Otra salida',
    otherEnd: 'Desde el otro lado',
    weather: 'Otro tiempo',
    weathers: { calm: 'Calma', breezy: 'Brisa', stormy: 'Tormenta' } satisfies Record<Weather, string>,
    robot: (n: number): string => `robot ${n} de 20`,
    nextRobot: 'Otro robot',
    band: 'Una banda cambiada',
    changeBand: (word: string, band: number, ink: string): string =>
      `Marca ${[...word].join(' ')}, banda ${band}: ahora ${ink}; pulsar para la tinta siguiente`,
    note: 'En la pizarra aparece como «¿Y si…?». La entrega, su resultado y sus puntos se quedan como están.',
  },
};
