import type { Kit } from '../documents/kit.ts';

/** Whether two kits agree in all that decides a run, a reading or a finding: names and hatches don't. */
export const drivesAlike = (a: Kit, b: Kit): boolean => isSame(decisive(a), decisive(b));

function decisive({ robot, line, inks, equalNeighbours, chart, rules }: Kit): unknown {
  return {
    robot: { ...robot, name: '' },
    line,
    inks: new Map(inks.map(({ id, color }) => [id, color])),
    equalNeighbours,
    chart: new Map(chart.map(({ word, action }) => [word, action])),
    rules,
  };
}

/** Equal by value, whatever the order of keys; an absent key and one without a value are the same. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [left, right] = [entriesOf(a), entriesOf(b)];
  return [...new Set([...left.keys(), ...right.keys()])].every((key) =>
    isSame(left.get(key), right.get(key)),
  );
}

const entriesOf = (value: object): ReadonlyMap<unknown, unknown> =>
  value instanceof Map ? value : new Map(Object.entries(value));
