import type { Goal } from '../../shared/documents/challenge.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { GoalResult } from '../../shared/documents/verdict.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { JudgedHere } from './judge-here.ts';

/**
 * When the runs that are shown have told how a goal comes out: met once each of them is certain to meet it,
 * missed once one of them is certain to miss it. Where they tell something else than the verdict, which looks
 * at more ways, and of what is left to luck, that is said at the end.
 */
export function seenAt(
  goal: Pick<Goal, 'id' | 'start'>,
  result: GoalResult,
  shown: readonly Trace[],
  { traces, certain }: Pick<JudgedHere, 'traces' | 'certain'>,
): Seconds {
  const counted = shown.filter(({ start }) => goal.start === undefined || start === goal.start);
  const end = Math.max(0, ...counted.map(durationOf));
  if (result.leftToLuck) return end;
  const told = counted.map((run) => certain?.[goal.id]?.[traces.indexOf(run)]);
  const same = told.flatMap((one) => (one?.met === result.met ? [one.t] : []));
  if (!result.met) return Math.min(end, ...same);
  return same.length === counted.length ? Math.max(0, ...same) : end;
}
