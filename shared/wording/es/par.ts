import type { Action } from '../../documents/kit.ts';
import type { Impossibility, ImpossibilityCode, ParProof } from '../../documents/par.ts';
import { textIn } from '../../documents/values.ts';
import type { Unit } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

/** For teachers: how the lowest cost of a challenge is known, and why a challenge can’t be met. */

type Sentences = {
  readonly [C in ImpossibilityCode]: (why: Extract<Impossibility, { code: C }>) => string;
};

const ACTIONS: Readonly<Record<Action['kind'], string>> = {
  'pace-by': 'otro paso',
  'pace-to': 'otro paso',
  'pace-for': 'otro paso',
  choose: 'una elección en un cruce',
  'turn-back': 'dar media vuelta',
  wait: 'esperar',
  signal: 'llamar',
  park: 'estacionar',
  nothing: 'seguir',
};

const LACK: Readonly<Record<Unit, (size: number) => string>> = {
  mm: (size) => numbers.length(size),
  s: (size) => numbers.time(size),
  count: (size) => numbers.words(size),
  degrees: (size) => numbers.angle(size),
  ratio: (size) => numbers.short(size, 2),
};

const marks = (count: number): string => numbers.some(count, 'f', 'marca', 'marcas');

/** «con hasta dos marcas» */
const upTo = (most: number): string => (most === 0 ? 'sin marcas' : `con hasta ${marks(most)}`);

const BERTHS = { start: 'de salida', finish: 'del final' } as const;

const SENTENCES: Sentences = {
  'no-start': ({ berth }) =>
    `Ninguna línea sale del amarre ${BERTHS[berth]}. Conviene poner una bajo el frente de un robot que esté allí.`,
  'out-of-reach': ({ goal, place }) =>
    `Objetivo «${goal}»: sean cuales sean las marcas, ninguna línea lleva a «${textIn(place, 'es')}». Hay que poner una línea o mover «${textIn(place, 'es')}».`,
  'no-box': () =>
    'Las marcas van en recuadros, y ningún recuadro está sobre una línea a la que llegue un robot. Hay que mover uno sobre una línea o quitar los recuadros.',
  'action-missing': ({ goal, action }) =>
    `El objetivo «${goal}» pide ${ACTIONS[action]}, y la tabla no tiene marca para eso. Hay que elegir otro kit u otro objetivo.`,
  'marks-needed': ({ needed, allowed }) =>
    `Los objetivos piden al menos ${marks(needed)}, y el límite es de ${marks(allowed)}. Hay que permitir más marcas.`,
  'goal-never-met': ({ goal, marks: most, margin, unit }) =>
    `Objetivo «${goal}»: ${upTo(most)} nada lo cumple; al mejor dibujo le ${numbers.lacking(LACK[unit](-margin))}. Hay que cambiar las líneas o el objetivo.`,
  'goals-clash': ({ goals, marks: most }) =>
    goals.length === 1
      ? `Objetivo «${goals[0]}»: ${upTo(most)} ningún dibujo lo cumple vaya por donde vaya el robot. Hay que permitir más marcas o cambiar las líneas.`
      : `${numbers.capital(upTo(most))} ningún dibujo cumple a la vez ${numbers.list(goals.map((goal) => `«${goal}»`))}. Hay que renunciar a uno o cambiar las líneas.`,
  'never-steady': ({ driven }) =>
    `De los dibujos que podían valer se ${numbers.plural(driven, 'probó', 'probaron')} ${numbers.words(driven)}, y ninguno llevó a 19 de 20 robots hasta el final. Hay que dar más espacio a las marcas.`,
};

const PROOFS: Readonly<Record<ParProof, string>> = {
  exhaustive: 'Nada más barato lo logra: en el modelo se probó todo lo que lleva menos marcas.',
  bound: 'Puede haber algo más barato: no se probó todo, o el robot puede ir por donde no se buscó.',
  model: 'Lo que cuesta el dibujo de quien hizo el reto. Uno más barato pasa a ser el mejor de la sala.',
};

export const par = {
  impossible: (why: Impossibility): string => (SENTENCES[why.code] as (why: Impossibility) => string)(why),
  /** Said after the reasons of an impossibility. */
  ofThisModel: 'Esto trata del robot simulado; uno real puede ser distinto.',
  proof: (proof: ParProof): string => PROOFS[proof],
};
