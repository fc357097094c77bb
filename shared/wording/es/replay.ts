import type { RunEvent } from '../../documents/trace.ts';
import { actions } from './actions.ts';

type Said = { readonly [K in RunEvent['kind']]?: (event: Extract<RunEvent, { kind: K }>) => string };

/** First what was met, band by band. */
const read = (word: string): string => `lee ${[...word].join(' ')}`;

/** One line a thing that happened; what is not here is no line of the log. */
const LOG: Said = {
  read: ({ action, already, pace }) => {
    if (already) return actions.already(pace);
    return action ? actions.name(action) : actions.unknown;
  },
  junction: ({ took, by }) => `cruce: ${actions.way(took)}, ${actions.decided(by)}`,
  corner: ({ took }) => `esquina: ${actions.way(took)}`,
  'turn-back': () => 'da media vuelta',
  wait: () => 'espera',
  signal: () => 'llama',
  'loose-end': () => 'la línea acaba',
  finish: () => 'entra en el amarre',
  'off-paper': () => 'llega al borde del papel',
  end: ({ ending }) => actions.ending(ending),
};

/** What is said while a run is shown. */
export const replay = {
  read,
  /** Then what it does: soon, while its action has not begun. */
  does: (action: string | null, acted: boolean): string => {
    if (action === null) return 'no hay tal marca';
    return acted ? action : `${action}, enseguida`;
  },
  log: (event: RunEvent): string | undefined =>
    (LOG[event.kind] as ((e: RunEvent) => string) | undefined)?.(event),
};
