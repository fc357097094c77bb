import type { Goal } from '../../shared/documents/challenge.ts';
import { type Formula, isPredicate } from '../../shared/documents/formula.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';

/**
 * When, during a run that meets the goal, that can first be seen: the last gate, the berth, the turn.
 * Everything that could still go wrong until the end is known at the end.
 */
export function seenAt(goal: Goal, trace: Trace): Seconds {
  return momentOf(goal.formula, trace) ?? durationOf(trace);
}

function momentOf(formula: Formula, trace: Trace): Seconds | undefined {
  if (!isPredicate(formula)) return undefined;
  const { events } = trace;
  switch (formula.kind) {
    case 'finish':
      return events.find((event) => event.kind === 'finish')?.t;
    case 'gates': {
      const times = formula.gates.map(
        (gate) => events.find((event) => event.kind === 'gate' && event.gate === gate)?.t,
      );
      return times.every((t) => t !== undefined) ? Math.max(...times) : undefined;
    }
    default:
      return undefined;
  }
}
