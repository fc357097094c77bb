import { inkOf } from '../../track/ink-length.ts';
import { marginOf } from '../margin.ts';
import type { DesignMeasure } from '../predicate.ts';

/** Line that may still be drawn, mm; given lines are free. */
export const inkLimit: DesignMeasure<'ink-limit'> = {
  id: 'G-ink-limit',
  over: 'design',
  measure: (wish, { drawing }) => marginOf('ink-limit', 'mm', wish.most - inkOf(drawing)),
};
