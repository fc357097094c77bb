import { type Action, actionOf, reversed } from '../documents/kit.ts';
import { kindsIn } from './formula-kinds.ts';
import { isNumeric, type MarksProblem } from './marks-problem.ts';
import type { Needs } from './needs.ts';

/** What the goals look at, and so which actions can help to meet them. */
export interface Relevance {
  /** Way, pace or time decide, not only where the robot goes and what it does there. */
  readonly numeric: boolean;
  /** The words worth drawing, as they are first read: one for each pair of meanings. */
  readonly words: readonly string[];
}

/** Beside these it matters how fast a robot is where it acts. */
const PLACED = ['park', 'act-in'];
/** Under these anything may matter. */
const ANYTHING = ['lasting', 'always', 'eventually', 'until', 'read-marks', 'not', 'or'];

export function relevanceOf({ challenge, map, must }: MarksProblem, { mayTurn }: Needs): Relevance {
  const kinds = new Set(must.flatMap((goal) => kindsIn(goal.formula)));
  const has = (...names: string[]): boolean => names.some((name) => kinds.has(name));
  const numeric = must.some((goal) => isNumeric(goal.formula));
  const junctions = map.rails.some((rail) => rail.end === 'junction');
  const matters = (action: Action | undefined): boolean => {
    if (!action || action.kind === 'nothing') return has('read-marks');
    if (has(...ANYTHING)) return true;
    switch (action.kind) {
      case 'pace-by':
      case 'pace-to':
      case 'pace-for':
        return numeric || has(...PLACED);
      case 'choose':
        return junctions;
      case 'wait':
        return has('act-in-wait', 'stretches', 'time');
      case 'signal':
        return has('act-in-signal');
      case 'park':
        return has('park') || !has('finish', 'time');
      case 'turn-back':
        return mayTurn;
    }
  };
  const { kit } = challenge;
  const known = new Set<string>();
  const shortestFirst = [...kit.chart].sort((a, b) => a.word.length - b.word.length);
  const words = shortestFirst.flatMap(({ word, action }) => {
    const back = actionOf(kit, reversed(word));
    const pair = `${JSON.stringify(action)} ${JSON.stringify(back)}`;
    if (known.has(pair) || !(matters(action) || matters(back))) return [];
    known.add(pair);
    return [word];
  });
  return { numeric, words };
}
