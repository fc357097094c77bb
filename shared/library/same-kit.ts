import { endFromEdgeOf, inkLighterOf, type Kit, tolerancesOf } from '../documents/kit.ts';

/** Whether two kits agree in all that decides a run, a reading or a finding: names and hatches don't, nor whether a usual number is written out. */
export const drivesAlike = (a: Kit, b: Kit): boolean => isSame(decisive(a), decisive(b));

function decisive({ robot, line, inks, equalNeighbours, chart, rules }: Kit): unknown {
  return {
    robot: { ...robot, name: '', tolerances: tolerancesOf(robot) },
    line,
    inks: new Map(inks.map(({ id, color }) => [id, color])),
    equalNeighbours,
    chart: new Map(chart.map(({ word, action }) => [word, action])),
    rules: { ...rules, endFromEdge: endFromEdgeOf(rules), inkLighter: inkLighterOf(rules) },
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
