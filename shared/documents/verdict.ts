import * as z from 'zod/mini';
import { Design } from './design.ts';
import { Action } from './kit.ts';
import { Odds, PlainPoint, Steadiness } from './outlook.ts';
import { Ending } from './trace.ts';

/** The version of the engine that made a verdict. A change of any result changes it. */
export const ENGINE_VERSION = 4;

export const SEVERITIES = ['stops', 'may-stop', 'untidy'] as const;
export const Severity = z.enum(SEVERITIES);
export type Severity = (typeof SEVERITIES)[number];

export const RULE_IDS = [
  'R-line-width',
  'R-corner',
  'R-curve-radius',
  'R-clearance',
  'R-margin',
  'R-junction-angle',
  'R-junction-arms',
  'R-before-mark',
  'R-after-mark',
  'R-band-count',
  'R-band-length',
  'R-band-equality',
  'R-band-gap',
  'R-ink-darkness',
  'R-unknown-mark',
  'R-mark-on-curve',
  'R-mark-on-junction',
  'R-mark-box',
  'R-missing-arm',
  'R-open-junction',
  'R-loose-end',
  'R-start-on-line',
  'R-finish-reachable',
  'R-keep-out',
  'R-given-lines',
  'R-ink-budget',
  'R-mark-budget',
] as const;
export const RuleId = z.enum(RULE_IDS);
export type RuleId = (typeof RULE_IDS)[number];

/** Which of a rule's sentences. What ends the plain line beside a mark is a variant too. */
export const FINDING_VARIANTS = [
  'thin',
  'thick',
  'few',
  'many',
  'short',
  'long',
  'gap',
  'overlap',
  'loose-end',
  'edge',
  'through',
  'near',
  'over',
  'single-ink',
  'word',
  'across',
  'no-line',
  'start',
  'mark',
  'junction',
  'corner',
  'end',
  'curve',
  'no-left',
  'no-straight',
  'no-right',
] as const;
export type FindingVariant = (typeof FINDING_VARIANTS)[number];

/** What to do about a finding. */
export const REMEDIES = [
  'blunt-corner',
  'widen-curve',
  'set-width',
  'move-apart',
  'square-junction',
  'lengthen-arm',
  'make-room',
  'move-inside',
  'slow-down',
  'close-gap',
  'lead-on',
  'go-round',
  'leave-given',
  'use-less-line',
  'remove-mark',
  'slide-mark',
  'slide-or-slow-down',
  'into-box',
  'add-bands',
  'remove-bands',
  'even-bands',
  'lighter-ink',
  'choose-mark',
  'choose-way',
  'decide-junction',
  'lead-out',
  'draw-from-berth',
  'draw-to-berth',
] as const;
export type Remedy = (typeof REMEDIES)[number];

/** Where a finding is. `at` is the point for its ring; a stretch runs from `from` to `to` along a line. */
export const Place = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('point'), at: PlainPoint }),
  z.strictObject({
    kind: z.literal('stretch'),
    at: PlainPoint,
    line: z.string(),
    from: z.number(),
    to: z.number(),
  }),
  z.strictObject({ kind: z.literal('mark'), at: PlainPoint, mark: z.string() }),
]);

export const UNITS = ['mm', 'degrees', 'count', 'ratio', 's'] as const;
export const Unit = z.enum(UNITS);
export type Unit = (typeof UNITS)[number];

/** What one drawing rule says. Codes and numbers only; `shared/wording` makes the sentence. */
export const Finding = z.strictObject({
  /** Unique in a verdict and stable while the drawing stays: rule and place. */
  id: z.string(),
  rule: RuleId,
  /** Which of the rule's sentences, where it has several. */
  variant: z.optional(z.enum(FINDING_VARIANTS)),
  severity: Severity,
  place: Place,
  measured: z.optional(z.number()),
  allowed: z.optional(z.number()),
  unit: z.optional(Unit),
  /** What to do, as a code of the wording; and, where it can be computed, the mended design. */
  remedy: z.optional(z.strictObject({ code: z.enum(REMEDIES), design: z.optional(Design) })),
});

export const Reading = z.strictObject({
  t: z.number(),
  word: z.string(),
  mark: z.optional(z.string()),
  along: z.boolean(),
  action: z.optional(Action),
  /** Where the action began; absent where the run ended before. */
  acted: z.optional(z.strictObject({ t: z.number(), x: z.number(), y: z.number() })),
});

export const RunSummary = z.strictObject({
  start: z.enum(['start', 'finish']),
  probability: z.number(),
  ending: Ending,
  duration: z.number(),
  readings: z.array(Reading),
  traceHash: z.string(),
});

export const GoalResult = z.strictObject({
  id: z.string(),
  met: z.boolean(),
  /** How far from tipping over, in `unit`; at least 0 when met. */
  margin: z.number(),
  unit: Unit,
  /** Index of the run that decided, and the kind of the predicate that did. */
  run: z.optional(z.int()),
  by: z.string(),
  /** Which end of a two-sided wish decided: too few, short, early or slow; or too many, late or fast. */
  side: z.optional(z.enum(['below', 'above'])),
  /** More runs than can be followed: the goal is left to luck. */
  leftToLuck: z.boolean(),
  /** Asks for what is found out for entries only: neither met nor missed as yet. */
  open: z.optional(z.boolean()),
});

/** The reason of a goal's points; the goal's id stands behind it. */
export const GOAL_REASON = 'goal:';

export const PointLine = z.strictObject({
  reason: z.string(),
  got: z.number(),
  of: z.number(),
  /** What was counted, and beside what: robots of robots, the cost beside the lowest that is known. */
  measured: z.optional(z.number()),
  allowed: z.optional(z.number()),
  /** Nothing yet, because the challenge is not met. */
  withheld: z.optional(z.literal(true)),
});

export const Verdict = z.strictObject({
  version: z.literal(1),
  engine: z.int(),
  level: z.enum(['live', 'entry']),
  findings: z.array(Finding),
  runs: z.array(RunSummary),
  /** One for each start. Only entries are looked at so closely. */
  odds: z.optional(z.array(Odds)),
  steadiness: z.optional(Steadiness),
  goals: z.array(GoalResult),
  /** Whether every must-goal is met and nothing stops the robot. */
  met: z.boolean(),
  points: z.array(PointLine),
  /** Sum of the points, 0 to 100, whole. */
  total: z.int(),
});

export type Place = z.output<typeof Place>;
export type Finding = z.output<typeof Finding>;
export type Reading = z.output<typeof Reading>;
export type RunSummary = z.output<typeof RunSummary>;
export type GoalResult = z.output<typeof GoalResult>;
export type PointLine = z.output<typeof PointLine>;
export type Verdict = z.output<typeof Verdict>;

/**
 * Whether runs worked out now are, bit for bit, the ones that a stored verdict was made from; and if not, whether
 * another version of the engine made it.
 */
export type Replayed = 'same' | 'other-engine' | 'otherwise';

export function replayed(now: Verdict, stored: Verdict): Replayed {
  const alike =
    now.runs.length === stored.runs.length &&
    now.runs.every(({ traceHash }, i) => traceHash === stored.runs[i]!.traceHash);
  if (alike) return 'same';
  return now.engine === stored.engine ? 'otherwise' : 'other-engine';
}
