import type * as z from 'zod/mini';
import type { Action, Pace, Way } from '../../documents/kit.ts';
import type { Decision, Ending } from '../../documents/trace.ts';
import { numbers } from './numbers.ts';

/** How somebody drives: "va a paso ligero". */
const PACE: Readonly<Record<Pace, string>> = {
  creep: 'de puntillas',
  steady: 'a paso normal',
  brisk: 'a paso ligero',
  fast: 'a paso rápido',
};

/** As a mark is called in the chart. */
const PACE_MARK: Readonly<Record<Pace, string>> = {
  creep: 'de puntillas',
  steady: 'paso normal',
  brisk: 'paso ligero',
  fast: 'paso rápido',
};

const WAY: Readonly<Record<Way, string>> = {
  left: 'a la izquierda',
  straight: 'recto',
  right: 'a la derecha',
};

type Names = { readonly [K in Action['kind']]: (action: Extract<Action, { kind: K }>) => string };

const NAMES: Names = {
  'pace-by': (a) => {
    if (a.steps === 0) return 'mismo paso';
    const size = a.steps < 0 ? -a.steps : a.steps;
    return `más ${a.steps < 0 ? 'despacio' : 'rápido'}${size === 1 ? '' : ` (${size} pasos)`}`;
  },
  'pace-to': (a) => PACE_MARK[a.pace],
  'pace-for': (a) => `${PACE_MARK[a.pace]} durante ${numbers.time(a.time)}`,
  choose: (a) => WAY[a.way],
  'turn-back': () => 'media vuelta',
  wait: () => 'espera',
  signal: () => 'llama',
  park: () => 'estaciona',
  nothing: () => 'sigue',
};

/** What a mark does, as it stands in the chart: "más rápido", "a la izquierda". */
const name = (action: Action): string => (NAMES[action.kind] as (a: Action) => string)(action);

const ENDINGS: Readonly<Record<Ending, string>> = {
  finished: 'llega',
  parked: 'estaciona',
  stopped: 'se para donde acaba la línea',
  lost: 'pierde la línea',
  'off-paper': 'se sale del papel',
  'time-up': 'sigue en marcha cuando acaba el tiempo',
  'never-started': 'no arranca',
};

const BY: Readonly<Record<z.output<typeof Decision>, string>> = {
  mark: 'como dice la marca',
  chance: 'al azar',
  straight: 'ninguna marca dice otra cosa',
  only: 'el único camino',
};

export const actions = {
  name,
  /** The chart's row has no action: a mark that this kit does not know. */
  unknown: 'marca desconocida',
  pace: (pace: Pace): string => PACE[pace],
  /** A pace mark that changes nothing: "ya va a paso rápido". */
  already: (pace: Pace): string => `ya va ${PACE[pace]}`,
  way: (way: Way): string => WAY[way],
  decided: (by: z.output<typeof Decision>): string => BY[by],
  ending: (ending: Ending): string => ENDINGS[ending],
};
