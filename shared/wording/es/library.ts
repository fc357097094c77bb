import type { Standing } from '../en/library.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

function standing(one: Standing): string {
  if (one.playable) {
    return one.par === 'known'
      ? 'Se puede jugar.'
      : 'Se puede jugar; con este kit no se sabe qué es lo mejor que se puede lograr.';
  }
  if (one.doneByItself) return 'Con este kit no hay nada que aprender: su robot va recto por sí solo.';
  const names = numbers.list(one.missing.map((action) => `«${actions.name(action)}»`));
  return `Con este kit no se puede jugar: su tabla no tiene marca para ${names}.`;
}

/** Said of ready challenges in lists. */
export const library = { standing };
