import type { Cause, Odds, OpenJunction, Steadiness, Weather } from '../../documents/outlook.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

/** After "uno" or "tres": the same for one robot and for several. */
const CAUSES: Readonly<Record<Cause, string>> = {
  'never-started': 'sin arrancar',
  'mark-missed': 'sin ver una marca',
  'mark-misread': 'con una marca mal leída',
  'other-branch': 'por otro camino',
  lost: 'sin la línea',
  'off-paper': 'fuera del papel',
  'time-up': 'sin tiempo',
  'other-end': 'con otro final',
};

const WEATHERS: Readonly<Record<Weather, string>> = {
  calm: 'calma',
  breezy: 'brisa',
  stormy: 'tormenta',
};

const BASES: Readonly<Record<Odds['basis'], string | undefined>> = {
  track: undefined,
  runs: 'Hallado al conducir: el robot no hace lo que dicen las líneas y las marcas.',
  doubtful:
    'Dudoso: el robot no hace lo que dicen las líneas y las marcas, y hay demasiados caminos para recorrerlos todos.',
};

/** A chance in per cent; one that is neither 0 nor 1 never reads like one. */
function percent(chance: number): string {
  if (chance > 0 && chance < 0.0005) return `menos del ${numbers.short(0.1, 1)} %`;
  if (chance < 1 && chance > 0.9995) return `más del ${numbers.short(99.9, 1)} %`;
  return `${numbers.short(chance * 100, 1)} %`;
}

/** "50 % llega, 50 % se para donde acaba la línea"; for sure what happens with chance 1. */
function endings({ endings: found, endless }: Odds): string {
  const chances = new Map<string, number>();
  for (const { ending, probability } of found) {
    const name = actions.ending(ending);
    chances.set(name, (chances.get(name) ?? 0) + probability);
  }
  if (endless > 0) chances.set('da vueltas sin fin', endless);
  const said = [...chances].map(([name, chance]) =>
    chances.size === 1 ? name : `${percent(chance)} ${name}`,
  );
  return numbers.list(said);
}

/** "llegan todos", "no llega ninguno" */
function arriving(chance: number): string {
  if (chance === 0) return 'no llega ninguno';
  return chance === 1 ? 'llegan todos' : `llega el ${percent(chance)}`;
}

/** What each way at a junction is worth to those who want to arrive: "a la izquierda 50 % (llegan todos)". */
const arms = ({ arms: ways }: OpenJunction): string =>
  numbers.list(
    ways.map(({ way, chance, finish }) => `${actions.way(way)} ${percent(chance)} (${arriving(finish)})`),
  );

/** "El 50 % llega en 60 s o menos, a los 6,2 s de media"; nothing where nobody arrives. */
function inTime({ inTime: { limit, finish, meanTime } }: Odds): string | undefined {
  if (meanTime === undefined) return undefined;
  const who = finish === 1 ? 'Llegan todos' : `El ${percent(finish)} llega`;
  return `${who} en ${numbers.time(limit)} o menos, a los ${numbers.time(meanTime)} de media`;
}

/** "18 de 20 robots hacen lo mismo que el robot sin perturbar con brisa; de muchos, lo haría entre el 70 y el 97 %" */
function steady({ weather, same, of, interval }: Steadiness): string {
  const low = numbers.short(interval.low * 100, 0);
  const high = numbers.short(interval.high * 100, 0);
  const doing = numbers.plural(same, 'hace', 'hacen');
  return `${same} de ${of} robots ${doing} lo mismo que el robot sin perturbar, con ${WEATHERS[weather]}; de muchos, lo haría entre el ${low} y el ${high} %`;
}

/** What may come of a drawing beside the undisturbed run: chances, and slightly different robots. */
export const outlook = {
  percent,
  endings,
  arms,
  inTime,
  steady,
  weather: (weather: Weather): string => WEATHERS[weather],
  /** After a count of robots: "sin ver una marca". */
  cause: (cause: Cause): string => CAUSES[cause],
  /** Where the chances come from, if that has to be said. */
  basis: (basis: Odds['basis']): string | undefined => BASES[basis],
};
