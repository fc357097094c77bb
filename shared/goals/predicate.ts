import type { Drawing } from '../documents/design.ts';
import type { Predicate } from '../documents/formula.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import type { RunEvent, RunEventOf, Trace } from '../documents/trace.ts';
import type { Margin } from './margin.ts';

export type PredicateOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;

/** What a predicate may look at beside a run. */
export interface GoalContext {
  readonly sheet: Sheet;
  readonly drawing: Drawing;
}

/** A predicate over one run. */
export interface RunMeasure<K extends Predicate['kind']> {
  readonly id: `G-${K}`;
  readonly over: 'run';
  readonly measure: (wish: PredicateOf<K>, run: Trace, context: GoalContext) => Margin;
}

/** A predicate over what the team drew; no run changes it. */
export interface DesignMeasure<K extends Predicate['kind']> {
  readonly id: `G-${K}`;
  readonly over: 'design';
  readonly measure: (wish: PredicateOf<K>, context: GoalContext) => Margin;
}

export const eventsOf = <K extends RunEvent['kind']>(run: Trace, kind: K): readonly RunEventOf<K>[] =>
  run.events.filter((event): event is RunEventOf<K> => event.kind === kind);

/** Where a run that starts at one end wants to arrive: the other berth. */
export const targetOf = (sheet: Sheet, run: Trace): Berth | undefined =>
  run.start === 'start' ? sheet.finish : sheet.start;
