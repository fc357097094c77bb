import type { Drawing } from '../documents/design.ts';
import type { MomentPredicate, Predicate } from '../documents/formula.ts';
import type { Robot } from '../documents/kit.ts';
import type { Steadiness } from '../documents/outlook.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import type { RunEvent, RunEventOf, Trace } from '../documents/trace.ts';
import { signedDistance } from '../geometry/polygon.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { type Margin, UNLIMITED } from './margin.ts';
import type { Signal } from './temporal.ts';

export type PredicateOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;

/** What a predicate may look at beside a run. */
export interface GoalContext {
  readonly sheet: Sheet;
  readonly drawing: Drawing;
  /** The robot whose outline has to stay clear. */
  readonly robot: Robot;
  /** What the disturbed robots did; they are driven for entries only. */
  readonly steadiness?: Steadiness | undefined;
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

/** A predicate over the disturbed robots, not over one run. */
export interface RobotsMeasure<K extends Predicate['kind']> {
  readonly id: `G-${K}`;
  readonly over: 'robots';
  readonly measure: (wish: PredicateOf<K>, robots: Steadiness) => Margin;
}

/** How a predicate is measured. */
export type Measure<K extends Predicate['kind']> = RunMeasure<K> | DesignMeasure<K> | RobotsMeasure<K>;

export type MomentOf<K extends MomentPredicate['kind']> = Extract<MomentPredicate, { kind: K }>;

/** A predicate over the moments of a run: its margin from the run's start to its end. */
export interface MomentMeasure<K extends MomentPredicate['kind']> {
  readonly id: `G-${K}`;
  readonly signal: (wish: MomentOf<K>, run: Trace, context: GoalContext) => Signal<Margin>;
}

export const eventsOf = <K extends RunEvent['kind']>(run: Trace, kind: K): readonly RunEventOf<K>[] =>
  run.events.filter((event): event is RunEventOf<K> => event.kind === kind);

/** The moment of arrival, or else the end of the run. */
export const arrivalOrEnd = (run: Trace): RunEvent => eventsOf(run, 'finish')[0] ?? run.events.at(-1)!;

/** Where a run that starts at one end wants to arrive: the other berth. */
export const targetOf = (sheet: Sheet, run: Trace): Berth | undefined =>
  run.start === 'start' ? sheet.finish : sheet.start;

/** How deep a point lies in an area of the sheet, mm; negative is outside. */
export function areaDepth(sheet: Sheet, area: string, at: PaperPoint): Mm {
  const found = sheet.areas.find((a) => a.id === area);
  return found ? -signedDistance(found.polygon, at) : -UNLIMITED;
}
