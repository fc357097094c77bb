import type * as z from 'zod/mini';
import type { Action, Pace, Way } from '../../documents/kit.ts';
import type { Decision, Ending } from '../../documents/trace.ts';
import { numbers } from './numbers.ts';

const PACE: Readonly<Record<Pace, string>> = {
  creep: 'tiptoe',
  steady: 'steady',
  brisk: 'brisk',
  fast: 'fast',
};

const WAY: Readonly<Record<Way, string>> = {
  left: 'take left',
  straight: 'straight on',
  right: 'take right',
};

type Names = { readonly [K in Action['kind']]: (action: Extract<Action, { kind: K }>) => string };

const NAMES: Names = {
  'pace-by': (a) => {
    if (a.steps === 0) return 'same pace';
    const size = a.steps < 0 ? -a.steps : a.steps;
    return `${a.steps < 0 ? 'slower' : 'faster'}${size === 1 ? '' : ` by ${size}`}`;
  },
  'pace-to': (a) => PACE[a.pace],
  'pace-for': (a) => `${PACE[a.pace]} for ${numbers.time(a.time)}`,
  choose: (a) => WAY[a.way],
  'turn-back': () => 'turn back',
  wait: () => 'wait',
  signal: () => 'call',
  park: () => 'park',
  nothing: () => 'pass',
};

/** What a mark does, as it stands in the chart: "faster", "take left". */
const name = (action: Action): string => (NAMES[action.kind] as (a: Action) => string)(action);

const ENDINGS: Readonly<Record<Ending, string>> = {
  finished: 'arrived',
  parked: 'parked',
  stopped: 'stopped where the line ends',
  lost: 'lost the line',
  'off-paper': 'drove off the paper',
  'time-up': 'still driving when the time was up',
  'never-started': 'never started',
};

const TOOK: Readonly<Record<Way, string>> = { left: 'left', straight: 'straight on', right: 'right' };

const BY: Readonly<Record<z.output<typeof Decision>, string>> = {
  mark: 'as the mark says',
  chance: 'left to luck',
  straight: 'no mark says otherwise',
  only: 'the only way',
};

export const actions = {
  name,
  /** The chart's row has no action: a mark that this kit does not know. */
  unknown: 'unknown mark',
  pace: (pace: Pace): string => PACE[pace],
  /** A pace mark that changes nothing: "already fast". */
  already: (pace: Pace): string => `already ${pace === 'creep' ? 'at tiptoe' : PACE[pace]}`,
  way: (way: Way): string => TOOK[way],
  decided: (by: z.output<typeof Decision>): string => BY[by],
  ending: (ending: Ending): string => ENDINGS[ending],
};
