import type { Goal } from '../../../shared/documents/challenge.ts';
import { EMPTY_DRAWING } from '../../../shared/documents/design.ts';
import type { Formula } from '../../../shared/documents/formula.ts';
import type { Pace } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { Ending, RunEvent, Trace } from '../../../shared/documents/trace.ts';
import { measureGoal } from '../../../shared/goals/measure.ts';
import type { GoalContext } from '../../../shared/goals/predicate.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';

/** Traces, sheets and goals written by hand, so that every margin can be worked out on paper. */

export const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'Boathouse' }, at: { x: 40, y: 105 }, heading: 0, r: 15 },
  finish: { name: { en: 'Lighthouse' }, at: { x: 260, y: 105 }, heading: 0, r: 20 },
  gates: [],
  areas: [
    {
      id: 'landing',
      name: { en: 'Ferry landing' },
      polygon: [
        { x: 100, y: 100 },
        { x: 160, y: 100 },
        { x: 160, y: 140 },
        { x: 100, y: 140 },
      ],
    },
  ],
  keepOut: [],
  given: EMPTY_DRAWING,
};

export const CONTEXT: GoalContext = { sheet: SHEET, drawing: EMPTY_DRAWING, robot: DEMO_KIT.robot };

interface Place {
  readonly t?: number;
  readonly x?: number;
  readonly y?: number;
  readonly way?: number;
  readonly pace?: Pace;
}

const where = (place: Place) => ({ t: 0, x: 0, y: 0, way: 0, pace: 'steady' as Pace, ...place });

export const at = {
  pace: (way: number, from: Pace, pace: Pace): RunEvent => ({ kind: 'pace', ...where({ way, pace }), from }),
  wait: (way: number, pace: Pace): RunEvent => ({ kind: 'wait', ...where({ way, pace }), until: 9 }),
  turnBack: (way: number, pace: Pace = 'steady'): RunEvent => ({
    kind: 'turn-back',
    ...where({ way, pace }),
  }),
  corner: (way: number, pace: Pace): RunEvent => ({ kind: 'corner', ...where({ way, pace }), took: 'left' }),
  gate: (gate: string, place: Place = {}): RunEvent => ({ kind: 'gate', ...where(place), gate }),
  /** Waiting or calling at a place. */
  acting: (kind: 'wait' | 'signal', place: Place): RunEvent => ({ kind, ...where(place), until: 9 }),
  /** A word understood; without a meaning where the chart lacks it. */
  read: (mark: string | undefined, meaning = true): RunEvent => ({
    kind: 'read',
    ...where({}),
    word: 'CA',
    ...(mark === undefined ? {} : { mark }),
    along: true,
    ...(meaning ? { action: { kind: 'nothing' } } : {}),
    already: false,
  }),
  turn: (t: number): RunEvent => ({ kind: 'turn-back', ...where({ t }) }),
  paceFrom: (t: number, from: Pace, pace: Pace): RunEvent => ({ kind: 'pace', ...where({ t, pace }), from }),
  finish: (place: Place): RunEvent => ({ kind: 'finish', ...where(place) }),
  parking: (way: number, pace: Pace): RunEvent => ({
    kind: 'act',
    ...where({ way, pace }),
    action: { kind: 'park' },
    read: 0,
  }),
  end: (ending: Ending, place: Place = {}): RunEvent => ({ kind: 'end', ...where(place), ending }),
};

export function run(events: readonly RunEvent[], more: Partial<Trace> = {}): Trace {
  const end = events.findLast((event) => event.kind === 'end');
  return {
    version: 1,
    start: 'start',
    probability: 1,
    seed: 0,
    ending: end?.kind === 'end' ? end.ending : 'finished',
    samples: { x: [], y: [], cos: [], sin: [], way: [], pace: [] },
    events: [...events],
    keepOut: {},
    edge: 30,
    finish: -12,
    hash: '00000000',
    ...more,
  };
}

/** Samples at 50 Hz of a robot that faces +x, so many of them at each of the places in turn. */
export function samplesAt(
  places: readonly {
    readonly x: number;
    readonly y?: number;
    readonly way?: number;
    readonly count: number;
  }[],
): Trace['samples'] {
  const all = places.flatMap(({ x, y = 0, way = 0, count }) =>
    new Array<{ x: number; y: number; way: number }>(count).fill({ x, y, way }),
  );
  return {
    x: all.map((p) => p.x),
    y: all.map((p) => p.y),
    cos: all.map(() => 1),
    sin: all.map(() => 0),
    way: all.map((p) => p.way),
    pace: all.map(() => 1),
  };
}

export const goal = (formula: Formula): Goal => ({ id: 'g', formula, must: true, weight: 1 });

/** Margin and unit of a formula over runs, and whether it is met. */
export function measured(formula: Formula, runs: readonly Trace[], context: GoalContext = CONTEXT) {
  return measureGoal(goal(formula), { traces: runs, tooMany: false }, context);
}
