import type { Formula } from '../documents/formula.ts';
import { type Action, actionOf, type Kit, PACES, type Pace, reversed } from '../documents/kit.ts';
import type { MarksProblem } from './marks-problem.ts';
import type { PlacedMark } from './rail-marks.ts';
import { railRun } from './rail-run.ts';
import type { RailRun } from './ride.ts';

/** What no drawing can do without that meets the must-goals: a bound from below on the marks. */
export interface Needs {
  /** Each at least once. */
  readonly kinds: readonly Action['kind'][];
  /** Paces of which a stretch is asked for, and the pace at the end. */
  readonly stretches: readonly Pace[];
  readonly end: Pace | undefined;
  /** The fewest readings that lead from one pace to another, by their indices. */
  readonly changes: readonly (readonly number[])[];
  /** Every mark is met once at most, unless one turns the robot back: one line that does not close. */
  readonly onePass: boolean;
  /**
   * Whether turning back can be part of it. On one line with the finish ahead it can't: a mark that turns
   * the robot back does so again whenever it comes by.
   */
  readonly mayTurn: boolean;
}

export function needsOf({ challenge, map, must, given }: MarksProblem): Needs {
  const wishes = must.flatMap((goal) => conjuncts(goal.formula));
  const kinds = new Set(wishes.flatMap((wish) => kindNeeded(wish) ?? []));
  const onePass =
    challenge.starts.length === 1 &&
    challenge.kit.robot.looseEnd === 'stop' &&
    map.rails.every(({ end }) => end === 'end' || end === 'corner');
  const arrives = wishes.some(({ kind }) => kind === 'finish' || kind === 'time');
  const ahead = () => railRun(map, given, 'start', []).trace.events.some(({ kind }) => kind === 'finish');
  return {
    kinds: [...kinds],
    stretches: wishes.flatMap(asksForStretch),
    end: wishes.flatMap((wish) => (wish.kind === 'pace-at-end' ? [wish.pace] : []))[0],
    changes: PACES.map((from) => PACES.map((to) => changesBetween(challenge.kit, from, to))),
    onePass,
    mayTurn: !(onePass && arrives && ahead()),
  };
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

/** The fewest marks that have still to be added to these, with which the robot did `run`. */
export function marksNeeded(
  needs: Needs,
  { challenge: { kit } }: MarksProblem,
  marks: readonly PlacedMark[],
  run: RailRun | undefined,
): number {
  const said = marks.flatMap(({ word }) => [actionOf(kit, word), actionOf(kit, reversed(word))]);
  const missing = needs.kinds.filter((kind) => !said.some((action) => action?.kind === kind)).length;
  const anyPace = paceBound(needs, kit.robot.startPace, []) > 0 && !said.some(isPace) ? 1 : 0;
  const turns = said.some((action) => action?.kind === 'turn-back');
  if (!needs.onePass || turns) return missing + anyPace;
  const onThePass = run ? boundAfter(needs, run) : paceBound(needs, kit.robot.startPace, []);
  if (!needs.mayTurn) return missing + onThePass;
  return missing + Math.min(onThePass, (needs.kinds.includes('turn-back') ? 0 : 1) + anyPace);
}

/** Changes of pace that are missing after a ride that met each mark once. */
function boundAfter(needs: Needs, { trace }: RailRun): number {
  const paces = trace.events.map((event) => event.pace);
  return paceBound(needs, paces.at(-1)!, paces);
}

/** From a pace to that of each stretch that was not begun yet, and on to the pace at the end. */
function paceBound({ stretches, end, changes }: Needs, from: Pace, had: readonly Pace[]): number {
  const between = (a: Pace, b: Pace): number => changes[PACES.indexOf(a)]![PACES.indexOf(b)]!;
  const ways = stretches
    .filter((pace) => !had.includes(pace))
    .map((pace) => between(from, pace) + (end ? between(pace, end) : 0));
  return Math.max(0, end ? between(from, end) : 0, ...ways);
}
