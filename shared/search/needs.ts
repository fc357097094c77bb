import type { Formula } from '../documents/formula.ts';
import { type Action, actionOf, type Kit, PACES, type Pace, reversed } from '../documents/kit.ts';
import type { MarksProblem } from './marks-problem.ts';
import type { PlacedMark } from './rail-marks.ts';

/** What no drawing can do without that meets the must-goals: a bound from below on the marks. */
export interface Needs {
  /** Each at least once. */
  readonly kinds: readonly Action['kind'][];
  /** Changes of pace that a single ride needs. */
  readonly paceChanges: number;
  /** Every mark is met once at most, unless one turns the robot back: one line that does not close. */
  readonly onePass: boolean;
}

export function needsOf({ challenge, map, must }: MarksProblem): Needs {
  const wishes = must.flatMap((goal) => conjuncts(goal.formula));
  const kinds = new Set(wishes.flatMap((wish) => kindNeeded(wish) ?? []));
  const onePass =
    challenge.starts.length === 1 &&
    challenge.kit.robot.looseEnd === 'stop' &&
    map.rails.every(({ end }) => end === 'end' || end === 'corner');
  return { kinds: [...kinds], paceChanges: paceChanges(wishes, challenge.kit), onePass };
}

/** Parts of a formula that all have to be met. */
export const conjuncts = (formula: Formula): readonly Formula[] =>
  formula.kind === 'and' ? formula.of.flatMap(conjuncts) : [formula];

/** The action without which a wish is never met. */
export function kindNeeded(wish: Formula): Action['kind'] | undefined {
  if (wish.kind === 'park') return 'park';
  if (wish.kind === 'act-in') return wish.act;
  return wish.kind === 'turn-back' && wish.count > 0 ? 'turn-back' : undefined;
}

const asksForStretch = (wish: Formula): Pace[] =>
  wish.kind === 'stretches' && wish.how !== 'at-most' && wish.count > 0 && wish.length > 0 ? [wish.pace] : [];

/** From the start pace to the pace of one stretch, and on to the pace at the end. */
function paceChanges(wishes: readonly Formula[], kit: Kit): number {
  const ends = wishes.flatMap((wish) => (wish.kind === 'pace-at-end' ? [wish.pace] : []));
  const [end] = ends;
  const ways = wishes.flatMap(asksForStretch).map((pace) => {
    const there = changesBetween(kit, kit.robot.startPace, pace);
    return there + (end ? changesBetween(kit, pace, end) : 0);
  });
  return Math.max(0, ...ways, ...(end ? [changesBetween(kit, kit.robot.startPace, end)] : []));
}

const FASTEST = PACES.length - 1;

/** The fewest readings that lead from one pace to another. A pace for a time only leads back by itself. */
function changesBetween(kit: Kit, from: Pace, to: Pace): number {
  if (kit.chart.some(({ action }) => action.kind === 'pace-for')) return from === to ? 0 : 1;
  let reached = new Set([PACES.indexOf(from)]);
  for (let changes = 0; changes <= PACES.length; changes++) {
    if (reached.has(PACES.indexOf(to))) return changes;
    reached = new Set(
      [...reached].flatMap((pace) => [pace, ...kit.chart.flatMap((r) => after(pace, r.action))]),
    );
  }
  return Number.POSITIVE_INFINITY;
}

function after(pace: number, action: Action): number[] {
  if (action.kind === 'pace-by') return [Math.min(Math.max(pace + action.steps, 0), FASTEST)];
  return action.kind === 'pace-to' ? [PACES.indexOf(action.pace)] : [];
}

const isPace = (action: Action | undefined): boolean =>
  action?.kind === 'pace-by' || action?.kind === 'pace-to' || action?.kind === 'pace-for';

/** The fewest marks that have still to be added to these. */
export function marksNeeded(
  { kinds, paceChanges, onePass }: Needs,
  { challenge: { kit } }: MarksProblem,
  marks: readonly PlacedMark[],
): number {
  const said = marks.flatMap(({ word }) => [actionOf(kit, word), actionOf(kit, reversed(word))]);
  const missing = kinds.filter((kind) => !said.some((action) => action?.kind === kind)).length;
  const withPace = marks.filter(
    ({ word }) => isPace(actionOf(kit, word)) || isPace(actionOf(kit, reversed(word))),
  );
  const changesMissing = Math.max(0, paceChanges - withPace.length);
  if (!onePass) return missing + (paceChanges > 0 && withPace.length === 0 ? 1 : 0);
  const turns = said.some((action) => action?.kind === 'turn-back');
  if (turns) return missing + (paceChanges > 0 && withPace.length === 0 ? 1 : 0);
  const turning = kinds.includes('turn-back') ? 0 : 1;
  return missing + Math.min(changesMissing, turning + (paceChanges > 0 && withPace.length === 0 ? 1 : 0));
}
