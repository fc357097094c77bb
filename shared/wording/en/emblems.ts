import { EMBLEMS } from '../../room/state.ts';
import { numbers } from './numbers.ts';

const KNOWN: ReadonlySet<string> = new Set(EMBLEMS);

export const emblems = {
  /** A team is called by its object: "Sailboat". The keys are English words already. */
  name: (emblem: string): string => (KNOWN.has(emblem) ? numbers.capital(emblem) : 'Team'),
};
