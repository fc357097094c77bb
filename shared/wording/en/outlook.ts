import type { Cause, Odds, OpenJunction, Steadiness, Weather } from '../../documents/outlook.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

const CAUSES: Readonly<Record<Cause, string>> = {
  'never-started': 'never started',
  'mark-missed': 'overlooked a mark',
  'mark-misread': 'misread a mark',
  'other-branch': 'took another way',
  lost: 'lost the line',
  'off-paper': 'drove off the paper',
  'time-up': 'took too long',
  'other-end': 'ended elsewhere',
};

const WEATHERS: Readonly<Record<Weather, string>> = {
  calm: 'calm weather',
  breezy: 'a breeze',
  stormy: 'a storm',
};

const BASES: Readonly<Record<Odds['basis'], string | undefined>> = {
  track: undefined,
  runs: 'Found by driving: the robot does not do what lines and marks say.',
  doubtful:
    'Doubtful: the robot does not do what lines and marks say, and there are too many ways to drive them all.',
};

/** A chance in per cent; one that is neither 0 nor 1 never reads like one. */
function percent(chance: number): string {
  if (chance > 0 && chance < 0.0005) return 'less than 0.1 %';
  if (chance < 1 && chance > 0.9995) return 'more than 99.9 %';
  return `${numbers.short(chance * 100, 1)} %`;
}

/** "50 % arrived, 50 % stopped where the line ends"; for sure what happens with chance 1. */
function endings({ endings: found, endless }: Odds): string {
  const chances = new Map<string, number>();
  for (const { ending, probability } of found) {
    const name = actions.ending(ending);
    chances.set(name, (chances.get(name) ?? 0) + probability);
  }
  if (endless > 0) chances.set('goes round for ever', endless);
  const said = [...chances].map(([name, chance]) =>
    chances.size === 1 ? name : `${percent(chance)} ${name}`,
  );
  return numbers.list(said);
}

/** "all of them arrive", "none of them arrives" */
function arriving(chance: number): string {
  if (chance === 0) return 'none of them arrives';
  return `${chance === 1 ? 'all' : percent(chance)} of them arrive`;
}

/** What each way at a junction is worth to those who want to arrive: "left 50 %, of which all arrive". */
const arms = ({ arms: ways }: OpenJunction): string =>
  numbers.list(
    ways.map(({ way, chance, finish }) => `${actions.way(way)} ${percent(chance)} (${arriving(finish)})`),
  );

/** "50 % arrive within 60 s, after 6.2 s on average"; nothing where nobody arrives. */
function inTime({ inTime: { limit, finish, meanTime } }: Odds): string | undefined {
  if (meanTime === undefined) return undefined;
  const who = finish === 1 ? 'All arrive' : `${percent(finish)} arrive`;
  return `${who} within ${numbers.time(limit)}, after ${numbers.time(meanTime)} on average`;
}

/** "18 of 20 robots do as the undisturbed one in a breeze; of many, 70 to 97 % would" */
function steady({ weather, same, of, interval }: Steadiness): string {
  const low = numbers.short(interval.low * 100, 0);
  const high = numbers.short(interval.high * 100, 0);
  return `${same} of ${of} robots do as the undisturbed one in ${WEATHERS[weather]}; of many, ${low} to ${high} % would`;
}

/** What may come of a drawing beside the undisturbed run: chances, and slightly different robots. */
export const outlook = {
  percent,
  endings,
  arms,
  inTime,
  steady,
  weather: (weather: Weather): string => WEATHERS[weather],
  /** After "it" or "three robots": "overlooked a mark". */
  cause: (cause: Cause): string => CAUSES[cause],
  /** Where the chances come from, if that has to be said. */
  basis: (basis: Odds['basis']): string | undefined => BASES[basis],
};
