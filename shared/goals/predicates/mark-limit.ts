import { marginOf } from '../margin.ts';
import type { DesignMeasure } from '../predicate.ts';

/** Marks that may still be drawn; given marks are free. */
export const markLimit: DesignMeasure<'mark-limit'> = {
  id: 'G-mark-limit',
  over: 'design',
  measure: (wish, { drawing }) => marginOf('mark-limit', 'count', wish.most - drawing.marks.length),
};
