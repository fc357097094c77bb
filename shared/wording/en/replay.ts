import type { RunEvent } from '../../documents/trace.ts';
import { actions } from './actions.ts';

type Said = { readonly [K in RunEvent['kind']]?: (event: Extract<RunEvent, { kind: K }>) => string };

/** First what was met, band by band. */
const read = (word: string): string => `read ${[...word].join(' ')}`;

/** One line a thing that happened; what is not here is no line of the log. */
const LOG: Said = {
  read: ({ action, already, pace }) => {
    if (already) return actions.already(pace);
    return action ? actions.name(action) : actions.unknown;
  },
  junction: ({ took, by }) => `junction: ${actions.way(took)}, ${actions.decided(by)}`,
  corner: ({ took }) => `corner: ${took}`,
  'turn-back': () => 'turns back',
  wait: () => 'waits',
  signal: () => 'calls',
  'loose-end': () => 'the line ends',
  finish: () => 'comes into the berth',
  'off-paper': () => 'comes to the edge of the paper',
  end: ({ ending }) => actions.ending(ending),
};

/** What is said while a run is shown. */
export const replay = {
  read,
  /** Then what it does: soon, while its action has not begun. */
  does: (action: string | null, acted: boolean): string => {
    if (action === null) return 'no such mark';
    return acted ? action : `${action}, soon`;
  },
  log: (event: RunEvent): string | undefined =>
    (LOG[event.kind] as ((e: RunEvent) => string) | undefined)?.(event),
};
