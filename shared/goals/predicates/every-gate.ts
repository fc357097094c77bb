import { marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Gates of the sheet that are missing, in any order. */
export const everyGate: RunMeasure<'every-gate'> = {
  id: 'G-every-gate',
  over: 'run',
  measure(_wish, run, { sheet }) {
    const passed = new Set(eventsOf(run, 'gate').map((event) => event.gate));
    const missing = sheet.gates.filter((gate) => !passed.has(gate.id)).length;
    return marginOf('every-gate', 'count', -missing);
  },
};
