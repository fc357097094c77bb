import { marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Gates that are missing; in order, each counts only after the one before it. */
export const gates: RunMeasure<'gates'> = {
  id: 'G-gates',
  over: 'run',
  measure(wish, run) {
    const crossed = eventsOf(run, 'gate').map((event) => event.gate);
    const passed = wish.ordered ? inOrder(wish.gates, crossed) : anyOrder(wish.gates, crossed);
    return marginOf('gates', 'count', passed - wish.gates.length);
  },
};

function inOrder(wanted: readonly string[], crossed: readonly string[]): number {
  let passed = 0;
  for (const gate of crossed) if (gate === wanted[passed]) passed++;
  return passed;
}

const anyOrder = (wanted: readonly string[], crossed: readonly string[]): number =>
  wanted.filter((gate) => crossed.includes(gate)).length;
