import type { Action } from '../../documents/kit.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

/** How a ready challenge stands with a kit: whether it can be played, and why not. */
export type Standing =
  | { readonly playable: true; readonly par: 'known' | 'not-known' }
  | { readonly playable: false; readonly missing: readonly Action[]; readonly doneByItself?: true };

function standing(one: Standing): string {
  if (one.playable) {
    return one.par === 'known'
      ? 'Can be played.'
      : 'Can be played; with this kit the best that can be reached is not known.';
  }
  if (one.doneByItself) return 'Nothing to learn with this kit: its robot goes straight on by itself.';
  const names = numbers.list(one.missing.map((action) => `“${actions.name(action)}”`));
  return `Can’t be played with this kit: its chart has no mark for ${names}.`;
}

/** Said of ready challenges in lists. */
export const library = { standing };
